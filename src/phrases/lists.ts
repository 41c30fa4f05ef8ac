import type { Row, Term, TermId } from '../model/index.ts';

/** The terms of a row that have a factor. */
export const standing = (row: Row): (Term & { factor: number })[] =>
  row.terms.filter((term): term is Term & { factor: number } => term.factor !== null);

/** Whether a factor does anything. */
export const changes = (term: { factor: number }): boolean => Math.abs(Math.log(term.factor)) > 5e-4;

/** Words in a row: a, b and c. */
export function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** The terms of a row that could not be computed. */
export const leftOut = (row: Row): TermId[] =>
  row.terms.flatMap(({ id, factor }) => (factor === null ? [id] : []));
