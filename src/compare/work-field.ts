import type { ComparisonEntry } from '../comparison/entry.ts';

/** The fields of the comparison itself: title, work and units. Like those of a knife, none keeps anything. */
export type WrittenWork = { ok: true; entry: ComparisonEntry } | { ok: false; message: string };

interface Shared {
  label: string;
  hint?: string;
  unit?: string;
  show(entry: ComparisonEntry): string;
  write(entry: ComparisonEntry, text: string): WrittenWork;
}

export type WorkField = Shared &
  ({ kind: 'text' } | { kind: 'choice'; choices: readonly (readonly [value: string, label: string])[] });

export const good = (entry: ComparisonEntry): WrittenWork => ({ ok: true, entry });
