/**
 * How long a ratio is on a ruler on which a factor of ten is `decadeMm` long. A ratio below 1 is as long as the one
 * that undoes it, and is laid down the other way.
 *
 * @example stripMm(10, 200) // → 200
 * @example stripMm(0.5, 200) === stripMm(2, 200) // → true
 */
export const stripMm = (factor: number, decadeMm: number): number => Math.abs(Math.log10(factor)) * decadeMm;
