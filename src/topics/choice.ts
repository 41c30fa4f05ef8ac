import type { ComparisonEntry } from '../comparison/entry.ts';

/** A choice among a few: what it says, and how it reads and writes the comparison. */
export interface Choice {
  legend: string;
  options: readonly { value: string; label: string }[];
  read(entry: ComparisonEntry): string;
  write(entry: ComparisonEntry, value: string): ComparisonEntry;
}
