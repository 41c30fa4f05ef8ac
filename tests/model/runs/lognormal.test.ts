import { describe, expect, test } from 'vitest';
import { lognormalFit, type Life } from '../../../src/model/runs/lognormal.ts';

const exact = (...lives: number[]): Life[] => lives.map((life) => ({ low: life, high: life }));
const early = (...lives: number[]): Life[] => lives.map((life) => ({ low: life, high: Infinity }));
const late = (...lives: number[]): Life[] => lives.map((life) => ({ low: 0, high: life }));
const between = (...looks: [low: number, high: number][]): Life[] =>
  looks.map(([low, high]) => ({ low, high }));
const one = (lives: readonly Life[]): number[][] => lives.map(() => [1]);

/** The normal distribution by adding it up: nothing of the model's own in it. */
function phi(z: number): number {
  const steps = 4000;
  const from = -12;
  if (z <= from) return 0;
  const width = (Math.min(z, 12) - from) / steps;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) sum += Math.exp(-((from + (i + 0.5) * width) ** 2) / 2);
  return (sum * width) / Math.sqrt(2 * Math.PI);
}

/** The logarithm of the likelihood, straight from its definition. */
function logLikelihood(lives: readonly Life[], rows: readonly number[][], beta: number[], sigma: number) {
  return lives.reduce((sum, { low, high }, k) => {
    const mean = (rows[k] ?? []).reduce((total, x, i) => total + x * (beta[i] ?? NaN), 0);
    const z = (life: number): number => (Math.log(life) - mean) / sigma;
    if (low === high) return sum - Math.log(sigma) - z(low) ** 2 / 2;
    return sum + Math.log(high === Infinity ? phi(-z(low)) : phi(z(high)) - phi(z(low)));
  }, 0);
}

const groups = (lives: readonly Life[]): number[][] => lives.map((_, i) => [1, i % 2]);

/** Sets of every kind; of the third the first of Newton's steps goes too far, of the fourth even past a scatter of 0. */
const sets: [what: string, lives: Life[], rowsOf: (lives: readonly Life[]) => number[][]][] = [
  ['ended early and late', [...exact(100, 120, 150), ...early(160), ...late(90)], one],
  ['looked at now and then', between([50, 75], [75, 100], [75, 100], [100, 125], [150, 175]), one],
  ['seldom looked at', [...early(172, 170, 158), ...late(152, 85), ...between([122, 217])], one],
  ['hardly any ended', [...exact(100, 101), ...early(...Array<number>(12).fill(120))], one],
  ['in two groups', [...exact(100, 60, 130, 75), ...between([80, 120], [50, 70]), ...early(140, 70)], groups],
];

describe.each(sets)('the likelihood of runs %s', (_what, lives, rowsOf) => {
  const rows = rowsOf(lives);
  const { beta, sigma, covariance, df } = lognormalFit(lives, rows);
  const p = beta.length;
  /** ln likelihood with the parameters, β and then σ, moved by so much. */
  const at = (moves: number[]): number =>
    logLikelihood(
      lives,
      rows,
      beta.map((b, i) => b + (moves[i] ?? 0)),
      sigma + (moves[p] ?? 0),
    );
  const move = (...steps: [place: number, by: number][]): number[] => {
    const moves = Array<number>(p + 1).fill(0);
    for (const [place, by] of steps) moves[place] = (moves[place] ?? 0) + by;
    return moves;
  };
  const h = 1e-3 * sigma;

  test('is largest where it is said to be', () => {
    for (let i = 0; i <= p; i += 1)
      expect(Math.abs((at(move([i, h])) - at(move([i, -h]))) / 2)).toBeLessThan(1e-7);
  });

  test('is as steep about there as the covariance says', () => {
    // The observed information, by second differences; its inverse is the covariance before the correction for the
    // parameters, n/(n − p).
    const information = Array.from({ length: p + 1 }, (_, i) =>
      Array.from({ length: p + 1 }, (__, j) => {
        const of = (a: number, b: number): number => at(move([i, a * h], [j, b * h]));
        return -(of(1, 1) - of(1, -1) - of(-1, 1) + of(-1, -1)) / (4 * h * h);
      }),
    );
    expect(df).toBe(lives.length - p);
    information.forEach((row, i) =>
      beta.forEach((_, j) => {
        // Row i of information times column j of covariance, over all but σ, is 1 or 0 once σ's part is taken out.
        const sigmaShare = (row[p] ?? NaN) / (information[p]?.[p] ?? NaN);
        const product = beta.reduce((sum, __, k) => {
          const reduced = (row[k] ?? NaN) - sigmaShare * (information[p]?.[k] ?? NaN);
          return sum + reduced * (covariance[k]?.[j] ?? NaN);
        }, 0);
        if (i < p) expect(product * (df / lives.length)).toBeCloseTo(i === j ? 1 : 0, 3);
      }),
    );
  });
});

describe('lives that do not show their scatter', () => {
  const refused =
    'the lives do not show how much they scatter: all fit one value, or the stop was looked at too rarely';
  test.each<[string, Life[]]>([
    // However small the scatter, one middle lies within every range: the likelihood has no top.
    ['a middle that fits every range', between([90, 110], [95, 120], [80, 105])],
    ['ranges that meet in one value', between([5, 9], [9, 15])],
    ['two of each of two ranges that meet', between([75, 100], [75, 100], [100, 125], [100, 125])],
    ['an exact life within every range', [...exact(100), ...between([90, 105], [95, 101])]],
    // The larger the scatter the likelier: those over at the first look had been cut less than those never over.
    ['all over below where the others went on', [...late(42, 143), ...early(211)]],
    ['exact lives that differ by rounding', exact(100, 100 + 1e-12)],
  ])('%s', (_what, lives) => {
    expect(() => lognormalFit(lives, one(lives))).toThrow(new RangeError(refused));
  });

  test('of which too few ended', () => {
    const lives = [...exact(100), ...early(90, 120)];
    expect(() => lognormalFit(lives, one(lives))).toThrow(
      new RangeError('1 of 3 runs ended, at least 2 must reach their stop'),
    );
  });

  test('ranges that overlap but leave no middle for all do show it', () => {
    const lives = between([50, 60], [60, 70], [61, 71]);
    expect(lognormalFit(lives, one(lives)).sigma).toBeGreaterThan(0);
  });
});

test('in another unit the middle moves by the unit and the scatter stays', () => {
  const lives = [...exact(100, 120, 150), ...early(160), ...late(90), ...between([70, 130])];
  const plain = lognormalFit(lives, one(lives));
  for (const unit of [1e-3, 39.37, 1e6]) {
    const scaled = lives.map(({ low, high }) => ({ low: low * unit, high: high * unit }));
    const { beta, sigma, covariance } = lognormalFit(scaled, one(lives));
    expect((beta[0] ?? NaN) - Math.log(unit)).toBeCloseTo(plain.beta[0] ?? NaN, 9);
    expect(sigma).toBeCloseTo(plain.sigma, 9);
    expect(covariance[0]?.[0]).toBeCloseTo(plain.covariance[0]?.[0] ?? NaN, 9);
  }
});

test.each<[string, Life]>([
  ['a start below 0', { low: -1, high: 5 }],
  ['a start without end', { low: Infinity, high: Infinity }],
  ['an end before the start', { low: 5, high: 4 }],
  ['nothing at all', { low: 0, high: 0 }],
  ['no number', { low: Number.NaN, high: 5 }],
])('%s is no life', (_what, life) => {
  const lives = [...exact(100, 120, 150), life];
  expect(() => lognormalFit(lives, one(lives))).toThrow(
    new RangeError(`life 3 from ${life.low} to ${life.high} is not in order from 0 upwards`),
  );
});
