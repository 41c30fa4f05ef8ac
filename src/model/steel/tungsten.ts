/** Tungsten and molybdenum steels, for which a balance of carbon alone does not say how much carbide there is. */

import { molybdenumEquivalent } from './balance.ts';
import type { Steel } from './balance.ts';
import { carbidesByDesignation } from './carbide.ts';
import { nominal, rangeOf } from '../quantities.ts';

/** Mo + W/2, weight %, from which a steel counts as a tungsten or molybdenum steel (assumed; AISI M2 has about 8). */
const equivalentFrom = 4;

/** Contents near enough to AISI M2 for its typical volume, weight % (assumed). */
const likeM2 = {
  molybdenum: { low: 3.5, high: 6.5 },
  tungsten: { low: 4.5, high: 7.5 },
  carbon: { low: 0.75, high: 1.1 },
  chromium: { low: 3, high: 5 },
  vanadium: { low: 1, high: 2.5 },
} as const;

/** The usual hardening temperature of such steels ends about here, °C (memory). */
export const hottest = 1300;

/** The one such steel of the table of typical volumes, %, with its ± (memory). */
export const typicalM6C = (() => {
  const typical = carbidesByDesignation['AISI M2']?.M6C ?? 0;
  return { value: nominal(typical), ...rangeOf(typical) };
})();

/**
 * Whether the steel has enough tungsten and molybdenum for that.
 *
 * @example isTungstenSteel({ molybdenum: 5, tungsten: 6.1 }) // → true
 * @example isTungstenSteel({ tungsten: 0.5 }) // → false
 */
export const isTungstenSteel = (steel: Partial<Pick<Steel, 'molybdenum' | 'tungsten'>>): boolean =>
  molybdenumEquivalent(steel) >= equivalentFrom;

/** Whether the steel is near enough to AISI M2 in everything for its typical volume. */
export function isLikeM2(steel: Steel): boolean {
  const elements = Object.keys(likeM2) as (keyof typeof likeM2)[];
  return elements.every((of) => steel[of] >= likeM2[of].low && steel[of] <= likeM2[of].high);
}
