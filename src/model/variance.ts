/** What matters: how much of a result's variance each input explains on its own. */

/** Slices an input's samples are cut into, and the fewest samples a slice may hold. */
const SLICES = 40;
const SMALLEST_SLICE = 20;

/** The slice each sample of an input falls into, slices holding the same number of samples each. */
export function slices(scores: Float64Array): Uint8Array {
  const count = Math.max(2, Math.min(SLICES, Math.floor(scores.length / SMALLEST_SLICE)));
  const sorted = scores.slice().sort();
  const edges = Float64Array.from(
    { length: count - 1 },
    (_, i) => sorted[Math.floor(((i + 1) * scores.length) / count)] ?? 0,
  );
  return Uint8Array.from(scores, (score) => {
    let low = 0;
    let high = edges.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (score < (edges[middle] ?? 0)) high = middle;
      else low = middle + 1;
    }
    return low;
  });
}

/**
 * First-order (Sobol) shares Var(E[result | input]) / Var(result), read off the means of the result within slices of
 * each input, less what slicing alone would show. `together` is the rest: what only several inputs at once explain.
 *
 * @param results one a sample
 * @param inputs by name, the slice of each sample, as `slices` gives it
 * @returns shares that sum to 1, none below 0; empty where the result does not vary
 */
export function varianceShares(
  results: Float64Array,
  inputs: Record<string, Uint8Array>,
): Record<string, number> {
  const n = results.length;
  const mean = results.reduce((sum, v) => sum + v, 0) / n;
  const total = results.reduce((sum, v) => sum + (v - mean) ** 2, 0);
  // Differences of a few last digits are rounding, not variation.
  if (Math.sqrt(total / n) < 1e-12 * Math.max(1, Math.abs(mean))) return {};

  const shares: Record<string, number> = {};
  let explained = 0;
  for (const [name, slice] of Object.entries(inputs)) {
    const sums = new Float64Array(SLICES);
    const counts = new Float64Array(SLICES);
    slice.forEach((s, i) => {
      sums[s] = (sums[s] ?? 0) + (results[i] ?? 0) - mean;
      counts[s] = (counts[s] ?? 0) + 1;
    });
    let between = 0;
    let used = 0;
    counts.forEach((count, s) => {
      if (count === 0) return;
      between += (sums[s] ?? 0) ** 2 / count;
      used += 1;
    });
    // Means of random slices scatter too: (slices − 1) of the n − 1 degrees of freedom would be explained by chance.
    const chance = ((used - 1) * (total - between)) / (n - used);
    const share = Math.max(0, (between - chance) / total);
    shares[name] = share;
    explained += share;
  }
  const over = Math.max(1, explained);
  for (const name of Object.keys(shares)) shares[name] = (shares[name] ?? 0) / over;
  shares['together'] = Math.max(0, 1 - explained / over);
  return shares;
}
