/** How many times as long: the ratio of two series of runs, by geometric means and by means. */

import { halfWidth, satterthwaite, summarise } from './series.ts';
import { welch } from './welch.ts';

/** A ratio of x to y and the interval around it, no unit. */
export interface RatioInterval {
  ratio: number;
  low: number;
  high: number;
}

/**
 * Ratio of the geometric means with Welch's interval and test on the logarithms: the natural comparison where
 * scatter grows with the life itself.
 *
 * @param x readings of the first, all above 0, at least two
 * @param y readings of the second, same unit
 * @param confidence of the interval, above 0 and below 1; 0.95 if left out
 * @returns ratio with its interval, and p, the two-sided chance of a ratio this far from 1 if they were equal
 * @throws RangeError for too few readings, one not above 0, or where neither series scatters at all
 * @example geometricMeanRatio([120, 150, 180], [60, 75, 90]).ratio // → 2.000000
 */
export function geometricMeanRatio(
  x: readonly number[],
  y: readonly number[],
  confidence = 0.95,
): RatioInterval & { p: number } {
  summarise(x, 'x', true);
  summarise(y, 'y', true);
  const { difference, low, high, p } = welch(x.map(Math.log), y.map(Math.log), confidence);
  return { ratio: Math.exp(difference), low: Math.exp(low), high: Math.exp(high), p };
}

/**
 * Ratio of the arithmetic means with an interval by the delta method on its logarithm, no equal scatter assumed
 * (Bonett & Price, Journal of Educational and Behavioral Statistics 45, 2020).
 *
 * @param x readings of the first, all above 0, at least two
 * @param y readings of the second, same unit
 * @param confidence of the interval, above 0 and below 1; 0.95 if left out
 * @throws RangeError for too few readings, one not above 0, or where neither series scatters at all
 * @example ratioOfMeans([120, 150, 180], [60, 75, 90]).ratio // → 2
 */
export function ratioOfMeans(x: readonly number[], y: readonly number[], confidence = 0.95): RatioInterval {
  const a = summarise(x, 'x', true);
  const b = summarise(y, 'y', true);
  const va = a.variance / (a.n * a.mean ** 2);
  const vb = b.variance / (b.n * b.mean ** 2);
  if (va + vb === 0) {
    throw new RangeError('the scatter of x and y is 0, at least one series must scatter for an interval');
  }
  const ratio = a.mean / b.mean;
  const half = halfWidth(satterthwaite(va, a.n, vb, b.n), va + vb, confidence);
  return { ratio, low: ratio * Math.exp(-half), high: ratio * Math.exp(half) };
}
