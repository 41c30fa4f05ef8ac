/** The units a file's lengths may stand in; a log keeps mm. */

/** How many mm one of each is; the inch is exactly 25.4 mm (international yard and pound agreement, 1959). */
export const mmPer = { mm: 1, cm: 10, m: 1000, in: 25.4 } as const;
export type LengthUnit = keyof typeof mmPer;

const words: Record<string, LengthUnit> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  metres: 'm',
  meters: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
};

const atEnd = /[\s([,_]+([a-z]+)[\s)\].]*$/i;

/**
 * The unit a header ends with, in brackets or not: `Cut (cm)`, `length_m`. Null where it names none.
 *
 * @example lengthUnitOf('Cut (cm)') // → 'cm'
 */
export function lengthUnitOf(header: string): LengthUnit | null {
  const word = atEnd.exec(header)?.[1]?.toLowerCase() ?? '';
  return Object.hasOwn(words, word) ? (words[word] ?? null) : null;
}

/**
 * The header as it would read for mm.
 *
 * @example inMm('Cut (cm)') // → 'Cut mm'
 */
export const inMm = (header: string): string =>
  lengthUnitOf(header) === null ? header : header.replace(atEnd, ' mm');
