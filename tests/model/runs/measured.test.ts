import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { geometricMeanRatio, measuredRatio, welch } from '../../../src/model/index.ts';
import type { BatchLife } from '../../../src/model/index.ts';
import { lognormalFit } from '../../../src/model/runs/lognormal.ts';

const exact = (...lives: number[]): BatchLife[] => lives.map((life) => ({ low: life, high: life }));
const early = (life: number): BatchLife => ({ low: life, high: Infinity });
const inBatches = (lives: BatchLife[], ...batches: string[]): BatchLife[] =>
  lives.map((life, i) => ({ ...life, batch: batches[i] ?? '' }));

describe('the measured ratio', () => {
  it('is that of geometric means with Welch on logarithms where every life was read exactly', () => {
    const life = fc.double({ min: 20, max: 2000, noNaN: true });
    const series = fc.array(life, { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(series, series, (x, y) => {
        fc.pre([x, y].some((s) => Math.max(...s) / Math.min(...s) > 1.001));
        const measured = measuredRatio({ x: exact(...x), y: exact(...y) });
        const plain = geometricMeanRatio(x, y);
        for (const key of ['ratio', 'low', 'high', 'p'] as const)
          expect(measured[key]).toBeCloseTo(plain[key], 9);
        const swapped = measuredRatio({ x: exact(...y), y: exact(...x) });
        expect(swapped.ratio * measured.ratio).toBeCloseTo(1, 9);
        expect(swapped.verdict).toBe(measured.verdict);
      }),
    );
  });

  it('within batches of one run each is the paired t on logarithms', () => {
    // Student's sleep data again, the ten patients as batches: paired t −4.0621, df 9, p 0.002833 (as statistics programs
    // print it; memory). The readings are taken as logarithms.
    const x = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0].map(Math.exp);
    const y = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4].map(Math.exp);
    const batches = x.map((_, i) => `lot ${i}`);
    const { p, df, ratio } = measuredRatio({
      x: inBatches(exact(...x), ...batches),
      y: inBatches(exact(...y), ...batches),
      withinBatches: true,
    });
    expect(df).toBe(9);
    expect(p).toBeCloseTo(0.002833, 6);
    expect(Math.log(ratio)).toBeCloseTo(-1.58, 9);
  });

  it('within batches does not move when one batch cuts harder', () => {
    const x = inBatches(exact(100, 120, 130, 90), 'a', 'a', 'b', 'b');
    const y = inBatches(exact(70, 66, 81, 60, 50), 'a', 'a', 'b', 'b', 'c');
    const before = measuredRatio({ x, y, withinBatches: true });
    const harder = (lives: BatchLife[]): BatchLife[] =>
      lives.map((life) =>
        life.batch === 'b' ? { ...life, low: life.low * 0.6, high: life.high * 0.6 } : life,
      );
    const after = measuredRatio({ x: harder(x), y: harder(y), withinBatches: true });
    for (const key of ['ratio', 'low', 'high', 'p'] as const) expect(after[key]).toBeCloseTo(before[key], 9);
    expect(before.unusedBatches).toEqual(['c']);
    // Left in, the batch that holds one knife would count: without it the same is found.
    expect(measuredRatio({ x, y: y.slice(0, 4), withinBatches: true }).ratio).toBeCloseTo(before.ratio, 9);
  });

  it('takes a run that ended early for at least so long', () => {
    // 100, 120, 150 and one given up at 160: geometric mean 134.84, σ 0.2361. Lognormal maximum likelihood, computed
    // outside this project (design check value); SciPy makes the same of random sets in tests/reference/runs-oracle.
    const given = [...exact(100, 120, 150), early(160)];
    const fit = lognormalFit(
      given,
      given.map(() => [1]),
    );
    expect(Math.exp(fit.beta[0] ?? NaN)).toBeCloseTo(134.84, 2);
    expect(fit.sigma).toBeCloseTo(0.2361, 4);
    const y = exact(60, 75, 90);
    const cut = measuredRatio({ x: [...exact(100, 120, 150), early(160)], y });
    expect(cut.ratio).toBeCloseTo(134.84492 / Math.cbrt(60 * 75 * 90), 5);
    expect(cut.ratio).toBeGreaterThan(measuredRatio({ x: exact(100, 120, 150, 160), y }).ratio);
  });

  it('hardly differs where the looks were close together', () => {
    const [x, y] = [exact(100, 120, 150), exact(60, 75, 90)];
    const looked = (lives: BatchLife[]): BatchLife[] =>
      lives.map(({ low }) => ({ low: low - 0.01, high: low + 0.01 }));
    const fine = measuredRatio({ x: looked(x), y: looked(y) });
    const plain = measuredRatio({ x, y });
    for (const key of ['ratio', 'low', 'high', 'p'] as const) expect(fine[key]).toBeCloseTo(plain[key], 5);
  });
});

describe('the verdict', () => {
  it('tells apart, shows alike, or does neither', () => {
    const apart = measuredRatio({ x: exact(120, 130, 125, 140), y: exact(60, 66, 70, 63) });
    expect(apart).toMatchObject({ verdict: 'apart', longer: 'x', runsMore: 0, alike: false });
    const alike = measuredRatio({ x: exact(100, 104, 98, 101), y: exact(99, 103, 100, 98) });
    expect(alike).toMatchObject({ verdict: 'alike', longer: null, runsMore: 0, alike: true });
    const open = measuredRatio({ x: exact(80, 120, 150), y: exact(70, 130, 110) });
    expect(open).toMatchObject({ verdict: 'not told apart', longer: null, alike: false });
    expect(open.runsMore).toBeGreaterThan(10);
    const both = measuredRatio({ x: exact(110, 111, 110, 111), y: exact(100, 101, 100, 101) });
    expect(both).toMatchObject({ verdict: 'apart', alike: true, longer: 'x' });
  });

  it('is alike exactly where the 90 % interval lies within the bounds', () => {
    const series = fc.array(fc.double({ min: 90, max: 115, noNaN: true }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(series, series, (x, y) => {
        fc.pre([x, y].some((s) => Math.max(...s) / Math.min(...s) > 1.001));
        const { alike, pAlike } = measuredRatio({ x: exact(...x), y: exact(...y) });
        fc.pre(Math.abs(pAlike - 0.05) > 1e-9);
        const { low, high } = welch(x.map(Math.log), y.map(Math.log), 0.9);
        expect(alike).toBe(low > Math.log(0.8) && high < Math.log(1.25));
      }),
    );
  });
});

describe('what cannot be measured is said in words', () => {
  const y = exact(60, 75);
  it.each<[string, BatchLife[], string]>([
    ['no run', [], 'x has no run, at least 2 are needed'],
    ['one run', exact(5), 'x has 1 run, at least 2 are needed: one run does not show how much runs scatter'],
    ['a cut of 0', exact(0, 5), 'x[0] 0 is not a life above 0'],
    ['a cut below 0', exact(5, -1), 'x[1] -1 is not a life above 0'],
    ['no number', exact(5, NaN), 'x[1] from NaN to NaN is not a life above 0'],
    ['all ended early', [early(5), early(6)], 'none of the 2 runs of x reached its stop'],
    ['all but one ended early', [early(5), early(6), ...exact(7)], 'x has 1 run that reached its stop, of 3'],
    [
      'all between the same looks',
      [
        { low: 5, high: 9 },
        { low: 5, high: 9 },
      ],
      'the lives do not show how much they scatter',
    ],
  ])('%s', (_what, x, message) => {
    expect(() => measuredRatio({ x, y })).toThrow(message);
    expect(() => measuredRatio({ x: y, y: x })).toThrow(RangeError);
  });

  it('no scatter, no lot, no lot in common, senseless bounds', () => {
    expect(() => measuredRatio({ x: exact(5, 5), y: exact(6, 6) })).toThrow('the scatter of x and y is 0');
    expect(() => measuredRatio({ x: exact(5, 6), y, withinBatches: true })).toThrow('x[0] has no lot');
    const batches = { x: inBatches(exact(5, 6), 'a', 'a'), y: inBatches(y, 'b', 'b'), withinBatches: true };
    expect(() => measuredRatio(batches)).toThrow('no lot holds runs of both x and y');
    expect(() => measuredRatio({ x: exact(5, 6), y, alikeWithin: { low: 1.1, high: 1.2 } })).toThrow(
      'alikeWithin 1.1 to 1.2 does not lie around 1',
    );
    expect(() => measuredRatio({ x: exact(5, 6), y, confidence: 95 })).toThrow('confidence 95 is not');
  });
});

describe('the lognormal likelihood', () => {
  it('is largest where it is said to be', () => {
    // By hand from the definition, at small steps around the reported maximum.
    const lives = [...exact(100, 120, 150), early(160), { low: 0, high: 90 }];
    const { beta, sigma } = lognormalFit(
      lives,
      lives.map(() => [1]),
    );
    const phi = (z: number): number => {
      let sum = 0;
      for (let i = 0; i < 20_000; i += 1) sum += Math.exp(-((-8 + ((i + 0.5) * (z + 8)) / 20_000) ** 2) / 2);
      return (sum * (z + 8)) / 20_000 / Math.sqrt(2 * Math.PI);
    };
    const value = (mu: number, s: number): number => {
      const z = (life: number): number => (Math.log(life) - mu) / s;
      const read = [100, 120, 150].reduce((sum, life) => sum - Math.log(s) - z(life) ** 2 / 2, 0);
      return read + Math.log(phi(-z(160))) + Math.log(phi(z(90)));
    };
    const mu = beta[0] ?? NaN;
    for (const [dm, ds] of [
      [0.01, 0],
      [-0.01, 0],
      [0, 0.01],
      [0, -0.01],
    ] as const)
      expect(value(mu + dm, sigma + ds)).toBeLessThan(value(mu, sigma));
  });
});
