import { rankings } from '../model/index.ts';
import type { Knife, Comparison, Rankings, Reading, Row } from '../model/index.ts';
import { compared } from '../comparison/compared.ts';
import { found, ofKnife } from '../comparison/found.ts';
import { withShownNames } from '../comparison/knife-names.ts';
import { toModel } from '../comparison/to-model.ts';
import type { KnifeEntry, ComparisonEntry } from '../comparison/entry.ts';

/**
 * Everything a page shows is a function of one scene: the comparison as entered and what the model makes of it.
 * Numbers, sentences, tables and figures all read this; none of them computes a ratio of its own.
 */
export interface Scene {
  entry: ComparisonEntry;
  comparison: Comparison;
  /** The knives as entered, by the names sentences take. */
  knives: readonly KnifeEntry[];
  /** The knife looked at, as entered and as the model takes it. */
  subject: KnifeEntry;
  subjectKnife: Knife;
  baseline: KnifeEntry;
  baselineKnife: Knife;
  /** Rows against the baseline, one for each knife, by reading. */
  rows: Record<Reading, Row[]>;
  /** The row of the knife looked at, by reading. */
  row: Record<Reading, Row>;
  readonly rankings: Rankings;
  /** What the reader expects, times as long; null before a guess. */
  guess: number | null;
}

/** A name written from right to left, kept from turning round the number that follows it. */
const isolated = (name: string): string =>
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/.test(name) ? `\u2068${name}\u2069` : name;

/**
 * The scene of a comparison.
 *
 * @param rowsOf what the model makes of a comparison, by both readings; another than the model's own in tests, where a
 *   factor is added to its table
 * @throws RangeError where the model refuses the comparison; the message names knife, parameter and range.
 */
export function sceneOf(entry: ComparisonEntry, rowsOf: typeof compared = compared): Scene {
  const shown = withShownNames(entry.knives);
  const knives = shown.some(({ name }) => isolated(name) !== name)
    ? shown.map((knife) => ({ ...knife, name: isolated(knife.name) }))
    : shown;
  const comparison = toModel(knives === entry.knives ? entry : { ...entry, knives });
  const rows = rowsOf(comparison);
  let ranked: Rankings | undefined;
  return {
    entry,
    comparison,
    knives,
    subject: found(knives, entry.subject, 'knife'),
    subjectKnife: found(comparison.knives, entry.subject, 'knife'),
    baseline: found(knives, entry.baseline, 'baseline'),
    baselineKnife: found(comparison.knives, entry.baseline, 'baseline'),
    rows,
    row: { quick: ofKnife(rows.quick, entry.subject), careful: ofKnife(rows.careful, entry.subject) },
    get rankings() {
      return (ranked ??= rankings(comparison));
    },
    guess: null,
  };
}
