/** The normal, Student's and the noncentral t distribution, to about twelve digits and without a library. */

import { memoize } from '../memoize.ts';

const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** ln Γ(x) for x > 0, by Lanczos's series with g = 7. */
export function lnGamma(x: number): number {
  const base = x + 6.5;
  const sum = LANCZOS.reduce((total, c, i) => (i === 0 ? c : total + c / (x - 1 + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(base) - base + Math.log(sum);
}

/** Lentz's evaluation of the continued fraction of the incomplete beta function; quick for x < (a+1)/(a+b+2). */
function betaFraction(a: number, b: number, x: number): number {
  const tiny = 1e-300;
  // Unreachable: where the fraction is used no denominator is 0; the guard is part of the method all the same.
  const off = (v: number): number => (Math.abs(v) < tiny ? tiny : v);
  let c = 1;
  let d = 1 / off(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m <= 100_000; m += 1) {
    for (const step of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / off(1 + step * d);
      c = off(1 + step / c);
      h *= d * c;
    }
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return h;
}

/** x^a·y^b/B(a, b), the slope of the incomplete beta function times x·y. */
const betaFront = (a: number, b: number, x: number, y: number): number =>
  Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log(y));

/** The regularised incomplete beta function; y = 1 − x is passed too, so that no digit is lost near either end. */
function regularisedBeta(a: number, b: number, x: number, y: number): number {
  if (x <= 0) return 0;
  const front = betaFront(a, b, x, y);
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(a, b, x)) / a
    : 1 - (front * betaFraction(b, a, y)) / b;
}

/**
 * The chance that a standard normal variable is at most z.
 *
 * @example normalCdf(0) // → 0.5
 */
export function normalCdf(z: number): number {
  const half = (z * z) / 2;
  if (Math.abs(z) < 3) {
    // Φ(z) = ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + …): every term has one sign, so nothing cancels.
    let term = z;
    let sum = z;
    for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
      term *= (z * z) / k;
      sum += term;
    }
    return 0.5 + (sum * Math.exp(-half)) / Math.sqrt(2 * Math.PI);
  }
  // Beyond that, Laplace's continued fraction of the tail: φ(z)/(z + 1/(z + 2/(z + …))).
  let fraction = 0;
  for (let k = 120; k >= 1; k -= 1) fraction = k / (Math.abs(z) + fraction);
  const tail = Math.exp(-half) / Math.sqrt(2 * Math.PI) / (Math.abs(z) + fraction);
  return z > 0 ? 1 - tail : tail;
}

/** Solves cdf(z) = p, p up to ½, for an increasing cdf that is ½ at 0: by doubling out from there and then halving. */
function invert(cdf: (z: number) => number, p: number): number {
  if (p === 0.5) return 0;
  let low = -1;
  let high = 0;
  while (cdf(low) > p) low *= 2;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return middle;
    if (cdf(middle) < p) low = middle;
    else high = middle;
  }
}

function checkProbability(p: number): void {
  if (!(p > 0 && p < 1)) throw new RangeError(`probability ${p} is not between 0 and 1, both excluded`);
}

function checkFreedom(df: number): void {
  if (!(df > 0 && Number.isFinite(df)))
    throw new RangeError(`degrees of freedom ${df} is not a number above 0`);
}

/**
 * The value a standard normal variable stays below with chance p.
 *
 * @param p above 0 and below 1; anything else is refused
 * @example normalQuantile(0.975) // → 1.959964
 */
export function normalQuantile(p: number): number {
  checkProbability(p);
  // The tail below the middle keeps its digits; the one above is its mirror.
  return p > 0.5 ? -invert(normalCdf, 1 - p) : invert(normalCdf, p);
}

/**
 * The chance that Student's t with `df` degrees of freedom is at most t.
 *
 * @param df above 0, not necessarily whole; anything else is refused
 * @example studentCdf(1, 1) // → 0.750000000000
 */
export function studentCdf(t: number, df: number): number {
  checkFreedom(df);
  const tail = regularisedBeta(df / 2, 0.5, df / (df + t * t), (t * t) / (df + t * t)) / 2;
  return t > 0 ? 1 - tail : tail;
}

/**
 * The value Student's t with `df` degrees of freedom stays below with chance p.
 *
 * @param p above 0 and below 1; anything else is refused
 * @param df above 0; anything else is refused
 * @example studentQuantile(0.975, 10) // → 2.228
 */
export function studentQuantile(p: number, df: number): number {
  checkProbability(p);
  return studentLimit(p, df);
}

const studentLimit = memoize(1000, (p: number, df: number): number => {
  const cdf = (t: number): number => studentCdf(t, df);
  return p > 0.5 ? -invert(cdf, 1 - p) : invert(cdf, p);
});

/** I_x(a, b), and with every step a one higher: I_x(a + 1, b) = I_x(a, b) − x^a·y^b/(a·B(a, b)). */
function seriesTerm(a: number, b: number, x: number, y: number) {
  let at = a;
  let drop = x <= 0 ? 0 : betaFront(a, b, x, y) / a;
  return {
    beta: regularisedBeta(a, b, x, y),
    step() {
      this.beta -= drop;
      drop *= (x * (at + b)) / (at + 1);
      at += 1;
    },
  };
}

/**
 * The chance that a noncentral t with `df` degrees of freedom and noncentrality `delta` is at most t: the
 * series of incomplete beta functions weighted by a Poisson distribution of mean δ²/2 (R. V. Lenth, Algorithm
 * AS 243, 1989), taken over the part of the series that carries weight, each from the one before.
 *
 * @param df above 0; anything else is refused
 * @param delta how many standard errors the true difference is away from 0
 * @example noncentralTCdf(0, 5, 0) // → 0.5
 */
export function noncentralTCdf(t: number, df: number, delta: number): number {
  checkFreedom(df);
  if (t < 0) return 1 - noncentralTCdf(-t, df, -delta);
  const below = normalCdf(-delta);
  const mean = (delta * delta) / 2;
  if (mean === 0) return studentCdf(t, df);
  const x = (t * t) / (t * t + df);
  const y = df / (t * t + df);
  const reach = 10 * Math.sqrt(mean) + 30;
  const first = Math.max(0, Math.floor(mean - reach));
  const weight = first * Math.log(mean) - mean;
  const even = seriesTerm(first + 0.5, df / 2, x, y);
  const odd = seriesTerm(first + 1, df / 2, x, y);
  let evenWeight = Math.exp(weight - lnGamma(first + 1));
  let oddWeight = (delta / Math.SQRT2) * Math.exp(weight - lnGamma(first + 1.5));
  let sum = 0;
  for (let j = first; j <= mean + reach && even.beta > 1e-18; j += 1) {
    sum += evenWeight * even.beta + oddWeight * odd.beta;
    even.step();
    odd.step();
    evenWeight *= mean / (j + 1);
    oddWeight *= mean / (j + 1.5);
  }
  return Math.min(1, below + sum / 2);
}

/**
 * The chance that Fisher's F with `df1` over `df2` degrees of freedom is at least f.
 *
 * @param f 0 or above; anything else is refused
 * @param df1 above 0; anything else is refused
 * @param df2 above 0; anything else is refused
 * @example fisherTail(1, 4, 4) // → 0.500000000000
 */
export function fisherTail(f: number, df1: number, df2: number): number {
  if (!(f >= 0)) throw new RangeError(`f ${f} is not a number of 0 or above`);
  checkFreedom(df1);
  checkFreedom(df2);
  const whole = df2 + df1 * f;
  return regularisedBeta(df2 / 2, df1 / 2, df2 / whole, (df1 * f) / whole);
}
