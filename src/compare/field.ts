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
  write(knife: KnifeEntry, text: string, entry: ComparisonEntry): Written;
}

export interface TextField extends Shared {
  kind: 'text';
  unit?(entry: ComparisonEntry): string;
  /** The range that stands for "not known": wide, stated, and shown in the field. */
  unknown?: { low: number; high: number };
}

export interface ChoiceField extends Shared {
  kind: 'choice';
  choices: readonly (readonly [value: string, label: string])[];
}

export type Field = TextField | ChoiceField;

export const good = (knife: KnifeEntry): Written => ({ ok: true, knife });
export const bad = (message: string): Written => ({ ok: false, message });
