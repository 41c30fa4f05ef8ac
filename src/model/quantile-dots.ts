/**
 * A distribution as a few dots of equal chance: dot i of n stands at the share (i + ½)/n of the sorted ratios, so
 * that counting dots is counting chances.
 *
 * @param sortedRatios a run's ratios from the lowest to the highest, one or more
 * @param count of dots, whole, 20 to 100
 * @returns `count` ratios, rising
 * @throws RangeError for another count, or where there is no ratio
 * @example quantileDots(Float64Array.from({ length: 101 }, (_, i) => i), 20)[0] // → 2.5
 */
export function quantileDots(sortedRatios: Float64Array, count: number): number[] {
  if (!Number.isInteger(count) || count < 20 || count > 100)
    throw new RangeError(`count of dots ${count} is not a whole number from 20 to 100`);
  if (sortedRatios.length === 0) throw new RangeError('sorted ratios are none, at least 1 is needed');
  const last = sortedRatios.length - 1;
  return Array.from({ length: count }, (_, i) => {
    const place = ((i + 0.5) / count) * last;
    const low = sortedRatios[Math.floor(place)] ?? Number.NaN;
    const high = sortedRatios[Math.ceil(place)] ?? Number.NaN;
    return low + (place - Math.floor(place)) * (high - low);
  });
}
