/** The chi-square distribution: how far a variance from a few runs may lie from the true one. */

import { memoize } from '../memoize.ts';
import { lnGamma } from './distributions.ts';

/**
 * The chance that chi-square with `df` degrees of freedom is at most x: the series of the incomplete gamma function
 * (Abramowitz & Stegun 6.5.29).
 *
 * @param x 0 to 10000; anything else is refused
 * @param df above 0 and up to 10000; anything else is refused
 * @example chiSquareCdf(3.841459, 1) // → 0.95000
 */
export function chiSquareCdf(x: number, df: number): number {
  if (!(x >= 0 && x <= 1e4)) throw new RangeError(`x ${x} is not between 0 and 10000`);
  checkFreedom(df);
  return cdf(x, df);
}

function checkFreedom(df: number): void {
  if (!(df > 0 && df <= 1e4)) throw new RangeError(`degrees of freedom ${df} is not above 0 and up to 10000`);
}

function cdf(x: number, df: number): number {
  if (x === 0) return 0;
  const [half, a] = [x / 2, df / 2];
  let term = 1 / a;
  let sum = term;
  // Every term has one sign, so nothing cancels.
  for (let k = 1; term > 1e-16 * sum; k += 1) {
    term *= half / (a + k);
    sum += term;
  }
  return Math.min(1, sum * Math.exp(a * Math.log(half) - half - lnGamma(a)));
}

/**
 * The value that chi-square with `df` degrees of freedom stays below with chance p.
 *
 * @param p 0.0001 to 0.9999; anything else is refused
 * @param df above 0 and up to 10000; anything else is refused
 * @example chiSquareQuantile(0.2, 5) // → 2.3425
 */
export function chiSquareQuantile(p: number, df: number): number {
  if (!(p >= 1e-4 && p <= 0.9999)) throw new RangeError(`probability ${p} is not between 0.0001 and 0.9999`);
  checkFreedom(df);
  return quantile(p, df);
}

const quantile = memoize(1000, (p: number, df: number): number => {
  let [low, high] = [0, df];
  while (cdf(high, df) < p) [low, high] = [high, 2 * high];
  for (;;) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return middle;
    if (cdf(middle, df) < p) low = middle;
    else high = middle;
  }
});
