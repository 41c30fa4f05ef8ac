import { refuse } from '../check.ts';
import { compare } from '../chain/compare.ts';
import type { SolvableAttribute } from './attributes.ts';
import { gapOf } from './gap.ts';
import type { Comparison, Structure } from '../types.ts';

/**
 * How many times as long one knife cuts as another over many values of one of its attributes, by the careful estimate and
 * with uncertain inputs at their middle: what `compare` gives for each, at a fraction of its work.
 *
 * @param comparison as for `compare`
 * @param question.values degrees per side, mm, µm, HRC or volume per cent, as `whatItTakes` takes the attribute
 * @param question.structure how the factors combine; all multiplied if left out
 * @returns a ratio for each value, above 0; null where the model refuses it
 * @throws RangeError for what `compare` refuses, and for a knife not in the comparison
 * @example ratioCurve({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { knife: 'plover', against: 'dunlin', attribute: 'angleDeg', values: [15] })[0] // → 1
 */
export function ratioCurve(
  comparison: Comparison,
  question: {
    knife: string;
    against: string;
    attribute: SolvableAttribute;
    values: readonly number[];
    structure?: Structure | undefined;
  },
): (number | null)[] {
  const { knife, against, attribute, values, structure } = question;
  compare(comparison);
  for (const id of [knife, against])
    if (!comparison.knives.some((candidate) => candidate.id === id))
      refuse(`knife ${id} is not among the knives: ${comparison.knives.map((k) => k.id).join(', ')}`);
  const gap = gapOf(comparison, { knife, against, attribute, structure, target: 1 });
  return values.map((value) => {
    const found = gap(value);
    return found === null ? null : Math.exp(found);
  });
}
