import type { Row, TermId } from '../model/index.ts';

/**
 * The one of a list that has an id.
 *
 * @param what what is sought, for the message
 * @throws RangeError where none has the id
 */
export function found<T extends { id: string }>(list: readonly T[], id: string, what: string): T {
  const one = list.find((item) => item.id === id);
  if (!one) throw new RangeError(`${what} ${id} is none of: ${list.map((item) => item.id).join(', ')}`);
  return one;
}

/** A knife's row or prediction; @throws RangeError where it has none. */
export function ofKnife<T extends { knife: string }>(list: readonly T[], knife: string): T {
  const one = list.find((item) => item.knife === knife);
  if (!one) throw new RangeError(`knife ${knife} is none of: ${list.map((item) => item.knife).join(', ')}`);
  return one;
}

/** The factor of one term; null where it is left out. */
export const factorOf = ({ terms }: Pick<Row, 'terms'>, id: TermId): number | null =>
  terms.find((term) => term.id === id)?.factor ?? null;
