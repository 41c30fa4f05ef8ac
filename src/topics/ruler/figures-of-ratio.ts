import { inFigures, readsAsOne, short } from '../../scene/show.ts';

/**
 * A ratio beside a mark of the ruler: to two figures, or to three where two would hide that it is not 1.
 *
 * @example markText(15.9) // → '16'
 * @example markText(1.04) // → '1.04'
 */
export function markText(ratio: number): string {
  if (readsAsOne(ratio)) return '1';
  return inFigures(ratio, 2) === 1 ? short(ratio) : short(ratio, 2);
}

/**
 * A factor beside its bar.
 *
 * @example factorText(1.64) // → '×1.6'
 */
export const factorText = (factor: number): string => `×${markText(factor)}`;
