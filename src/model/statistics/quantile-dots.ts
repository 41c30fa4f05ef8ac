import { quantiles } from './quantiles.ts';

/**
 * A distribution as a few dots of equal chance: dot i of n stands at the share (i + ½)/n of the values in order, so
 * that counting dots is counting chances.
 *
 * @param inOrder a run's ratios from the lowest to the highest, one or more
 * @param count of dots, whole, 20 to 100
 * @returns `count` values, rising
 * @throws RangeError for another count, or where there is no value
 * @example quantileDots(Float64Array.from({ length: 101 }, (_, i) => i), 20)[0] // → 2.5
 */
export function quantileDots(inOrder: Float64Array, count: number): number[] {
  if (!Number.isInteger(count) || count < 20 || count > 100)
    throw new RangeError(`count of dots ${count} is not a whole number from 20 to 100`);
  return quantiles(
    inOrder,
    Array.from({ length: count }, (_, i) => (i + 0.5) / count),
  );
}
