/**
 * The same function of numbers, which keeps its results for when it is asked again: a hand on a slider comes by the
 * same places, and a curve of chances asks for the limits of the same few tests.
 *
 * @param most how many results it keeps before it begins anew
 */
export function memoize<T extends number[]>(
  most: number,
  compute: (...of: T) => number,
): (...of: T) => number {
  const known = new Map<string, number>();
  return (...of) => {
    const asked = of.join(' ');
    const before = known.get(asked);
    if (before !== undefined) return before;
    const value = compute(...of);
    if (known.size >= most) known.clear();
    known.set(asked, value);
    return value;
  };
}

/** The same, computed once for each object it is asked of, for as long as that object lives. */
export function memoizeByObject<K extends object, T>(compute: (of: K) => T): (of: K) => T {
  const known = new WeakMap<K, { value: T }>();
  return (of) => {
    const before = known.get(of);
    if (before) return before.value;
    const value = compute(of);
    known.set(of, { value });
    return value;
  };
}
