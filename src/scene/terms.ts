import { additiveGuess, structures } from '../model/index.ts';
import type { Row, Structure } from '../model/index.ts';
import { inFigures, readAlike, readsAsOne } from './show.ts';

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

/**
 * What geometry is worth by each structure, at the middle settings: the total without finish and steel, which multiply in
 * all three.
 */
export const geometryBy = (row: Pick<Row, 'families' | Structure>): Record<Structure, number> => {
  const { finish, steel } = row.families;
  const of = structures.map((structure) => [structure, row[structure] / (finish * steel)]);
  return Object.fromEntries(of) as Record<Structure, number>;
};

/** What the terms of a row would come to if each only added its own part to 1. It can fall to 0 or below. */
export const temptingSum = (row: Pick<Row, 'terms'>): number =>
  additiveGuess(row.terms.map(({ factor }) => (factor - 1) * 100));
