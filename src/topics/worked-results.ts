import type { WorkedStep } from './worked.ts';

/** What a step comes to: its place in the formula, and how it is written there. */
export interface Result {
  name: string;
  /** As shown: `1.96`, `−0.35`, `1.2 × 10^−4`. */
  shown: string;
  /** `°` where the formula has it after the number; nothing for a ratio or a bare number. */
  unit?: NonNullable<WorkedStep['unit']> | '°';
}

/** A place alone behind `=` or `≈`, at the end of its line. */
const RESULT = /(?:=|\\approx) \{\{(\w+)\}\}(\^\\circ)?(?= \\qquad | \\\\| \\end\{|$)/g;

/**
 * The results of a step, in the order of its formula. None where a place of it holds no number for this comparison but
 * `none` or `left out`: there is nothing to compute with.
 *
 * @example resultsOf({ say: '', tex: '{{a}} + 1 = {{b}}', values: { a: '2', b: '3' } }) // → [{ name: 'b', shown: '3' }]
 */
export function resultsOf({ tex, values, unit }: WorkedStep): Result[] {
  if (!Object.values(values).every((value) => /^−?\d/.test(value))) return [];
  return [...tex.matchAll(RESULT)].map(([, name = '', degrees]) => {
    const its = degrees ? '°' : unit;
    // Unreachable: every place of a formula has a value, or the page would show the place.
    return { name, shown: values[name] ?? '', ...(its ? { unit: its } : {}) };
  });
}
