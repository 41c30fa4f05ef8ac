/** First-order propagation of standard uncertainties: the sum one can do by hand beside the sampling. */

/** What one input adds: its standard uncertainty and how far the result moves per unit of it. */
export interface Contribution {
  u: number;
  /** 1 where left out. For a result made of powers, ∏ xᵢ^pᵢ, take u relative (uᵢ/xᵢ) and pᵢ here: the result is relative too. */
  sensitivity?: number;
}

/**
 * Standard uncertainty of a result from those of its inputs, to first order (JCGM 100, 5.1.2, 5.1.6 and 5.2.2).
 *
 * @param contributions one an input; u 0 or above, in the input's unit
 * @param correlation between every two inputs, −1 to 1; 0, the default, takes them as independent, 1 is a bias they
 * all share, such as that of one gauge
 * @returns the standard uncertainty of the result, in its unit
 * @throws RangeError for a u below 0, a value that is not finite, or a correlation no such set of inputs can have
 * @example firstOrder([{ u: 3 }, { u: 4 }]) // → 5
 * @example firstOrder([{ u: 3 }, { u: 4 }], 1) // → 7
 */
export function firstOrder(contributions: readonly Contribution[], correlation = 0): number {
  if (!(correlation >= -1 && correlation <= 1))
    throw new RangeError(`correlation ${correlation} is not between -1 and 1`);
  let sum = 0;
  let squares = 0;
  contributions.forEach(({ u, sensitivity = 1 }, i) => {
    if (!(u >= 0 && Number.isFinite(u)))
      throw new RangeError(`u of input ${i + 1} ${u} is not a finite number of 0 or above`);
    if (!Number.isFinite(sensitivity))
      throw new RangeError(`sensitivity of input ${i + 1} ${sensitivity} is not a finite number`);
    sum += sensitivity * u;
    squares += (sensitivity * u) ** 2;
  });
  // Σ cᵢ²uᵢ² + ρ Σ_{i≠j} cᵢuᵢcⱼuⱼ, the second sum being (Σ cᵢuᵢ)² − Σ cᵢ²uᵢ².
  const variance = squares + correlation * (sum * sum - squares);
  if (variance < -1e-12 * squares) {
    throw new RangeError(`correlation ${correlation} is too far below 0 for ${contributions.length} inputs`);
  }
  return Math.sqrt(Math.max(0, variance));
}
