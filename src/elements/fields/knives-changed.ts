import type { ComparisonEntry, KnifeEntry } from '../../comparison/entry.ts';
import { withKnives } from '../../comparison/knife-names.ts';

/** What the buttons and choices of a page do to the knives of a comparison. None of them changes what it is given. */

export const withKnife = (entry: ComparisonEntry, knife: KnifeEntry): ComparisonEntry =>
  withKnives(
    entry,
    entry.knives.map((other) => (other.id === knife.id ? knife : other)),
  );

/** The comparison with its angle of one knife, by the knife's id, in place of the one entered. */
export const withAngle = (
  entry: ComparisonEntry,
  id: string,
  angle: KnifeEntry['angle'],
): ComparisonEntry => ({
  ...entry,
  knives: entry.knives.map((knife) => (knife.id === id ? { ...knife, angle } : knife)),
});

/** Gives a role to a knife, by its id. If it holds the other role, the two change places. */
export function withRole(entry: ComparisonEntry, role: 'subject' | 'baseline', id: string): ComparisonEntry {
  const other = role === 'subject' ? 'baseline' : 'subject';
  return { ...entry, [role]: id, ...(entry[other] === id ? { [other]: entry[role] } : {}) };
}

/** Adds a knife like the last one, with an id and a name of its own; null where there is none to copy. */
export function withAnotherKnife(entry: ComparisonEntry): { entry: ComparisonEntry; id: string } | null {
  const { knives } = entry;
  const model = knives.at(-1);
  if (!model) return null;
  let number = knives.length + 1;
  while (knives.some(({ id }) => id === `knife-${number}`)) number += 1;
  const id = `knife-${number}`;
  return { entry: withKnives(entry, [...knives, { ...model, id, name: `Knife ${number}` }]), id };
}

/** Takes a knife out, by its id. A role it held goes to the first knife left that does not hold the other role. */
export function withoutKnife(entry: ComparisonEntry, id: string): ComparisonEntry {
  const left = entry.knives.filter((knife) => knife.id !== id);
  const other = (taken: string): string => left.find((knife) => knife.id !== taken)?.id ?? taken;
  const baseline = entry.baseline === id ? other(entry.subject) : entry.baseline;
  const subject = entry.subject === id ? other(baseline) : entry.subject;
  return { ...withKnives(entry, left), baseline, subject };
}
