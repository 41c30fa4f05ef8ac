import { additiveGuess } from '../model/index.ts';
import type { Row, Term, TermId } from '../model/index.ts';
import { inFigures, readAlike, readsAsOne } from './show.ts';

/** The terms of a row that have a factor. */
export const standing = (row: Pick<Row, 'terms'>): (Term & { factor: number })[] =>
  row.terms.filter((term): term is Term & { factor: number } => term.factor !== null);

/** The terms of a row that could not be computed. */
export const leftOut = (row: Pick<Row, 'terms'>): TermId[] =>
  row.terms.flatMap(({ id, factor }) => (factor === null ? [id] : []));

/** Whether a term sets two knives apart, as far as readers are shown its factor. */
export const differs = ({ factor }: { factor: number }): boolean => !readsAsOne(factor);

/** The product of several factors. */
export const productOf = (terms: readonly { factor: number }[]): number =>
  terms.reduce((product, { factor }) => product * factor, 1);

/**
 * The effects that make a total as it is shown: without those that read as one, unless the total would then read
 * otherwise. For what is laid end to end or multiplied step by step, where the end has to be the total.
 */
export function effectsIn<T extends { factor: number }>(terms: readonly T[]): T[] {
  const felt = terms.filter(differs);
  return readAlike(productOf(felt), productOf(terms))
    ? felt
    : // What differs from 1 by the last binary digits only is no effect.
      terms.filter(({ factor }) => inFigures(factor, 9) !== 1);
}

/** What the terms of a row would come to if each only added its own part to 1. It can fall to 0 or below. */
export const temptingSum = (row: Pick<Row, 'terms'>): number =>
  additiveGuess(standing(row).map(({ factor }) => (factor - 1) * 100));
