import type { ComparisonEntry, KnifeEntry } from '../comparison/entry.ts';

/**
 * The fields of one knife. Each knows how to show a part of the entry as text and how to read the text back;
 * none keeps anything. A text that can't be read leaves the entry as it was and says why.
 */
export type Written = { ok: true; knife: KnifeEntry } | { ok: false; message: string };

interface Shared {
  label: string;
  hint?: string;
  /** True where the field has a meaning for this knife; the others are not shown. */
  applies?(knife: KnifeEntry): boolean;
  show(knife: KnifeEntry, entry: ComparisonEntry): string;
  /** @param beside what is chosen in the input beside it, where there is one */
  write(knife: KnifeEntry, text: string, entry: ComparisonEntry, beside?: string): Written;
}

export interface TextField extends Shared {
  kind: 'text';
  unit?(entry: ComparisonEntry): string;
  /** The range that stands for "not known": wide and stated. */
  unknown?: { low: number; high: number };
  /** What an empty field stands for, as the field reads it: `not known (12–28)`, or `none`. */
  standsFor?(entry: ComparisonEntry): string;
}

export interface ChoiceField extends Shared {
  kind: 'choice';
  choices: readonly (readonly [value: string, label: string])[];
  /** True where the knife says nothing about it: the choice is then left as it stands on the page. */
  open?(knife: KnifeEntry): boolean;
}

export type Field = TextField | ChoiceField;

export const good = (knife: KnifeEntry): Written => ({ ok: true, knife });
export const bad = (message: string): Written => ({ ok: false, message });

/** What stands in an input: its text, or nothing where an empty input says the same. */
export function inInput(
  field: Field,
  knife: KnifeEntry,
  entry: ComparisonEntry,
): { text: string; placeholder: string } {
  const text = field.show(knife, entry);
  if (field.kind === 'choice') return { text, placeholder: '' };
  const stands = field.standsFor?.(entry) ?? '';
  return { text: text === stands ? '' : text, placeholder: field.unknown ? 'not known' : stands };
}
