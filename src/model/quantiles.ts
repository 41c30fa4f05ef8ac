/** The points below which given shares of a run's results lie, without sorting them. */

/**
 * Quantiles straight between neighbours, place p·(n − 1) counted from 0, by quickselect (Hoare 1961).
 *
 * @param results one or more, in any order; left as they are
 * @param shares rising, each from 0 to 1
 * @param work room of the same length to sort in
 * @throws RangeError where there is no result, or the shares are not so
 * @example quantiles(Float64Array.of(5, 1, 3), [0.25, 0.5]) // → [2, 3]
 */
export function quantiles(
  results: Float64Array,
  shares: readonly number[],
  work = new Float64Array(results.length),
): number[] {
  if (results.length === 0) throw new RangeError('results are none, at least 1 is needed');
  work.set(results);
  const last = work.length - 1;
  let from = 0;
  return shares.map((share, i) => {
    if (!(share >= (shares[i - 1] ?? 0) && share <= 1))
      throw new RangeError(`share ${share} is not between ${shares[i - 1] ?? 0} and 1`);
    const place = share * last;
    const below = Math.floor(place);
    select(work, from, last, below);
    from = below;
    const low = work[below] ?? Number.NaN;
    if (below === last || place === below) return low;
    let next = Infinity;
    for (let j = below + 1; j <= last; j += 1) next = Math.min(next, work[j] ?? Infinity);
    return low + (place - below) * (next - low);
  });
}

/** Puts the value that belongs at place k of the sorted part there, smaller ones before it and larger ones behind. */
function select(work: Float64Array, from: number, to: number, k: number): void {
  let [low, high] = [from, to];
  while (low < high) {
    const pivot = median(work[low] ?? 0, work[(low + high) >> 1] ?? 0, work[high] ?? 0);
    let [i, j] = [low, high];
    while (i <= j) {
      while ((work[i] ?? Infinity) < pivot) i += 1;
      while ((work[j] ?? -Infinity) > pivot) j -= 1;
      if (i <= j) {
        const swapped = work[i] ?? 0;
        work[i] = work[j] ?? 0;
        work[j] = swapped;
        i += 1;
        j -= 1;
      }
    }
    if (k <= j) high = j;
    else if (k >= i) low = i;
    else return;
  }
}

const median = (a: number, b: number, c: number): number =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
