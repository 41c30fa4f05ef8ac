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

/** A term that has a factor. */
export interface Standing extends Term {
  factor: number;
  low: number;
  high: number;
}

/** Only carbide is ever left out. */
type Always = Exclude<TermId, 'carbide'>;
type Terms = Pick<Row, 'terms'>;

/** One term of a row. */
export function termOf(row: Terms, id: Always): Standing;
export function termOf(row: Terms, id: TermId): Term;
export function termOf({ terms }: Terms, id: TermId): Term {
  return found(terms, id, 'term');
}

/** The factor of one term; null where it is left out. */
export function factorOf(row: Terms, id: Always): number;
export function factorOf(row: Terms, id: TermId): number | null;
export function factorOf(row: Terms, id: TermId): number | null {
  return found(row.terms, id, 'term').factor;
}
