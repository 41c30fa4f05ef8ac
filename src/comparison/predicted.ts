import { createPredictor, memoizeByObject } from '../model/index.ts';
import type { Comparison, Prediction, Predictor } from '../model/index.ts';
import { ofKnife } from './found.ts';

/** Samples behind every band of the site. */
export const samples = 20_000;

let shared: Predictor | undefined;

/** One predictor for all pages: it keeps its draws, so that a comparison changed in one place moves only there. */
export const predictor = (): Predictor => (shared ??= createPredictor({ samples, seed: 1 }));

/** Two knives of a comparison alone, so that searches and runs need not carry the others: the ratio is that of the two. */
export const pairIn = (whole: Comparison, subject: string): Comparison =>
  whole.knives.length === 2
    ? whole
    : { ...whole, knives: whole.knives.filter(({ id }) => id === subject || id === whole.baseline) };

const bands = memoizeByObject((_comparison: Comparison): Map<string, Prediction> => new Map());

/**
 * The central 90% of the samples of a knife's ratio to the baseline, with their middle. The same comparison gives the
 * same object.
 *
 * @throws RangeError where the model refuses the comparison
 */
export function predictedOf(comparison: Comparison, subject: string): Prediction {
  const known = bands(comparison);
  const found = known.get(subject) ?? ofKnife(predictor().predict(pairIn(comparison, subject)), subject);
  known.set(subject, found);
  return found;
}
