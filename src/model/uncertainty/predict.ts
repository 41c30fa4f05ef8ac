/** How far the inputs' ± and the model's disputed parameters carry through to the ratio. */

import type { Prediction } from './prediction.ts';
import { createPredictor } from './predictor.ts';
import type { Comparison } from '../types.ts';

/**
 * Runs the careful estimate of `compare` on samples of every uncertain input.
 *
 * A ± is uniform unless it names another shape; an unknown is uniform over its stated range; a plain number does not
 * vary. What all knives share is triangular (the wedging share and the power of the width uniform) over its usual range
 * where it is left out, and one sample of each is shared by all knives; the baseline's inputs are drawn once for all, and
 * so is the bias of a gauge. Each steel lies off the published line by exp(cv·z), z one standard normal draw that knives
 * with the same entries for hardness and carbide share. How the factors combine is drawn too: each sample takes one of the
 * three structures, for all knives alike. A draw the model refuses is repeated and counted. The same comparison, samples
 * and seed always give the same answer.
 *
 * The band holds the central 90% of the model's samples: if the model is about right, nine chances in ten that the ratio
 * lies between. It is no confidence interval.
 *
 * @param comparison as for `compare`
 * @param options samples, whole, 100 to 1000000; seed, whole, 0 to 4294967295
 * @returns one prediction a knife, in the order of the comparison
 * @throws RangeError for what `compare` refuses, for options outside those limits, and where hardly any draw is
 * accepted
 * @example predict({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { samples: 500, seed: 1 })[0].median // → 1
 * @example predict({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { samples: 500, seed: 1 })[1].beatsBaseline // → 1
 */
export function predict(comparison: Comparison, options: { samples: number; seed: number }): Prediction[] {
  return createPredictor(options).predict(comparison);
}
