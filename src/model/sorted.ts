/** Values in rising order, quickly where they are spread as samples are. */

/** The most values a bucket may hold to be put in order one by one; a crowded one is sorted as a whole. */
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
  const scale = (n - 1) / (high - low);
  // Of none, of equal ones, and of a width without an end there are no buckets.
  if (!(scale > 0 && scale < Infinity)) return values.slice().sort();

  if (ends.length < n) ends = new Uint32Array(n);
  else ends.fill(0, 0, n);
  for (let i = 0; i < n; i += 1) {
    const bucket = ((values[i] ?? 0) - low) * scale;
    ends[bucket | 0] = (ends[bucket | 0] ?? 0) + 1;
  }
  let end = 0;
  for (let b = 0; b < n; b += 1) {
    end += ends[b] ?? 0;
    ends[b] = end;
  }
  const out = new Float64Array(n);
  for (let i = n - 1; i >= 0; i -= 1) {
    const value = values[i] ?? 0;
    const bucket = ((value - low) * scale) | 0;
    const place = (ends[bucket] ?? 0) - 1;
    out[place] = value;
    ends[bucket] = place;
  }
  // Each bucket now ends where the next begins.
  for (let b = 0; b < n; b += 1) {
    const from = ends[b] ?? 0;
    const to = b + 1 < n ? (ends[b + 1] ?? n) : n;
    if (to - from > CROWDED) out.subarray(from, to).sort();
    else insert(out, from, to);
  }
  return out;
}

function insert(out: Float64Array, from: number, to: number): void {
  for (let i = from + 1; i < to; i += 1) {
    const value = out[i] ?? 0;
    let j = i - 1;
    while (j >= from && (out[j] ?? 0) > value) {
      out[j + 1] = out[j] ?? 0;
      j -= 1;
    }
    out[j + 1] = value;
  }
}
