/** What matters: how much of a result's variance each input explains on its own. */

import { sorted } from '../statistics/sorted.ts';

/** Slices an input's samples are cut into, and the fewest samples a slice may hold. */
const SLICES = 40;
const SMALLEST_SLICE = 20;

const countOf = (samples: number): number =>
  Math.max(2, Math.min(SLICES, Math.floor(samples / SMALLEST_SLICE)));

/** The slice each sample of an input falls into, by its even draw between 0 and 1. */
export function evenSlices(even: Float64Array): Uint8Array {
  const count = countOf(even.length);
  const out = new Uint8Array(even.length);
  for (let i = 0; i < out.length; i += 1) out[i] = count * (even[i] ?? 0);
  return out;
}

/** The slice each sample of an input falls into, slices holding the same number of samples each. */
export function slices(scores: Float64Array): Uint8Array {
  const count = countOf(scores.length);
  const inOrder = sorted(scores);
  const edges = Float64Array.from(
    { length: count - 1 },
    (_, i) => inOrder[Math.floor(((i + 1) * scores.length) / count)] ?? 0,
  );
  const out = new Uint8Array(scores.length);
  for (let i = 0; i < out.length; i += 1) {
    const score = scores[i] ?? 0;
    let low = 0;
    let high = edges.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (score < (edges[middle] ?? 0)) high = middle;
      else low = middle + 1;
    }
    out[i] = low;
  }
  return out;
}

/**
 * First-order (Sobol) shares Var(E[result | input]) / Var(result), read off the means of the result within slices of
 * each input, less what slicing alone would show. `together` is the rest: what only several inputs at once explain.
 *
 * @param results one a sample
 * @param inputs by name, the slice of each sample, as `slices` or `evenSlices` give it
 * @returns shares that sum to 1, none below 0; empty where the result does not vary
 */
export function varianceShares(
  results: Float64Array,
  inputs: Record<string, Uint8Array>,
): Record<string, number> {
  const n = results.length;
  let mean = 0;
  for (let i = 0; i < n; i += 1) mean += (results[i] ?? 0) / n;
  let total = 0;
  for (let i = 0; i < n; i += 1) total += ((results[i] ?? 0) - mean) ** 2;
  // Differences of a few last digits are rounding, not variation.
  if (Math.sqrt(total / n) < 1e-12 * Math.max(1, Math.abs(mean))) return {};

  const shares: Record<string, number> = {};
  let explained = 0;
  const sums = new Float64Array(SLICES);
  const counts = new Uint32Array(SLICES);
  for (const [name, slice] of Object.entries(inputs)) {
    sums.fill(0);
    counts.fill(0);
    for (let i = 0; i < n; i += 1) {
      const s = slice[i] ?? 0;
      sums[s] = (sums[s] ?? 0) + (results[i] ?? 0);
      counts[s] = (counts[s] ?? 0) + 1;
    }
    let between = 0;
    let used = 0;
    counts.forEach((count, s) => {
      if (count === 0) return;
      between += ((sums[s] ?? 0) - count * mean) ** 2 / count;
      used += 1;
    });
    // Means of random slices scatter too: (slices − 1) of the n − 1 degrees of freedom would be explained by chance.
    const chance = ((used - 1) * (total - between)) / (n - used);
    const share = Math.max(0, (between - chance) / total);
    shares[name] = share;
    explained += share;
  }
  const over = Math.max(1, explained);
  for (const [name, share] of Object.entries(shares)) shares[name] = share / over;
  shares['together'] = Math.max(0, 1 - explained / over);
  return shares;
}
