import { describe, expect, test } from 'vitest';
import { createPredictor } from '../../../src/model/uncertainty/predictor.ts';
import { uniformStream } from '../../../src/model/statistics/random.ts';
import type { Knife, Comparison } from '../../../src/model/types.ts';
import { evenSlices, slices, varianceShares } from '../../../src/model/uncertainty/variance.ts';
import { exact, plover } from '../knives.ts';

const draws = (n: number, seed = 1): Float64Array => Float64Array.from({ length: n }, uniformStream(seed));

describe('slices', () => {
  test.each([
    // No slice below 20 samples, no more than 40 of them, and no fewer than 2.
    [10, 2],
    [39, 2],
    [60, 3],
    [100, 5],
    [800, 40],
    [4000, 40],
  ])('of %i even draws are %i, each as wide', (n, count) => {
    const even = draws(n);
    expect([...evenSlices(even)]).toEqual([...even].map((u) => Math.floor(count * u)));
    expect(new Set(evenSlices(Float64Array.from({ length: n }, (_, i) => (i + 0.5) / n))).size).toBe(count);
  });

  test.each([
    [40, 2],
    [100, 5],
    [107, 5],
    [900, 40],
  ])('of %i scores are %i, with as many samples each, lower scores first', (n, count) => {
    const scores = draws(n).map((u) => Math.tan(3 * (u - 0.5)));
    const before = scores.slice();
    const found = slices(scores);
    expect(scores).toEqual(before);
    const sizes = Array.from({ length: count }, (_, s) => found.filter((of) => of === s).length);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(n);
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    const inOrder = Array.from(found.keys()).toSorted((i, j) => (scores[i] ?? 0) - (scores[j] ?? 0));
    const ranks = inOrder.map((i) => found[i] ?? NaN);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  });

  test('equal scores share one', () => {
    const found = slices(Float64Array.from({ length: 60 }, (_, i) => (i < 15 ? 1 : 2)));
    expect(new Set(found.slice(0, 15)).size).toBe(1);
    expect(new Set(found.slice(15)).size).toBe(1);
    expect(found[0]).toBeLessThan(found[59] ?? 0);
  });
});

describe('shares of the variance', () => {
  const three = Uint8Array.from({ length: 60 }, (_, i) => i % 3);
  const four = Uint8Array.from({ length: 60 }, (_, i) => Math.floor(i / 3) % 4);

  /** ε² of a one-way analysis of variance (Kelley, PNAS 21, 1935): (SSB − (k − 1)·MSW)/SST. */
  function epsilonSquared(results: Float64Array, slice: Uint8Array): number {
    const of = (list: number[]) => {
      const mean = list.reduce((sum, v) => sum + v, 0) / list.length;
      return { mean, squares: list.reduce((sum, v) => sum + (v - mean) ** 2, 0), n: list.length };
    };
    const whole = of([...results]);
    const groups = [...new Set(slice)].map((s) => of([...results].filter((_, i) => slice[i] === s)));
    const within = groups.reduce((sum, { squares }) => sum + squares, 0);
    const between = groups.reduce((sum, { mean, n }) => sum + n * (mean - whole.mean) ** 2, 0);
    const byChance = ((groups.length - 1) * within) / (results.length - groups.length);
    return (between - byChance) / whole.squares;
  }

  test('are those of an analysis of variance, less what chance would show, and the rest', () => {
    const noise = draws(60, 3);
    const results = noise.map((u, i) => 2 * (three[i] ?? 0) + (four[i] ?? 0) + 3 * u);
    const shares = varianceShares(results, { three, four });
    const [a, b] = [epsilonSquared(results, three), epsilonSquared(results, four)];
    expect(shares['three']).toBeCloseTo(a, 12);
    expect(shares['four']).toBeCloseTo(b, 12);
    expect(shares['together']).toBeCloseTo(1 - a - b, 12);
    // Neither the size of the results nor where they lie changes shares.
    const moved = varianceShares(
      results.map((y) => 1e3 + 7 * y),
      { three, four },
    );
    for (const name of ['three', 'four', 'together']) expect(moved[name]).toBeCloseTo(shares[name] ?? NaN, 9);
  });

  test('take in only the slices there are samples in', () => {
    const gaps = three.map((s) => 10 * s);
    const results = draws(60, 4).map((u, i) => (three[i] ?? 0) + u);
    expect(varianceShares(results, { of: gaps })['of']).toBeCloseTo(epsilonSquared(results, three), 12);
  });

  test('are never below 0, nor above 1 together', () => {
    const results = Float64Array.from(three, (s, i) => s + 1e-3 * (i % 2));
    const idle = Uint8Array.from({ length: 60 }, (_, i) => Math.floor(i / 30));
    const both = varianceShares(results, { three, again: three, idle });
    expect(both['idle']).toBe(0);
    expect(both['three']).toBeCloseTo(0.5, 6);
    expect(both['again']).toBe(both['three']);
    expect(both['together']).toBe(0);
    expect(Object.values(both).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test('are none where nothing varies, or by rounding alone', () => {
    expect(varianceShares(new Float64Array(60).fill(3), { three })).toEqual({});
    const rounding = Float64Array.from(three, (s) => 1000 * (1 + 1e-14 * s));
    expect(varianceShares(rounding, { three })).toEqual({});
    // Small about 0 is no rounding.
    expect(
      varianceShares(
        Float64Array.from(three, (s) => 1e-11 * s),
        { three },
      )['three'],
    ).toBeCloseTo(1, 9);
  });
});

describe('a predictor', () => {
  const dunlin: Knife = { ...plover, id: 'dunlin', angleDeg: 15 };
  const loft: Comparison = { knives: [plover, dunlin], baseline: 'plover', ...exact };

  test.each([99, 1_000_001, 100.5, NaN])('of %f samples is refused', (samples) => {
    expect(() => createPredictor({ samples, seed: 1 })).toThrow(
      new RangeError(`samples ${samples} is not a whole number from 100 to 1000000`),
    );
  });

  test('takes from 100 samples to a million, and refuses a seed that is none at once', () => {
    for (const samples of [100, 1_000_000]) expect(() => createPredictor({ samples, seed: 1 })).not.toThrow();
    expect(() => createPredictor({ samples: 100, seed: 0.5 })).toThrow('seed 0.5 is not');
  });

  test('where nothing varies says surely longer, or surely not', () => {
    const beats = (comparison: Comparison): number[] =>
      createPredictor({ samples: 100, seed: 1 })
        .predict(comparison)
        .map(({ beatsBaseline }) => beatsBaseline);
    expect(beats(loft)).toEqual([0, 1]);
    expect(beats({ ...loft, baseline: 'dunlin' })).toEqual([0, 0]);
    expect(beats({ ...loft, knives: [plover, { ...plover, id: 'dunlin' }] })).toEqual([0, 0]);
  });

  test('gives shares to the knife’s own inputs and the baseline’s, and none to another’s', () => {
    const comparison: Comparison = {
      ...loft,
      knives: [
        { ...plover, angleDeg: { value: 20, plusMinus: 1 } },
        { ...dunlin, edgeMm: { value: 0.4, plusMinus: 0.1 } },
        { ...plover, id: 'tern', finish: { um: { value: 20, plusMinus: 5 } } },
      ],
    };
    const [, of] = createPredictor({ samples: 400, seed: 1 }).predict(comparison);
    expect(Object.keys(of?.variance ?? {}).toSorted()).toEqual(['baseline.angleDeg', 'edgeMm', 'together']);
  });
});
