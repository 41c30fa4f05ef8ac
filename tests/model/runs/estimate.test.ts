import { describe, expect, test } from 'vitest';
import {
  equivalenceRunsNeeded,
  measuredRatio,
  runsNeeded,
  type BatchLife,
} from '../../../src/model/index.ts';
import { estimateRatio } from '../../../src/model/runs/estimate.ts';

const exact = (...lives: number[]): BatchLife[] => lives.map((life) => ({ low: life, high: life }));
const early = (life: number): BatchLife => ({ low: life, high: Infinity });
const inBatches = (lives: BatchLife[], ...batches: string[]): BatchLife[] =>
  lives.map((life, i) => ({ ...life, batch: batches[i] ?? '' }));
const mean = (values: number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
const variance = (values: number[]): number =>
  values.reduce((sum, v) => sum + (v - mean(values)) ** 2, 0) / (values.length - 1);

describe('the ratio of two series', () => {
  const [x, y] = [
    [100, 120, 150, 90],
    [60, 75, 90],
  ];
  const [lx, ly] = [x.map(Math.log), y.map(Math.log)];

  test('has the scatter of one life as the middle of both variances', () => {
    const { logRatio, error, sd, runs, unusedBatches } = estimateRatio(exact(...x), exact(...y), false);
    expect(logRatio).toBeCloseTo(mean(lx) - mean(ly), 12);
    expect(error).toBeCloseTo(Math.sqrt(variance(lx) / 4 + variance(ly) / 3), 12);
    expect(sd).toBeCloseTo(Math.sqrt((variance(lx) + variance(ly)) / 2), 12);
    expect([runs, unusedBatches]).toEqual([3, []]);
    expect(estimateRatio(exact(...y), exact(...x), false).runs).toBe(3);
  });

  test('looked at finely is the same, for either knife', () => {
    const looked = (lives: number[]): BatchLife[] =>
      lives.map((life) => ({ low: life - 1e-3, high: life + 1e-3 }));
    const plain = estimateRatio(exact(...x), exact(...y), false);
    for (const [a, b] of [
      [looked(x), looked(y)],
      [looked(x), exact(...y)],
      [exact(...x), looked(y)],
    ] as const) {
      const { logRatio, error, df, sd } = estimateRatio(a, b, false);
      expect(logRatio).toBeCloseTo(plain.logRatio, 6);
      expect(error).toBeCloseTo(plain.error, 6);
      expect(df).toBeCloseTo(plain.df, 5);
      expect(sd).toBeCloseTo(plain.sd, 6);
    }
  });

  test('is told from one that scatters, though the other does not', () => {
    const { error, df } = estimateRatio(exact(...x), exact(70, 70), false);
    expect(error).toBeCloseTo(Math.sqrt(variance(lx) / 4), 12);
    // Welch's degrees of freedom are then those of the one that scatters.
    expect(df).toBeCloseTo(3, 9);
  });
});

describe('the ratio within batches', () => {
  test('of pairs is that of their differences, the scatter of one life half theirs', () => {
    const [x, y] = [
      [100, 130, 90, 170],
      [70, 66, 81, 90],
    ];
    const batches = ['a', 'b', 'c', 'd'];
    const found = estimateRatio(inBatches(exact(...x), ...batches), inBatches(exact(...y), ...batches), true);
    const d = x.map((life, i) => Math.log(life / (y[i] ?? NaN)));
    expect(found.logRatio).toBeCloseTo(mean(d), 9);
    expect(found.error).toBeCloseTo(Math.sqrt(variance(d) / 4), 8);
    expect(found.sd).toBeCloseTo(Math.sqrt(variance(d) / 2), 8);
    expect([found.df, found.runs, found.unusedBatches]).toEqual([3, 4, []]);
  });

  test('of one batch is the pooled comparison', () => {
    const [x, y] = [
      [100, 130, 90],
      [70, 66],
    ];
    const batch = (lives: number[]) => inBatches(exact(...lives), ...lives.map(() => 'a'));
    const { logRatio, error, df, sd, runs } = estimateRatio(batch(x), batch(y), true);
    const [lx, ly] = [x.map(Math.log), y.map(Math.log)];
    const pooled = (2 * variance(lx) + variance(ly)) / 3;
    expect(logRatio).toBeCloseTo(mean(lx) - mean(ly), 9);
    expect(error).toBeCloseTo(Math.sqrt(pooled * (1 / 3 + 1 / 2)), 8);
    expect(sd).toBeCloseTo(Math.sqrt(pooled), 8);
    expect([df, runs]).toEqual([3, 2]);
  });

  test('leaves out batches of one knife, and names each once', () => {
    const x = inBatches(exact(100, 130, 90, 95, 96), 'a', 'a', 'b', 'c', 'c');
    const y = inBatches(exact(70, 66, 81, 50), 'a', 'b', 'b', 'd');
    const { unusedBatches, runs, ...found } = estimateRatio(x, y, true);
    expect(unusedBatches).toEqual(['c', 'd']);
    expect(runs).toBe(3);
    const { unusedBatches: none, runs: same, ...without } = estimateRatio(x.slice(0, 3), y.slice(0, 3), true);
    expect([none, same]).toEqual([[], 3]);
    expect(found).toEqual(without);
  });

  test('needs the batch of every run, of either knife', () => {
    const [x, y] = [inBatches(exact(100, 130), 'a', 'a'), inBatches(exact(70, 66), 'a', 'a')];
    const bare = [...x, ...exact(5)];
    expect(() => estimateRatio(bare, y, true)).toThrow(
      new RangeError('x[2] has no lot, which comparing within lots needs'),
    );
    expect(() => estimateRatio(y, bare, true)).toThrow(
      new RangeError('y[2] has no lot, which comparing within lots needs'),
    );
    expect(() => estimateRatio(x, inBatches(exact(70, 66), 'b', 'b'), true)).toThrow(
      new RangeError('no lot holds runs of both x and y, at least one must'),
    );
  });
});

describe('what is no series of lives', () => {
  const y = exact(60, 75);
  test.each<[BatchLife[], string]>([
    [[], 'x has no run, at least 2 are needed'],
    [exact(5), 'x has 1 run, at least 2 are needed: one run does not show how much runs scatter'],
    [exact(0, 5), 'x[0] 0 is not a life above 0'],
    [[...exact(5), { low: 7, high: 6 }], 'x[1] from 7 to 6 is not a life above 0'],
    [[...exact(5), { low: -1, high: 6 }], 'x[1] from -1 to 6 is not a life above 0'],
    [[...exact(5), { low: Infinity, high: Infinity }], 'x[1] Infinity is not a life above 0'],
    [[early(5), early(6)], 'none of the 2 runs of x reached its stop: how long it lasts is open'],
    [[early(5), ...exact(6)], 'x has 1 run that reached its stop, of 2; at least 2 must'],
  ])('%o: %s', (x, says) => {
    expect(() => estimateRatio(x, y, false)).toThrow(new RangeError(says));
    expect(() => estimateRatio(y, x, false)).toThrow(new RangeError(says.replaceAll('x', 'y')));
  });

  test('is two series that do not scatter', () => {
    expect(() => estimateRatio(exact(5, 5), exact(6, 6), false)).toThrow(
      new RangeError('the scatter of x and y is 0, at least one series must scatter for an interval'),
    );
  });
});

describe('runs still to be cut', () => {
  const open = { x: exact(80, 120, 150), y: exact(70, 130, 110, 90) };
  /** The coefficient of variation of one life, from the middle of both variances of the logarithms. */
  const cv = Math.sqrt(
    Math.exp((variance([80, 120, 150].map(Math.log)) + variance([70, 130, 110, 90].map(Math.log))) / 2) - 1,
  );

  test.each([
    { low: 0.8, high: 1.25 },
    { low: 0.9, high: 1.5 },
    { low: 0.6, high: 1.2 },
  ])('are those for the harder of both questions, within %o, less those there are', (alikeWithin) => {
    const ratio = Math.min(alikeWithin.high, 1 / alikeWithin.low);
    for (const confidence of [0.95, 0.9]) {
      const alpha = 1 - confidence;
      const needed = Math.max(
        runsNeeded({ cv, ratio, alpha }),
        equivalenceRunsNeeded({ cv, alikeWithin, alpha }),
      );
      expect(measuredRatio({ ...open, alikeWithin, confidence }).runsMore).toBe(needed - 3);
    }
  });

  test('are beyond counting where the bounds lie too near 1', () => {
    const alikeWithin = { low: 0.9999, high: 1.0001 };
    expect(measuredRatio({ ...open, alikeWithin }).runsMore).toBeNull();
  });

  test('are at least one where nothing was told yet', () => {
    // So many runs that the plan asks for no more, and neither question is answered by them as they fell.
    const x = exact(...Array.from({ length: 8 }, (_, i) => 100 + 3 * i));
    const y = exact(...Array.from({ length: 8 }, (_, i) => 93 + 3.5 * i));
    const alikeWithin = { low: 0.7, high: 1.06 };
    const found = measuredRatio({ x, y, alikeWithin });
    expect(found.verdict).toBe('not told apart');
    expect(found.runsMore).toBeGreaterThanOrEqual(1);
  });
});

describe('a measured ratio is refused', () => {
  const given = { x: exact(5, 6), y: exact(60, 75) };
  test.each([0.49, 1, 95, NaN])('with a confidence of %f', (confidence) => {
    expect(() => measuredRatio({ ...given, confidence })).toThrow(
      new RangeError(`confidence ${confidence} is not from 0.5 to below 1`),
    );
  });
  test.each([
    { low: 0, high: 1.25 },
    { low: 1, high: 1.25 },
    { low: 0.8, high: 1 },
    { low: 0.8, high: Infinity },
  ])('with bounds %o', (alikeWithin) => {
    expect(() => measuredRatio({ ...given, alikeWithin })).toThrow(
      new RangeError(`alikeWithin ${alikeWithin.low} to ${alikeWithin.high} does not lie around 1`),
    );
  });
  test('but not with a confidence of one half', () => {
    const { low, ratio, high } = measuredRatio({ ...given, confidence: 0.5 });
    expect(low).toBeLessThan(ratio);
    expect(ratio).toBeLessThan(high);
  });
});

test('the longer knife is named where they are distinguished, and only there', () => {
  const [long, short] = [exact(120, 130, 125), exact(60, 66, 70)];
  expect(measuredRatio({ x: long, y: short })).toMatchObject({ verdict: 'apart', longer: 'x', runsMore: 0 });
  expect(measuredRatio({ x: short, y: long })).toMatchObject({ verdict: 'apart', longer: 'y', runsMore: 0 });
});
