import type { Row, Term, TermId } from '../model/index.ts';

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

/** One factor of a row. */
export const termOf = ({ terms }: Pick<Row, 'terms'>, id: TermId): Term => found(terms, id, 'factor');

/** How many times as long for one reason alone. */
export const factorOf = (row: Pick<Row, 'terms'>, id: TermId): number => termOf(row, id).factor;
