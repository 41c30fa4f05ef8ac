import { describe, expect, test } from 'vitest';
import {
  equivalencePower,
  equivalenceRunsNeeded,
  pairedPower,
  pairsNeeded,
  runsNeeded,
  twoSamplePower,
} from '../../../src/model/index.ts';
import { noncentralTCdf, normalCdf, studentQuantile } from '../../../src/model/statistics/distributions.ts';

/** Standard deviation of the logarithm: σ² = ln(1 + CV²). */
const sigma = (cv: number): number => Math.sqrt(Math.log(1 + cv * cv));

describe('the power of two one-sided tests', () => {
  // The example a statistics package for such studies prints for a crossover of n subjects, true ratio 0.95 within
  // 0.8–1.25, each test at 5% (memory); the n are those of Diletti, Hauschke & Steinijans, Int. J. Clin. Pharmacol. 29
  // (1991), the least that reach 80% (memory). There the error is σ√(2/n), with n − 2 degrees of freedom.
  test.each([
    [0.2, 20, 0.83468],
    [0.3, 40, 0.815845],
  ])('scatter %f, %i subjects: %f', (cv, n, printed) => {
    const power = (of: number): number => {
      const error = sigma(cv) * Math.sqrt(2 / of);
      return equivalencePower(Math.log(0.95 / 0.8) / error, Math.log(1.25 / 0.95) / error, of - 2, 0.05);
    };
    expect(power(n)).toBeCloseTo(printed, 6);
    // Such studies take even numbers.
    expect(power(n - 2)).toBeLessThan(0.8);
  });

  // ∫ [Φ(above − q·s) − Φ(q·s − below)] f(s) ds over what leaves room, f that of √(χ²/ν): half a normal for ν = 1,
  // 2s·exp(−s²) for ν = 2.
  test.each<[number, (s: number) => number]>([
    [1, (s) => Math.sqrt(2 / Math.PI) * Math.exp((-s * s) / 2)],
    [2, (s) => 2 * s * Math.exp(-s * s)],
  ])('with %i degrees of freedom is its integral', (df, density) => {
    for (const [below, above, alpha] of [
      [20, 20, 0.05],
      [8, 30, 0.05],
      [5, 4, 0.2],
      [1, 1, 0.3],
    ] as const) {
      const limit = studentQuantile(1 - alpha, df);
      const end = Math.min((below + above) / (2 * limit), 12);
      let sum = 0;
      for (let i = 0; i < 4000; i += 1) {
        const s = ((i + 0.5) / 4000) * end;
        sum += (normalCdf(above - limit * s) - normalCdf(limit * s - below)) * density(s) * (end / 4000);
      }
      expect(equivalencePower(below, above, df, alpha)).toBeCloseTo(sum, 5);
    }
  });

  test('does not depend on which bound is which, and is refused without freedom', () => {
    expect(equivalencePower(3, 5, 20, 0.05)).toBeCloseTo(equivalencePower(5, 3, 20, 0.05), 12);
    for (const df of [0.99, Infinity, NaN])
      expect(() => equivalencePower(3, 3, df, 0.05)).toThrow(
        new RangeError(`df ${df} is not a number of 1 or above`),
      );
  });
});

describe('runs to show two knives alike', () => {
  const power = (n: number, cv: number, ratio = 1, low = 0.8, high = 1.25, alpha = 0.05): number => {
    const error = sigma(cv) * Math.sqrt(2 / n);
    return equivalencePower(Math.log(ratio / low) / error, Math.log(high / ratio) / error, 2 * n - 2, alpha);
  };

  test('are the least that do', () => {
    for (const cv of [0.1, 0.2, 0.35]) {
      const n = equivalenceRunsNeeded({ cv });
      expect(power(n, cv)).toBeGreaterThanOrEqual(0.8);
      expect(power(n - 1, cv)).toBeLessThan(0.8);
    }
    const plan = { cv: 0.15, ratio: 0.95, power: 0.9, alpha: 0.025, alikeWithin: { low: 0.75, high: 1.4 } };
    const n = equivalenceRunsNeeded(plan);
    expect(power(n, 0.15, 0.95, 0.75, 1.4, 0.025)).toBeGreaterThanOrEqual(0.9);
    expect(power(n - 1, 0.15, 0.95, 0.75, 1.4, 0.025)).toBeLessThan(0.9);
    // Two runs a knife are the fewest there are.
    expect(equivalenceRunsNeeded({ cv: 0.001 })).toBe(2);
  });

  test.each<[Parameters<typeof equivalenceRunsNeeded>[0], string]>([
    [{ cv: 0 }, 'cv 0 is not above 0 and up to 5'],
    [{ cv: 5.1 }, 'cv 5.1 is not above 0 and up to 5'],
    ...[
      { low: 0, high: 1.25 },
      { low: 1, high: 1.25 },
      { low: 0.8, high: 1 },
      { low: 0.8, high: Infinity },
    ].map((alikeWithin): [{ cv: number; alikeWithin: { low: number; high: number } }, string] => [
      { cv: 0.2, alikeWithin },
      `alikeWithin ${alikeWithin.low} to ${alikeWithin.high} does not lie around 1`,
    ]),
    [{ cv: 0.2, ratio: 0.8 }, 'ratio 0.8 is not between 0.8 and 1.25, both excluded'],
    [{ cv: 0.2, ratio: 1.25 }, 'ratio 1.25 is not between 0.8 and 1.25, both excluded'],
    [{ cv: 0.2, power: 0 }, 'power 0 is not between 0 and 1, both excluded'],
    [{ cv: 0.2, power: 1 }, 'power 1 is not between 0 and 1, both excluded'],
    [{ cv: 0.2, alpha: 9e-7 }, 'alpha 9e-7 is not between 0.000001 and 0.5'],
    [{ cv: 0.2, alpha: 0.51 }, 'alpha 0.51 is not between 0.000001 and 0.5'],
    [
      { cv: 1, ratio: 1.2499 },
      'ratio 1.2499 is too close to a bound for this scatter: more than 1000000 runs a knife',
    ],
    [
      { cv: 1, alikeWithin: { low: 0.9999, high: 1.0001 } },
      'ratio 1 is too close to a bound for this scatter: more than 1000000 runs a knife',
    ],
  ])('%o is refused', (plan, says) => {
    expect(() => equivalenceRunsNeeded(plan)).toThrow(new RangeError(says));
  });

  test('take the ends of what may be asked', () => {
    expect(equivalenceRunsNeeded({ cv: 5, alikeWithin: { low: 1e-3, high: 1e3 } })).toBeGreaterThan(2);
    expect(equivalenceRunsNeeded({ cv: 0.05, alpha: 0.5, power: 0.5 })).toBe(2);
    expect(equivalenceRunsNeeded({ cv: 0.01, alpha: 1e-6 })).toBeGreaterThan(2);
  });
});

describe('the power to tell two knives apart', () => {
  /** Both tails of the noncentral t, by the definition. */
  const both = (delta: number, df: number, alpha: number): number => {
    const q = studentQuantile(1 - alpha / 2, df);
    return 1 - noncentralTCdf(q, df, delta) + noncentralTCdf(-q, df, delta);
  };

  test('without a difference is the level itself', () => {
    for (const alpha of [1e-6, 0.05, 0.5]) {
      expect(twoSamplePower(0, 5, alpha)).toBeCloseTo(alpha, 9);
      expect(pairedPower(0, 5, 0.3, alpha)).toBeCloseTo(alpha, 9);
    }
  });

  test('of pairs is that of their differences, √(2(1 − ρ)) times as wide', () => {
    for (const [effect, pairs, correlation, alpha] of [
      [0.9, 12, 0.5, 0.05],
      [0.4, 2, -1, 0.1],
      [1.2, 6, 0, 0.01],
    ] as const)
      expect(pairedPower(effect, pairs, correlation, alpha)).toBeCloseTo(
        both((effect * Math.sqrt(pairs)) / Math.sqrt(2 * (1 - correlation)), pairs - 1, alpha),
        10,
      );
    expect(twoSamplePower(0.7, 9, 0.1)).toBeCloseTo(both(0.7 * Math.sqrt(9 / 2), 16, 0.1), 10);
  });

  test('as asked for decides the runs, whatever the level', () => {
    const effect = Math.log(1.3) / sigma(0.2);
    for (const [power, alpha] of [
      [0.5, 0.05],
      [0.95, 0.01],
      [0.6, 0.5],
    ] as const) {
      const n = runsNeeded({ cv: 0.2, ratio: 1.3, power, alpha });
      expect(twoSamplePower(effect, n, alpha)).toBeGreaterThanOrEqual(power);
      if (n > 2) expect(twoSamplePower(effect, n - 1, alpha)).toBeLessThan(power);
      const pairs = pairsNeeded({ cv: 0.2, ratio: 1 / 1.3, power, alpha, correlation: 0.4 });
      expect(pairedPower(effect, pairs, 0.4, alpha)).toBeGreaterThanOrEqual(power);
      if (pairs > 2) expect(pairedPower(effect, pairs - 1, 0.4, alpha)).toBeLessThan(power);
    }
    expect(runsNeeded({ cv: 5, ratio: 1000 })).toBeGreaterThan(1);
    expect(runsNeeded({ cv: 0.01, ratio: 2 })).toBe(2);
  });
});
