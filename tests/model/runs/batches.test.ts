import { describe, expect, it, test } from 'vitest';
import {
  controlDrift,
  cvWithLooks,
  powerOfRuns,
  runsNeeded,
  twoSamplePower,
  upperCv,
} from '../../../src/model/index.ts';
import { upperVarianceFactor } from '../../../src/model/runs/upper-scatter.ts';
import { chiSquareCdf, chiSquareQuantile } from '../../../src/model/statistics/chi-square.ts';

describe('runs within batches', () => {
  // Own calculation by the noncentral t, 80% power at 5%.
  test.each([
    [0.1, 1.1, 19],
    [0.1, 1.2, 6],
    [0.2, 1.1, 69],
    [0.2, 1.2, 20],
    [0.3, 1.2, 42],
    [0.3, 1.5, 10],
  ])('scatter %f, ratio %f: %i a knife without batches', (cv, ratio, runs) => {
    expect(runsNeeded({ cv, ratio })).toBe(runs);
    expect(runsNeeded({ cv, ratio, batches: 0 })).toBe(runs);
    // One batch takes nothing: there is one mean either way.
    expect(runsNeeded({ cv, ratio, batches: 1 })).toBe(runs);
  });

  // Own calculation: the pooled formula with 2n − 1 − 3 degrees of freedom, scatter 10%, ratio 1.25.
  test.each([
    [3, 0.341],
    [4, 0.663],
    [5, 0.836],
    [6, 0.922],
  ])('%i runs a knife within 3 batches: %f', (runs, power) => {
    expect(powerOfRuns({ runs, cv: 0.1, ratio: 1.25, batches: 3 })).toBeCloseTo(power, 3);
    expect(powerOfRuns({ runs, cv: 0.1, ratio: 0.8, batches: 3 })).toBeCloseTo(power, 3);
  });

  it('are the least that reach the power, and at least one a batch', () => {
    for (const batches of [1, 2, 3, 5, 7, 12]) {
      const plan = { cv: 0.1, ratio: 1.25, batches };
      const runs = runsNeeded(plan);
      expect(powerOfRuns({ ...plan, runs })).toBeGreaterThanOrEqual(0.8);
      if (runs > batches) expect(powerOfRuns({ ...plan, runs: runs - 1 })).toBeLessThan(0.8);
      expect(runs).toBeGreaterThanOrEqual(batches);
    }
    expect(runsNeeded({ cv: 0.05, ratio: 2, batches: 12 })).toBe(12);
  });

  it('without batches have the power of two samples, for equal knives the level', () => {
    const effect = Math.log(1.3) / Math.sqrt(Math.log(1 + 0.2 ** 2));
    expect(powerOfRuns({ runs: 9, cv: 0.2, ratio: 1.3, alpha: 0.1 })).toBeCloseTo(
      twoSamplePower(effect, 9, 0.1),
      12,
    );
    expect(powerOfRuns({ runs: 9, cv: 0.2, ratio: 1, batches: 3 })).toBeCloseTo(0.05, 9);
  });

  test.each<[object, string]>([
    [{ runs: 2 }, 'runs a knife 2 is not a whole number from 3 to 1000000'],
    [{ runs: 4.5 }, 'runs a knife 4.5 is not a whole number from 3 to 1000000'],
    [{ runs: 2e6 }, 'runs a knife 2000000 is not a whole number from 3 to 1000000'],
    [{ cv: 0 }, 'cv 0 is not above 0 and up to 5'],
    [{ ratio: -1 }, 'ratio -1 is not a finite number above 0'],
    [{ alpha: 0.6 }, 'alpha 0.6 is not between 0.000001 and 0.5'],
    [{ batches: 1.5 }, 'batches 1.5 is not a whole number from 0 to 1000000'],
  ])('%o is refused', (change, says) => {
    const plan = { runs: 5, cv: 0.1, ratio: 1.25, batches: 3, ...change };
    expect(() => powerOfRuns(plan)).toThrow(new RangeError(says));
  });

  it('are not planned for half a batch', () => {
    expect(() => runsNeeded({ cv: 0.1, ratio: 1.2, batches: -1 })).toThrow(
      new RangeError('batches -1 is not a whole number from 0 to 1000000'),
    );
  });
});

describe('the scatter of a pilot', () => {
  it('enters by its upper 80% limit', () => {
    // χ² of 4 and 10 degrees of freedom at 20%: 1.649 and 6.179 (tables of the chi-square distribution, memory).
    expect(upperVarianceFactor(4)).toBeCloseTo(4 / 1.649, 3);
    expect(upperVarianceFactor(10)).toBeCloseTo(10 / 6.179, 3);
    const logVariance = Math.log(1 + 0.15 ** 2) * upperVarianceFactor(4);
    expect(upperCv({ cv: 0.15, df: 4 })).toBeCloseTo(Math.sqrt(Math.exp(logVariance) - 1), 12);
  });

  it('comes nearer to what was seen with more runs', () => {
    const limits = [2, 5, 20, 100, 10_000].map((df) => upperCv({ cv: 0.1, df }));
    expect(limits).toEqual(limits.toSorted((a, b) => b - a));
    expect(limits.at(-1)).toBeCloseTo(0.1, 2);
  });

  it('grows by the spread between two looks', () => {
    expect(cvWithLooks({ cv: 0.2, lookEvery: 0, life: 100 })).toBeCloseTo(0.2, 12);
    const width = Math.log(112.5 / 87.5);
    expect(Math.log(1 + cvWithLooks({ cv: 0.2, lookEvery: 25, life: 100 }) ** 2)).toBeCloseTo(
      Math.log(1.04) + width ** 2 / 12,
      12,
    );
  });

  test.each<[() => unknown, string]>([
    [() => upperCv({ cv: -1, df: 3 }), 'cv -1 is not a number of 0 or above'],
    [() => upperCv({ cv: 0.1, df: 0 }), 'degrees of freedom 0 is not above 0 and up to 10000'],
    [() => upperCv({ cv: 0.1, df: 10_001 }), 'degrees of freedom 10001 is not above 0 and up to 10000'],
    [() => cvWithLooks({ cv: 0.1, lookEvery: 25, life: 0 }), 'life 0 is not a finite number above 0'],
    [
      () => cvWithLooks({ cv: 0.1, lookEvery: 200, life: 100 }),
      'lookEvery 200 is not from 0 to below twice the life, 200',
    ],
    [() => chiSquareCdf(-1, 3), 'x -1 is not between 0 and 10000'],
    [() => chiSquareCdf(1, -3), 'degrees of freedom -3 is not above 0 and up to 10000'],
    [() => chiSquareQuantile(0, 3), 'probability 0 is not between 0.0001 and 0.9999'],
  ])('is refused outside its limits: %s', (ask, says) => {
    expect(ask).toThrow(new RangeError(says));
  });

  it('follows chi-square, which for 2 degrees of freedom is exponential', () => {
    for (const x of [0, 0.01, 1, 5, 20]) expect(chiSquareCdf(x, 2)).toBeCloseTo(1 - Math.exp(-x / 2), 12);
    for (const p of [0.0001, 0.2, 0.9999])
      expect(chiSquareQuantile(p, 2)).toBeCloseTo(-2 * Math.log(1 - p), 10);
    expect(chiSquareQuantile(0.5, 10_000)).toBeCloseTo(10_000 - 2 / 3, 2);
  });
});

describe('the control knife', () => {
  const lives = (values: number[]) => values.map((cuts) => ({ cuts }));

  it('is compared with itself: its last runs with its first', () => {
    const drift = controlDrift(lives([200, 204, 198, 160, 163, 158]));
    expect(drift?.ratio).toBeCloseTo((160 * 163 * 158) ** (1 / 3) / (200 * 204 * 198) ** (1 / 3), 12);
    expect(drift?.high).toBeLessThan(1);
  });

  it('shows no drift where it goes up and down', () => {
    const steady = controlDrift(lives([200, 180, 210, 195, 205, 185]));
    expect(steady?.low).toBeLessThan(1);
    expect(steady?.high).toBeGreaterThan(1);
  });

  it('leaves the middle run of an odd number out', () => {
    expect(controlDrift(lives([200, 204, 9000, 160, 163]))).toEqual(
      controlDrift(lives([200, 204, 160, 163])),
    );
  });

  it('says nothing with fewer than 4 runs, or without scatter', () => {
    for (const few of [[], [100], [100, 50], [100, 70, 50], [100, 100, 50, 50]])
      expect(controlDrift(lives(few))).toBeNull();
  });
});
