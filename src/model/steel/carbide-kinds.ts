/** Which carbide of iron or chromium a steel has once stronger carbide formers are served: all from memory. */

/** The carbide at the rich end of the lever of carbon. */
export type LeverCarbide = 'Fe3C' | 'Cr7C3' | 'Cr23C6';

/** Chromium below which the carbide is cementite, weight %; up to 1% from it either may be. */
export const cementiteBelow = 3;

/** Chromium from 11 to 13% turns Cr7C3 into Cr23C6 where there is little carbon. */
const turning = { low: 11, high: 13 } as const;

/** Chromium over carbon: below `low` Cr7C3 alone, from `high` on Cr23C6 alone, between them both; `middle` parts them. */
const chromiumOverCarbon = { low: 10, middle: 12, high: 22 } as const;

/**
 * The carbide the lever of carbon has at its rich end, the likelier first; two where either may be.
 *
 * @param steel weight %
 * @example leverCarbides({ carbon: 1.08, chromium: 17 }) // → ['Cr23C6', 'Cr7C3']
 * @example leverCarbides({ carbon: 1.5, chromium: 12 }) // → ['Cr7C3']
 */
export function leverCarbides(steel: {
  carbon: number;
  chromium: number;
}): readonly [LeverCarbide, ...LeverCarbide[]] {
  const { carbon, chromium } = steel;
  if (Math.abs(chromium - cementiteBelow) < 1)
    return chromium < cementiteBelow ? ['Fe3C', 'Cr7C3'] : ['Cr7C3', 'Fe3C'];
  if (chromium < cementiteBelow) return ['Fe3C'];
  const { low, middle, high } = chromiumOverCarbon;
  if (chromium < turning.low || chromium < low * carbon) return ['Cr7C3'];
  if (chromium >= turning.high && chromium >= high * carbon) return ['Cr23C6'];
  return chromium >= 12 && chromium >= middle * carbon ? ['Cr23C6', 'Cr7C3'] : ['Cr7C3', 'Cr23C6'];
}
