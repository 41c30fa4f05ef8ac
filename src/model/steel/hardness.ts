import { refuse, within } from '../check.ts';

/** Rockwell C hardness the conversion is good for. */
export const rockwellRange = { low: 20, high: 68 } as const;

/** The closed form of `vickersFromRockwellC` without its limits: for what samples or continues it. */
export const vickersClosedForm = (hrc: number): number => (223 * hrc + 14500) / (100 - hrc);

/**
 * Vickers hardness from Rockwell C: a closed form through ASTM E140 table 1, within 0.15% for 46–64 HRC,
 * 0.9% for 20–45 and 1.4% at 68.
 *
 * @param hrc 20–68
 * @throws RangeError outside 20–68 HRC
 * @source astm-e140-hardness
 * @example vickersFromRockwellC(60) // → 697
 */
export function vickersFromRockwellC(hrc: number): number {
  return vickersClosedForm(within('hardness', hrc, rockwellRange.low, rockwellRange.high, ' HRC'));
}

/** HV and tensile strength in MPa, ISO 18265:2013 table A.1. */
const strengthRows: readonly (readonly [vickers: number, mpa: number])[] = [
  [250, 800],
  [300, 965],
  [350, 1125],
  [400, 1290],
  [450, 1455],
  [500, 1630],
  [550, 1810],
  [600, 1995],
  [620, 2070],
  [640, 2145],
  [650, 2180],
];

/**
 * Tensile strength from Vickers hardness, ISO 18265:2013 table A.1, linear between its rows. Beyond 650 HV the
 * standard gives none: use the hardness itself.
 *
 * @param vickers 250–650 HV
 * @returns MPa
 * @throws RangeError outside 250–650 HV
 * @source iso-18265-strength
 * @example tensileStrengthMpa(600) // → 1995
 */
export function tensileStrengthMpa(vickers: number): number {
  const hv = within('hardness', vickers, 250, 650, ' HV');
  const above = Math.max(
    1,
    strengthRows.findIndex(([row]) => row >= hv),
  );
  const [hvA, mpaA] = strengthRows[above - 1] ?? refuse('strength table is empty');
  const [hvB, mpaB] = strengthRows[above] ?? refuse('strength table is empty');
  return mpaA + ((mpaB - mpaA) * (hv - hvA)) / (hvB - hvA);
}
