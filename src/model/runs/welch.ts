/** Welch's t: are two means apart, when the two series need not scatter alike? */

import { studentCdf } from '../statistics/distributions.ts';
import { halfWidth, satterthwaite, summarise } from './series.ts';

export interface WelchResult {
  /** Difference over its standard error. */
  t: number;
  /** Welch–Satterthwaite degrees of freedom, not whole. */
  df: number;
  /** Two-sided chance of a t at least this far from 0 if the means were equal. */
  p: number;
  /** Mean of x less mean of y, in the unit of the readings. */
  difference: number;
  /** Ends of the interval for the difference. */
  low: number;
  high: number;
}

/**
 * Compares the means of two series without assuming that they scatter alike (B. L. Welch, Biometrika 34, 1947).
 *
 * One reading is one sharpening: two series cut after one sharpening count as one reading.
 *
 * @param x readings of the first, any unit, at least two
 * @param y readings of the second, same unit, at least two
 * @param confidence of the interval, above 0 and below 1; 0.95 if left out
 * @throws RangeError for too few or non-finite readings, or where neither series scatters at all
 * @example welch([3, 4, 5], [1, 2, 3]).difference // → 2
 * @example welch([3, 4, 5], [1, 2, 3]).t // → 2.4495
 */
export function welch(x: readonly number[], y: readonly number[], confidence = 0.95): WelchResult {
  const a = summarise(x, 'x');
  const b = summarise(y, 'y');
  const va = a.variance / a.n;
  const vb = b.variance / b.n;
  if (va + vb === 0) {
    throw new RangeError('the scatter of x and y is 0, at least one series must scatter for a test');
  }
  const difference = a.mean - b.mean;
  const t = difference / Math.sqrt(va + vb);
  const df = satterthwaite(va, a.n, vb, b.n);
  const half = halfWidth(df, va + vb, confidence);
  return {
    t,
    df,
    p: 2 * studentCdf(-Math.abs(t), df),
    difference,
    low: difference - half,
    high: difference + half,
  };
}
