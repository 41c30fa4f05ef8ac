/** Numbers as the problems write them. */

/**
 * Ten figures. Browsers may differ in the last bit of a tangent; a problem must not.
 *
 * @example settled(0.1 + 0.2) // → 0.3
 */
export const settled = (value: number): number => Number(value.toPrecision(10));

/** Four figures; a five after them rounds away from 0, as on paper, whatever its binary neighbour is. */
const rounded = (value: number): number => Number((settled(value) * (1 + 2 ** -40)).toPrecision(4));

/**
 * Four figures without trailing zeros: fine enough that rounding on the way does not spoil the answer.
 *
 * @example inFigures(1.96) // → '1.96'
 * @example inFigures(1.5525) // → '1.553'
 */
export const inFigures = (value: number): string => String(rounded(value)).replace('-', '−');

/** A result in a formula, with `=` where four figures hold it all and `≈` where they do not. */
export function result(value: number): string {
  const shown = rounded(value);
  return `${shown === settled(value) ? '=' : '\\approx'} ${shown}`;
}
