import type { ComparisonEntry } from './entry.ts';

/** So many knives stand side by side; of more, only the two that are asked about. */
const mostSideBySide = 3;

/**
 * The ids of the knives whose numbers are shown side by side, in the order of the comparison.
 *
 * @example shownKnives({ knives: [{ id: 'a' }, { id: 'b' }, { id: 'c' }, { id: 'd' }], subject: 'd', baseline: 'b' }) // → ['b', 'd']
 */
export function shownKnives({
  knives,
  subject,
  baseline,
}: Pick<ComparisonEntry, 'subject' | 'baseline'> & { knives: readonly { id: string }[] }): string[] {
  const ids = knives.map(({ id }) => id);
  return ids.length <= mostSideBySide ? ids : ids.filter((id) => id === subject || id === baseline);
}
