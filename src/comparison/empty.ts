import { unknownMeasures } from '../model/index.ts';
import type { ComparisonEntry } from './entry.ts';
import { toModel } from './to-model.ts';

/** What can be asked for first, in this order, by the names the model's list of unknown measures takes. */
const askedFirst = [
  'edge angle',
  'thickness behind the edge',
  'hardness',
  'finish',
  'carbide volume',
] as const;

/** A measure that is asked for. */
export type AskedMeasure = (typeof askedFirst)[number];

/** Which of these measures of a knife are known. */
function knownOf(entry: ComparisonEntry, id: string): readonly AskedMeasure[] {
  const knife = toModel(entry).knives.find((one) => one.id === id);
  const unknown = new Set(knife ? unknownMeasures(knife).map(({ what }) => what) : askedFirst);
  return askedFirst.filter((measure) => !unknown.has(measure));
}

/**
 * What to ask for next, until something is known of both the knife asked about and the one it is compared with. Null
 * once there is: then there is an answer, however wide.
 */
export function nextAsked(entry: ComparisonEntry): {
  /** The id of the knife. */
  knife: string;
  measure: AskedMeasure;
  /** Nothing is known of either yet. */
  first: boolean;
} | null {
  const { subject, baseline, knives } = entry;
  const pair = knives.map(({ id }) => id).filter((id) => id === subject || id === baseline);
  const known = pair.map((id) => knownOf(entry, id));
  const at = known.findIndex(({ length }) => length === 0);
  const knife = pair[at];
  if (knife === undefined) return null;
  const other = known.find(({ length }) => length > 0);
  return { knife, measure: other?.[0] ?? askedFirst[0], first: other === undefined };
}
