/** A curve of ratios over many end points with a band that holds for all of them at once. */

import { studentQuantile } from '../statistics/distributions.ts';
import type { RatioInterval } from './ratios.ts';

/**
 * Widens the intervals of many ratios so that with the chance stated all of them hold together, by Bonferroni's
 * inequality: each interval has (1 − confidence)/k to miss by. It is valid even though neighbouring end points come
 * from the same runs; where there are many of them it is wider than it needs to be.
 *
 * @param points the logarithm of the ratio at each end point, and its standard error, 0 or above; 1 to 1000 of them
 * @param p `df` of the standard errors, the same for all, above 0; `confidence` 0.5 to 0.999999, 0.95 if left out;
 * `endPoints`, the number of end points the reader may choose from where it is larger than that of the points
 * @throws RangeError for values outside those limits
 * @example simultaneousBand([{ logRatio: 0, standardError: 0.1 }], { df: 10 })[0]?.high // → 1.2496
 */
export function simultaneousBand(
  points: readonly { logRatio: number; standardError: number }[],
  p: { df: number; confidence?: number | undefined; endPoints?: number | undefined },
): RatioInterval[] {
  const { df, confidence = 0.95, endPoints = points.length } = p;
  if (points.length < 1 || points.length > 1000)
    throw new RangeError(`points are ${points.length}, 1 to 1000 are needed`);
  if (!(confidence >= 0.5 && confidence <= 0.999999))
    throw new RangeError(`confidence ${confidence} is not between 0.5 and 0.999999`);
  if (!Number.isInteger(endPoints) || endPoints < points.length || endPoints > 1000)
    throw new RangeError(`endPoints ${endPoints} is not a whole number from ${points.length} to 1000`);
  const limit = studentQuantile(1 - (1 - confidence) / endPoints / 2, df);
  return points.map(({ logRatio, standardError }, i) => {
    if (!Number.isFinite(logRatio))
      throw new RangeError(`logRatio ${logRatio} of point ${i} is not a finite number`);
    if (!(standardError >= 0 && standardError < Infinity))
      throw new RangeError(
        `standardError ${standardError} of point ${i} is not a finite number of 0 or above`,
      );
    const half = limit * standardError;
    return { ratio: Math.exp(logRatio), low: Math.exp(logRatio - half), high: Math.exp(logRatio + half) };
  });
}
