/** Values in rising order, quickly where they are spread as samples are. */

/** The most values a bucket may hold: among more, putting each in its place one by one would take long. */
const CROWDED = 64;

/** Where buckets end, kept from call to call: rooms of this size are dear to come by. */
let ends = new Uint32Array(0);

/**
 * The values from the lowest to the highest. Put first into as many buckets of equal width as there are values, which
 * costs a step a value where sorting costs many (Knuth, The Art of Computer Programming 3, 5.2.1, address calculation).
 *
 * @param values finite, in any order; left as they are
 * @example sorted(Float64Array.of(5, 1, 3)) // → Float64Array.of(1, 3, 5)
 */
export function sorted(values: Float64Array): Float64Array {
  const n = values.length;
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < n; i += 1) {
    const value = values[i] ?? 0;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  // Of no width, or one without an end, this is no number a bucket could be found by: all then crowd into the first.
  const scale = (n - 1) / (high - low);
  if (ends.length < n) ends = new Uint32Array(n);
  ends.fill(0, 0, n);
  for (let i = 0; i < n; i += 1) {
    const bucket = (((values[i] ?? 0) - low) * scale) | 0;
    const held = (ends[bucket] ?? 0) + 1;
    if (held > CROWDED) return values.toSorted();
    ends[bucket] = held;
  }
  for (let b = 1; b < n; b += 1) ends[b] = (ends[b] ?? 0) + (ends[b - 1] ?? 0);
  const out = new Float64Array(n);
  for (let i = n - 1; i >= 0; i -= 1) {
    const value = values[i] ?? 0;
    const bucket = ((value - low) * scale) | 0;
    const place = (ends[bucket] ?? 0) - 1;
    out[place] = value;
    ends[bucket] = place;
  }
  // Bucket by bucket they are in order; within one each is put behind those that are not greater.
  for (let i = 1; i < n; i += 1) {
    const value = out[i] ?? 0;
    let j = i - 1;
    for (; j >= 0 && (out[j] ?? 0) > value; j -= 1) out[j + 1] = out[j] ?? 0;
    out[j + 1] = value;
  }
  return out;
}
