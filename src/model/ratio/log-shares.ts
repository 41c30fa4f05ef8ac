import { refuse } from '../check.ts';

const logs = (factors: readonly number[]): number[] =>
  factors.map((factor) => {
    if (!Number.isFinite(factor) || factor <= 0) refuse(`factor ${String(factor)} is not a number above 0`);
    return Math.log(factor);
  });

/**
 * The share of each factor in the product: ln fᵢ / Σ ln fⱼ. The shares add up to 1, whatever the order.
 *
 * @throws RangeError where a factor is not above 0, or the factors nearly cancel (|Σ ln f| < 0.1·Σ|ln f|), so that a
 * share would mean nothing; use `signedShares` then
 * @example logShares([2, 2, 4]) // → [0.25, 0.25, 0.5]
 */
export function logShares(factors: readonly number[]): number[] {
  const parts = logs(factors);
  const total = parts.reduce((sum, part) => sum + part, 0);
  const size = parts.reduce((sum, part) => sum + Math.abs(part), 0);
  if (size === 0 || Math.abs(total) < 0.1 * size) {
    refuse(`factors ${factors.join(', ')} nearly cancel: their shares are not between −10 and 10`);
  }
  return parts.map((part) => part / total);
}

/**
 * ln fᵢ / Σ|ln fⱼ| with its sign: what is shown where the factors cancel. All zero where every factor is 1.
 *
 * @throws RangeError where a factor is not above 0
 * @example signedShares([2, 0.5]) // → [0.5, -0.5]
 */
export function signedShares(factors: readonly number[]): number[] {
  const parts = logs(factors);
  const size = parts.reduce((sum, part) => sum + Math.abs(part), 0);
  return parts.map((part) => (size === 0 ? 0 : part / size));
}
