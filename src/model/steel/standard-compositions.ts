import type { Contents } from './composition.ts';

/**
 * Composition by standard designation, weight %: the middles of the ranges the standards allow (memory); where a
 * standard gives a greatest content only, what is usual. AISI W1 may have 0.7 to 1.5% carbon. Never a maker's grade.
 * The hardening temperature is left open.
 */
export const compositionsByDesignation: Record<string, Contents> = {
  'AISI 1095': { carbon: 0.97 },
  'AISI W1': { carbon: 1.0 },
  'AISI O1': { carbon: 0.92, chromium: 0.5, tungsten: 0.5 },
  'AISI 52100': { carbon: 1.04, chromium: 1.45 },
  'AISI A2': { carbon: 1.0, chromium: 5.1, molybdenum: 1.1, vanadium: 0.3 },
  'AISI D2': { carbon: 1.5, chromium: 12, molybdenum: 0.9, vanadium: 0.8 },
  'AISI M2': { carbon: 0.85, chromium: 4.1, molybdenum: 5.0, tungsten: 6.1, vanadium: 1.9 },
  'AISI 420': { carbon: 0.3, chromium: 13 },
  'AISI 440A': { carbon: 0.68, chromium: 17, molybdenum: 0.5 },
  'AISI 440B': { carbon: 0.85, chromium: 17, molybdenum: 0.5 },
  'AISI 440C': { carbon: 1.08, chromium: 17, molybdenum: 0.5 },
  'EN 1.4116': { carbon: 0.5, chromium: 14.5, molybdenum: 0.65, vanadium: 0.15 },
};

/**
 * What the designations of the table hold between them of an element, weight %: the range of a content that is not known.
 *
 * @example designationsHold('carbon') // → { low: 0.3, high: 1.5 }
 */
export function designationsHold(element: keyof Contents): { low: number; high: number } {
  const held = Object.values(compositionsByDesignation).map((steel) => steel[element] ?? 0);
  return { low: Math.min(...held), high: Math.max(...held) };
}
