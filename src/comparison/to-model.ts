import { makeEqual, memoizeByObject } from '../model/index.ts';
import type { Comparison, Knife } from '../model/index.ts';
import type { ComparisonEntry, KnifeEntry } from './entry.ts';
import { knifeFields } from './knife-fields.ts';
import type { KnifeFieldName } from './knife-fields.ts';

type PartOf<Name extends KnifeFieldName> = ReturnType<(typeof knifeFields)[Name]['toModel']>;
/** All that the fields of a knife give together: where the model needs more of a knife, `knifeOf` does not compile. */
type Parts = {
  [Name in KnifeFieldName]: (part: PartOf<Name>) => void;
}[KnifeFieldName] extends (part: infer All) => void
  ? All
  : never;

/** The knife as the model takes it. The same entry always gives the same object. */
const knifeOf = memoizeByObject((entry: KnifeEntry): Knife => {
  const fields = Object.entries(knifeFields) as [KnifeFieldName, { toModel(value: unknown): object }][];
  const parts = fields.map(([name, { toModel }]) => (entry[name] === undefined ? {} : toModel(entry[name])));
  return Object.assign({}, ...parts) as Parts;
});

/** What was made last, and of what: an entry that changed only in what the model does not see gives it again. */
let latest: { seen: readonly unknown[]; comparison: Comparison } | undefined;

/**
 * The comparison as the model takes it, what is made equal included. The same entry always gives the same object, and so do
 * two in a row that differ only in what the model does not see.
 *
 * @throws RangeError where caliper readings make no bevel, or a designation is not in the model's table.
 */
export const toModel = memoizeByObject((entry: ComparisonEntry): Comparison => {
  const entered = asEntered(entry);
  const { subject, madeEqual } = entry;
  const { knives, ...others } = entered;
  const seen = [...Object.entries(others).flat(), ...knives, subject, ...madeEqual];
  if (seen.length === latest?.seen.length && seen.every((part, at) => part === latest?.seen[at]))
    return latest.comparison;
  const comparison = madeEqual.length === 0 ? entered : makeEqual(entered, subject, madeEqual);
  latest = { seen, comparison };
  return comparison;
});

/** The comparison before anything is made equal. */
const asEntered = (entry: ComparisonEntry): Comparison => ({
  knives: entry.knives.map(knifeOf),
  baseline: entry.baseline,
  contactDepthMm: entry.contactDepthMm,
  friction: entry.friction,
  slicePush: entry.slicePush,
  ...(entry.outcome ? { outcome: entry.outcome } : {}),
  assumptions: entry.assumptions,
  ...(entry.gaugeBias ? { gaugeBias: entry.gaugeBias } : {}),
});
