import { describe, expect, test } from 'vitest';
import {
  fisherTail,
  noncentralTCdf,
  normalCdf,
  normalQuantile,
  studentCdf,
  studentQuantile,
} from '../../../src/model/statistics/distributions.ts';

/** Agreement as a share of the value, so that small tails count. */
const near = (actual: number, expected: number, share = 1e-12): void => {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(share * Math.abs(expected));
};

describe('the normal distribution', () => {
  // Far tails by the asymptotic series, down to its least term: Abramowitz & Stegun, 26.2.12.
  test.each([-10, -20, -37])('at %f is its series', (z) => {
    let [term, sum] = [1, 1];
    for (let k = 1; k < 30 && Math.abs(term * ((2 * k - 1) / (z * z))) < Math.abs(term); k += 1) {
      term *= -(2 * k - 1) / (z * z);
      sum += term;
    }
    near(normalCdf(z), (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / -z) * sum, 1e-11);
  });

  test('is 0 and 1 at its ends, and ½ in the middle', () => {
    expect([-Infinity, -1e200, -40, 0, 40, 1e200, Infinity].map(normalCdf)).toEqual([0, 0, 0, 0.5, 1, 1, 1]);
  });

  test('above and below add up to 1, and both ways of computing meet', () => {
    for (const z of [0.1, 1, 2.9999999, 3, 3.0000001, 6]) near(normalCdf(z) + normalCdf(-z), 1, 1e-15);
    near(normalCdf(-3.0000000001), normalCdf(-2.9999999999), 1e-9);
  });

  test('is undone by its quantile, out to either end', () => {
    for (const p of [1e-300, 1e-15, 1e-3, 0.2, 0.49, 0.51, 0.8, 0.999])
      near(normalCdf(normalQuantile(p)), p, 1e-12);
    expect(normalQuantile(0.5)).toBe(0);
    expect(studentQuantile(0.5, 3)).toBe(0);
  });
});

describe('Student’s t', () => {
  /** The distribution functions in closed form for 1 to 4 degrees of freedom, as the share beyond −t. */
  const tails: Record<number, (t: number) => number> = {
    1: (t) => Math.atan2(1, t) / Math.PI,
    2: (t) => 1 / (Math.sqrt(2 + t * t) * (Math.sqrt(2 + t * t) + t)),
    3: (t) => {
      const a = Math.atan2(Math.sqrt(3), t);
      return (a - Math.sin(a) * Math.cos(a)) / Math.PI;
    },
    4: (t) => {
      const c = t / Math.sqrt(4 + t * t);
      return ((1 - c) ** 2 * (2 + c)) / 4;
    },
  };

  test.each(Object.keys(tails).map(Number))('has its closed form with %i degrees of freedom', (df) => {
    const tail = tails[df] ?? (() => NaN);
    for (const t of [0, 1e-6, 1e-3, 0.2, 0.9, 1, 1.7, 4, 11]) {
      near(studentCdf(-t, df), tail(t), 1e-11);
      near(studentCdf(t, df), 1 - tail(t), 1e-12);
    }
  });

  test('keeps the digits of far tails', () => {
    // 1/(πt) far out with 1 degree of freedom, 1/(2t²) with 2.
    for (const t of [1e6, 1e9]) {
      near(studentCdf(-t, 1), 1 / (Math.PI * t), 1e-11);
      near(studentCdf(-t, 2), 1 / (2 * t * t), 1e-11);
    }
    expect([studentCdf(Infinity, 3), studentCdf(-Infinity, 3)]).toEqual([1, 0]);
  });

  test('with many degrees of freedom is nearly normal, with half of one still a distribution', () => {
    for (const t of [-3, -1, 0.5, 2]) near(studentCdf(t, 1e7), normalCdf(t), 1e-5);
    // By adding up its density, (1 + t²/ν)^(−(ν + 1)/2), up to 1 as a share of that up to 1e9 and what lies beyond.
    const density = (t: number): number => (1 + 2 * t * t) ** -0.75;
    const area = (from: number, to: number): number => {
      // Equal steps of the logarithm of 1 + t.
      const [a, b] = [Math.log1p(from), Math.log1p(to)];
      const h = (b - a) / 20_000;
      let sum = 0;
      for (let i = 0; i < 20_000; i += 1)
        sum += density(Math.expm1(a + (i + 0.5) * h)) * Math.exp(a + (i + 0.5) * h);
      return sum * h;
    };
    // Beyond T the density is (2t²)^(−3/4): its area is 2·2^(−3/4)/√T.
    const half = area(0, 1e9) + (2 * 2 ** -0.75) / Math.sqrt(1e9);
    near(studentCdf(1, 0.5), 0.5 + area(0, 1) / half / 2, 1e-6);
  });

  test('is undone by its quantile on either side', () => {
    for (const [df, tail] of Object.entries(tails))
      for (const t of [0.1, 1.7, 40]) {
        near(studentQuantile(tail(t), Number(df)), -t, 1e-9);
        if (t < 2) near(studentQuantile(1 - tail(t), Number(df)), t, 1e-9);
      }
  });
});

test('F with 2 over 2 and 4 over 4 degrees of freedom has its closed form', () => {
  // 1/(1 + f), and (1 + 3f)/(1 + f)³.
  for (const f of [1e-9, 0.3, 1, 2.5, 1e3]) {
    near(fisherTail(f, 2, 2), 1 / (1 + f), 1e-12);
    near(fisherTail(f, 4, 4), (1 + 3 * f) / (1 + f) ** 3, 1e-11);
  }
  // F with 1 above is t squared, both tails.
  for (const t of [0.5, 2]) near(fisherTail(t * t, 1, 7), 2 * studentCdf(-t, 7), 1e-12);
});

describe('the noncentral t', () => {
  /** P(T ≤ t) = ∫ Φ(t·s − δ) f(s) ds, s the root of χ²/ν over ν: f goes as s^(ν−1)·exp(−νs²/2). */
  const byHand = (t: number, df: number, delta: number): number => {
    const steps = 2000;
    let [sum, whole] = [0, 0];
    for (let i = 0; i < steps; i += 1) {
      const s = ((i + 0.5) / steps) * 5;
      const weight = s ** (df - 1) * Math.exp((-df * (s * s - 1)) / 2);
      sum += weight * normalCdf(t * s - delta);
      whole += weight;
    }
    return sum / whole;
  };
  test.each([
    [2, 3, 1],
    [0.5, 5, -2],
    [-1, 5, -2],
    [-2.5, 9, 1],
    [4, 9, 6],
    // So far out that the series has to begin and end about its greatest part.
    [40, 12, 40],
    [52, 12, 40],
    [-36, 12, -40],
  ])('at %f with %i degrees of freedom and a shift of %f is its integral', (t, df, delta) => {
    expect(noncentralTCdf(t, df, delta)).toBeCloseTo(byHand(t, df, delta), 8);
  });

  test('at 0 is the normal chance of the shift', () => {
    for (const delta of [-1, 0, 2]) near(noncentralTCdf(0, 7, delta), normalCdf(-delta));
  });
});

const noFreedom = (df: number) => new RangeError(`degrees of freedom ${df} is not a number above 0`);
test.each([0, -1, Infinity, NaN])('%f degrees of freedom are refused', (df) => {
  expect(() => studentCdf(1, df)).toThrow(noFreedom(df));
  expect(() => studentQuantile(0.3, df)).toThrow(noFreedom(df));
  expect(() => noncentralTCdf(1, df, 1)).toThrow(noFreedom(df));
  expect(() => fisherTail(1, df, 2)).toThrow(noFreedom(df));
  expect(() => fisherTail(1, 2, df)).toThrow(noFreedom(df));
});

test.each([0, 1, -0.1, 1.1, NaN])('a probability of %f is refused', (p) => {
  const says = new RangeError(`probability ${p} is not between 0 and 1, both excluded`);
  expect(() => normalQuantile(p)).toThrow(says);
  expect(() => studentQuantile(p, 5)).toThrow(says);
});
