/**
 * Points below which given shares of values lie, straight between neighbours: place p·(n − 1), counted from 0
 * (Hyndman & Fan 1996, definition 7).
 *
 * @param inOrder one or more, rising, as `sorted` gives them
 * @param shares each from 0 to 1
 * @throws RangeError where there is no value, or a share is none
 * @example quantiles(Float64Array.of(1, 3, 5), [0.25, 0.5]) // → [2, 3]
 */
export function quantiles(inOrder: Float64Array, shares: readonly number[]): number[] {
  if (inOrder.length === 0) throw new RangeError('values are none, at least 1 is needed');
  return shares.map((share) => {
    if (!(share >= 0 && share <= 1)) throw new RangeError(`share ${share} is not between 0 and 1`);
    const place = share * (inOrder.length - 1);
    const below = Math.floor(place);
    const low = inOrder[below] ?? Number.NaN;
    return place === below ? low : low + (place - below) * ((inOrder[below + 1] ?? Number.NaN) - low);
  });
}

/**
 * The share of values that lie above one, 0 to 1.
 *
 * @param inOrder one or more, rising, as `sorted` gives them
 * @throws RangeError where there is no value
 * @example shareAbove(Float64Array.of(1, 3, 5, 7), 3) // → 0.5
 */
export function shareAbove(inOrder: Float64Array, value: number): number {
  if (inOrder.length === 0) throw new RangeError('values are none, at least 1 is needed');
  let [low, high] = [0, inOrder.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((inOrder[middle] ?? 0) > value) high = middle;
    else low = middle + 1;
  }
  return (inOrder.length - low) / inOrder.length;
}
