import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fisherTail, noncentralTCdf } from '../../src/model/statistics/distributions.ts';
import { equivalencePower, geometricMeanRatio, judgeRuns, welch } from '../../src/model/index.ts';
import type { LoggedRun } from '../../src/model/index.ts';
import { chiSquareCdf, chiSquareQuantile } from '../../src/model/statistics/chi-square.ts';
import { lognormalFit } from '../../src/model/runs/lognormal.ts';

/** What SciPy makes of random data sets: made by runs-oracle.py, beside this file. */
const oracle = JSON.parse(readFileSync('tests/reference/runs-oracle.json', 'utf8')) as {
  welch: [number[], number[], number, number, number, number, number][];
  paired: [number[], number[], number, number, number][];
  censored: [number[], number, number, number, number][];
  lookedAt: [[number, number][], number, number][];
  fisher: [number, number, number, number][];
  noncentral: [number, number, number, number][];
  alike: [number, number, number, number][];
  chiSquare: [number, number, number][];
  unequal: [number[], number[], number, number, number, number][];
  blocked: [[knife: number, edge: number, batch: number, life: number][], number, number, number, number][];
  judgedCensored: [
    [knife: number, batch: number | null, life: number, early: boolean][],
    number,
    number,
    number,
    number,
  ][];
};

/** Agreement to a share of the value. */
const near = (actual: number, stated: number, share: number): void => {
  expect(Math.abs(actual - stated)).toBeLessThanOrEqual(share * Math.abs(stated));
};
const exact = (life: number) => ({ low: life, high: life });
const ones = (lives: readonly unknown[]) => lives.map(() => [1]);

it('Welch on logarithms, a thousand times', { timeout: 60_000 }, () => {
  expect(oracle.welch).toHaveLength(1000);
  for (const [x, y, t, df, p, low, high] of oracle.welch) {
    const logs = welch(x.map(Math.log), y.map(Math.log));
    near(logs.t, t, 1e-8);
    near(logs.df, df, 1e-8);
    near(logs.p, p, 1e-8);
    const ratio = geometricMeanRatio(x, y);
    near(ratio.low, low, 1e-8);
    near(ratio.high, high, 1e-8);
  }
});

it('paired t on logarithms as batches of one run each', { timeout: 60_000 }, () => {
  expect(oracle.paired).toHaveLength(200);
  for (const [x, y, , low, high] of oracle.paired) {
    const inBatches = (knife: string, lives: number[]): LoggedRun[] =>
      lives.map((cuts, i) => ({ knife, batch: String(i), edge: String(i), life: { cuts } }));
    const found = judgeRuns([...inBatches('x', x), ...inBatches('y', y)], { knife: 'x', against: 'y' });
    near(found.df ?? NaN, x.length - 1, 1e-9);
    near(found.low ?? NaN, low, 1e-7);
    near(found.high ?? NaN, high, 1e-7);
  }
});

it('lognormal likelihood with runs that ended early', () => {
  expect(oracle.censored).toHaveLength(100);
  for (const [ended, limit, early, mean, sd] of oracle.censored) {
    const lives = [
      ...ended.map(exact),
      ...Array.from({ length: early }, () => ({ low: limit, high: Infinity })),
    ];
    const { beta, sigma } = lognormalFit(lives, ones(lives));
    near(Math.exp(beta[0] ?? NaN), mean, 1e-6);
    near(sigma, sd, 1e-6);
  }
});

it('lognormal likelihood with a look every 25 cuts', () => {
  expect(oracle.lookedAt).toHaveLength(60);
  for (const [pairs, mean, sd] of oracle.lookedAt) {
    const lives = pairs.map(([low, high]) => ({ low, high }));
    const { beta, sigma } = lognormalFit(lives, ones(lives));
    near(Math.exp(beta[0] ?? NaN), mean, 1e-5);
    near(sigma, sd, 1e-5);
  }
});

it('Fisher’s F and the noncentral t', () => {
  for (const [f, df1, df2, tail] of oracle.fisher) near(fisherTail(f, df1, df2), tail, 1e-8);
  for (const [t, df, delta, chance] of oracle.noncentral)
    expect(noncentralTCdf(t, df, delta)).toBeCloseTo(chance, 9);
});

it('power of two one-sided tests', () => {
  expect(oracle.alike).toHaveLength(60);
  for (const [below, above, df, power] of oracle.alike)
    expect(Math.abs(equivalencePower(below, above, df, 0.05) - power)).toBeLessThan(1e-6);
});

it('chi-square', () => {
  expect(oracle.chiSquare).toHaveLength(100);
  for (const [p, df, quantile] of oracle.chiSquare) {
    near(chiSquareQuantile(p, df), quantile, 1e-8);
    near(chiSquareCdf(quantile, df), p, 1e-8);
  }
});

/** Knife 0 judged against knife 1: its degrees of freedom, ratio and interval as SciPy has them. */
function judged(
  runs: LoggedRun[],
  df: number,
  ratio: number,
  low: number,
  high: number,
  share: number,
): void {
  const found = judgeRuns(runs, { knife: '0', against: '1' });
  near(found.df ?? Number.NaN, df, share);
  near(found.ratio ?? Number.NaN, ratio, share);
  near(found.low ?? Number.NaN, low, share);
  near(found.high ?? Number.NaN, high, share);
}
const logOf = (x: number[], y: number[]): LoggedRun[] =>
  [x, y].flatMap((lives, k) => lives.map((cuts, i) => ({ knife: `${k}`, edge: `${i}`, life: { cuts } })));

it('the judge without batches: Welch where both knives have as many runs', { timeout: 60_000 }, () => {
  const alike = oracle.welch.filter(([x, y]) => x.length === y.length);
  expect(alike.length).toBeGreaterThan(100);
  for (const [x, y, , df, , low, high] of alike)
    judged(logOf(x, y), df, Math.sqrt(low * high), low, high, 1e-7);
});

it('the judge without batches: other numbers of runs, degrees of freedom on the safe side', () => {
  expect(oracle.unequal).toHaveLength(300);
  for (const [x, y, ...stated] of oracle.unequal) judged(logOf(x, y), ...stated, 1e-7);
});

it('the judge within batches, by full matrices', () => {
  expect(oracle.blocked).toHaveLength(200);
  for (const [log, ...stated] of oracle.blocked) {
    const runs = log.map(([knife, edge, batch, cuts]) => ({
      knife: `${knife}`,
      edge: `${edge}`,
      batch: `coil ${batch}`,
      life: { cuts },
    }));
    judged(runs, ...stated, 1e-7);
  }
});

it('the judge with runs given up early, by another search for the top of the likelihood', () => {
  expect(oracle.judgedCensored).toHaveLength(40);
  for (const [log, ...stated] of oracle.judgedCensored) {
    const runs = log.map(([knife, batch, life, early], i) => ({
      knife: `${knife}`,
      edge: `${i}`,
      batch: batch === null ? undefined : `coil ${batch}`,
      life: early ? { atLeast: life } : { cuts: life },
    }));
    judged(runs, ...stated, 2e-5);
  }
});
