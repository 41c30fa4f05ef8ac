import {
  carbideFromComposition,
  compositionsByDesignation,
  designationsHold,
  isUnknown,
  nominal,
} from '../../model/index.ts';
import type { CarbideEstimate, CarbideVolPercent, Composition, Quantity } from '../../model/index.ts';
import { readQuantity } from '../../comparison/read.ts';
import { brief, inFigures } from '../../scene/show.ts';
import type { Hardened } from '../../scene/steel.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';

/** What a steel is entered by: contents in % by mass, and the hardening temperature. */
export const contents = ['carbon', 'chromium', 'vanadium', 'molybdenum', 'tungsten'] as const;
export type CompositionField = (typeof contents)[number] | 'hardening';
export type CompositionTexts = Record<CompositionField, string>;

/** The texts of a standard designation: what it does not name it has none of, and its hardening is left open. */
export function textsOf(designation: string): CompositionTexts {
  const composition = Object.hasOwn(compositionsByDesignation, designation)
    ? compositionsByDesignation[designation]
    : undefined;
  if (!composition) throw new RangeError(`the model has no composition of “${designation}”`);
  const text = (content: (typeof contents)[number]) => brief(composition[content] ?? 0);
  return {
    carbon: text('carbon'),
    chromium: text('chromium'),
    vanadium: text('vanadium'),
    molybdenum: text('molybdenum'),
    tungsten: text('tungsten'),
    hardening: '',
  };
}

export type ReadComposition =
  { ok: true; hardened: Hardened } | { ok: false; problems: Partial<Record<CompositionField, string>> };

/**
 * The carbide of a steel as typed. What is left empty is not known, which widens the ±: a content is then anything the
 * standard designations hold between them, the hardening temperature any usual one.
 */
export function readComposition(texts: CompositionTexts): ReadComposition {
  const problems: Partial<Record<CompositionField, string>> = {};
  const content = (of: (typeof contents)[number]): Quantity => {
    const read = readQuantity(texts[of], { what: of, unit: '%', unknown: designationsHold(of) });
    if (read.ok) return read.value;
    problems[of] = read.message;
    return 0;
  };
  const composition: Composition = {
    carbon: content('carbon'),
    chromium: content('chromium'),
    vanadium: content('vanadium'),
    molybdenum: content('molybdenum'),
    tungsten: content('tungsten'),
  };
  const typed = texts.hardening.replace(/\s*°?\s*C\s*$/i, '').trim();
  // Anything usual for the steel: the model knows the range.
  const open = typed === '' || /^(?:\?|unknown|not ?known)$/i.test(typed);
  if (!open) {
    const read = readQuantity(typed, { what: 'hardening temperature' });
    if (read.ok) composition.austenitizingC = read.value;
    else problems.hardening = read.message;
  }
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  return orRefusal<ReadComposition, ReadComposition>(
    () => {
      const estimate = carbideFromComposition(composition);
      const given = composition.austenitizingC;
      return {
        ok: true,
        hardened: {
          celsius: given === undefined || isUnknown(given) ? null : nominal(given),
          estimate,
          percent: Object.values(estimate.volPercent).reduce((sum, volume) => sum + volume, 0),
        },
      };
    },
    (message) => {
      // A refusal begins with the name of what it refuses.
      const field = contents.find((of) => message.startsWith(of)) ?? 'hardening';
      return { ok: false, problems: { [field]: message } };
    },
  );
}

/**
 * The carbide of an estimate as a knife's, by kind. The ± of the sum is shared out so that every kind has the same part
 * of its volume and the kinds, drawn apart from each other, have that ± together again.
 *
 * @example carbideOf({ volPercent: { CrC: 4, MC: 3 }, plusMinus: 1, basis: 'balance', austeniteCarbon: { value: 0.4, plusMinus: 0.1 }, tieLine: { matrix: 0.4, saturation: 0.4, whole: 1, carbide: 9, formula: 'Cr7C3', massFraction: 0.1 }, notKnown: [], notes: [] }) // → { CrC: { value: 4, plusMinus: 0.8 }, MC: { value: 3, plusMinus: 0.6 } }
 */
export function carbideOf({ volPercent, plusMinus, tieLine }: CarbideEstimate): CarbideVolPercent {
  const kinds = Object.entries(volPercent);
  const size = Math.hypot(...kinds.map(([, volume]) => volume));
  if (size === 0)
    return { [tieLine.formula === 'Fe3C' ? 'Fe3C' : 'CrC']: { value: 0, plusMinus: inFigures(plusMinus) } };
  return Object.fromEntries(
    kinds.map(([kind, volume]) => [
      kind,
      { value: inFigures(volume), plusMinus: inFigures((plusMinus * volume) / size) },
    ]),
  );
}
