import { describe, expect, it } from 'vitest';
import {
  noncentralTCdf,
  normalCdf,
  normalQuantile,
  studentQuantile,
} from '../../src/model/statistics/distributions.ts';
import { xoshiro128 } from '../../src/model/statistics/random.ts';
import { fitPower } from '../../src/model/runs/fit.ts';
import { pairsNeeded, runsNeeded, twoSamplePower } from '../../src/model/runs/planning.ts';
import { ratioOfMeans } from '../../src/model/runs/ratios.ts';
import { welch } from '../../src/model/runs/welch.ts';

/** Agreement to a number of significant digits, as printed values are given. */
function digits(actual: number, printed: number, significant: number): void {
  expect(Math.abs(actual / printed - 1)).toBeLessThan(0.5 * 10 ** (1 - significant));
}

describe('Welch', () => {
  // Student, "The probable error of a mean", Biometrika 6 (1908): hours of sleep gained under two drugs. The
  // results are those a widely used statistics program prints for its two-sample test without equal variances.
  const x = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
  const y = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

  it("gives the printed results for Student's sleep data", () => {
    const result = welch(x, y);
    digits(result.t, -1.8608134675, 10);
    digits(result.df, 17.776474, 8);
    digits(result.p, 0.07939414, 7);
    digits(result.low, -3.3654832, 8);
    digits(result.high, 0.2054832, 7);
  });
});

describe('ratio of means', () => {
  it("gives Bonett and Price's example", () => {
    // Bonett & Price, J. Educ. Behav. Stat. 45 (2020), ratio of two independent means.
    const first = [36, 44, 47, 42, 49, 39, 46, 31, 33, 48];
    const second = [32, 39, 26, 35, 43, 27, 40, 37, 34, 29, 49, 42, 40];
    const { ratio, low, high } = ratioOfMeans(first, second);
    digits(ratio, 1.140592, 7);
    digits(low, 0.9837277, 7);
    digits(high, 1.32247, 6);
  });
});

describe('power law', () => {
  it('gives the certified values of NIST StRD DanWood', () => {
    // NIST Statistical Reference Datasets, nonlinear regression, DanWood: parameters and residual sum of squares;
    // the two standard deviations from memory of the same certificate.
    const x = [1.309, 1.471, 1.49, 1.565, 1.611, 1.68];
    const y = [2.138, 3.421, 3.597, 4.34, 4.882, 5.66];
    const fit = fitPower(x, y);
    digits(fit.a, 0.76886226176, 10);
    digits(fit.b, 3.8604055871, 10);
    digits(fit.rss, 4.3173084083e-3, 10);
    digits(fit.aSd, 1.828197386e-2, 8);
    digits(fit.bSd, 5.1726610913e-2, 8);
  });
});

describe('runs needed', () => {
  // Noncentral t power of a pooled two-sample t test on logarithms, σ = √ln(1 + CV²), both tails, 80% and 5%:
  // values from an exact power calculation outside this project.
  it.each([
    [0.1, 1.1, 19],
    [0.1, 1.2, 6],
    [0.2, 1.1, 69],
    [0.2, 1.2, 20],
    [0.3, 1.2, 42],
    [0.3, 1.5, 10],
  ])('scatter %f, ratio %f: %i a knife', (cv, ratio, n) => {
    expect(runsNeeded({ cv, ratio })).toBe(n);
    // A ratio and its inverse are the same question.
    expect(runsNeeded({ cv, ratio: 1 / ratio })).toBe(n);
  });

  it.each([
    [0, 21],
    [0.5, 12],
    [0.7, 8],
  ])('paired on the same stock, correlation %f: %i pairs', (correlation, pairs) => {
    expect(pairsNeeded({ cv: 0.2, ratio: 1.2, correlation })).toBe(pairs);
  });

  it('agrees with the textbook case d = 0.5, 64 a group', () => {
    // J. Cohen, Statistical Power Analysis (1988): d 0.5, 80%, 5% → 64 a group; exact power 0.80146.
    expect(twoSamplePower(0.5, 64)).toBeCloseTo(0.80146, 5);
    expect(twoSamplePower(0.5, 63)).toBeLessThan(0.8);
  });

  it('gives 0.68 for three runs a knife, ratio 1.3, scatter 10%', () => {
    const effect = Math.log(1.3) / Math.sqrt(Math.log(1.01));
    expect(twoSamplePower(effect, 3)).toBeCloseTo(0.68, 2);
  });
});

describe('distributions', () => {
  it.each([
    // Tables of Student's t, two-sided 5% and 1%.
    [0.975, 1, 12.706],
    [0.975, 5, 2.571],
    [0.975, 30, 2.042],
    [0.995, 10, 3.169],
  ])('t quantile %f with %i degrees of freedom is %f', (p, df, printed) => {
    expect(studentQuantile(p, df)).toBeCloseTo(printed, 3);
    expect(studentQuantile(1 - p, df)).toBeCloseTo(-printed, 3);
  });

  it('has the normal values of the tables', () => {
    // Abramowitz & Stegun, Handbook of Mathematical Functions (1964), table 26.1, and its quantiles (memory).
    expect(normalCdf(1)).toBeCloseTo(0.841344746068543, 14);
    expect(normalCdf(2)).toBeCloseTo(0.977249868051821, 14);
    digits(normalCdf(-5), 2.8665157187919391e-7, 13);
    expect(normalQuantile(0.95)).toBeCloseTo(1.644853626951, 11);
  });

  it('integrates the noncentral t by another way to the same value', () => {
    // P(T ≤ t) = ∫ Φ(t·s − δ) f(s) ds, s the root of χ²/df over df: straight from the definition, for df = 4,
    // where f(s) = 8 s³ exp(−2 s²).
    for (const [t, delta] of [
      [2.776, 1],
      [2.776, 4],
      [-2.776, 1],
      [0.5, -2],
    ] as const) {
      const steps = 4000;
      let sum = 0;
      for (let i = 0; i < steps; i += 1) {
        const s = ((i + 0.5) / steps) * 6;
        sum += normalCdf(t * s - delta) * 8 * s ** 3 * Math.exp(-2 * s * s) * (6 / steps);
      }
      expect(noncentralTCdf(t, 4, delta)).toBeCloseTo(sum, 6);
    }
  });
});

describe('random numbers', () => {
  it('are those of the reference generator', () => {
    // xoshiro128** from state 1, 2, 3, 4: the vector its public reference implementations are tested with.
    const next = xoshiro128([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, next)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });
});
