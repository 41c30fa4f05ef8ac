/** How far the inputs' ± and the model's disputed parameters carry through to the ratio. */

import { refuse } from './check.ts';
import { compare } from './compare.ts';
import { drawable, type Input } from './inputs.ts';
import { parameters } from './quantities.ts';
import { uniformStream } from './random.ts';
import { draw } from './sampling.ts';
import { pointOf, terms, workOf } from './terms.ts';
import type { LineUp } from './types.ts';
import { slices, varianceShares } from './variance.ts';

/** One knife's ratio to the baseline over all samples: no unit, above 1 is longer. */
export interface Prediction {
  knife: string;
  /** The 5 %, 50 % and 95 % points: the central 90 % of the samples and their middle. */
  low: number;
  median: number;
  high: number;
  /** Share of the samples in which the knife cuts longer than the baseline, 0 to 1. */
  beatsBaseline: number;
  /**
   * First-order share of the variance of ln ratio by input: `angleDeg` is the knife's own, `baseline.angleDeg` the
   * baseline's, `friction` and the exponents are shared; `together` is what only several inputs at once explain. Sums
   * to 1; empty where the ratio does not vary.
   */
  variance: Record<string, number>;
  /** Draws of the whole run that were repeated because they lay outside what the model accepts. */
  redrawn: number;
}

/** Draws in a row that may be refused before the line-up itself is called impossible. */
const MOST_REFUSALS = 1000;

/**
 * Runs the close reading of `compare` on samples of every uncertain input.
 *
 * A ± is uniform unless it names another shape; an unknown is uniform over its stated range; a plain number does not
 * vary. Friction and exponents are triangular, over their usual range where they are left out, and one sample of each
 * is shared by all knives; the baseline's inputs are drawn once for all. A draw the model refuses is repeated and
 * counted. The same line-up, samples and seed always give the same answer.
 *
 * The band holds the central 90 % of the model's samples. It is no confidence interval, and it knows nothing of the
 * error of the model's own form.
 *
 * @param lineUp as for `compare`
 * @param options samples, whole, 100 to 1000000; seed, whole, 0 to 4294967295
 * @returns one prediction a knife, in the order of the line-up
 * @throws RangeError for what `compare` refuses, for options outside those limits, and where hardly any draw is
 * accepted
 * @example predict({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { samples: 500, seed: 1 })[0].median // → 1
 * @example predict({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { samples: 500, seed: 1 })[1].beatsBaseline // → 1
 */
export function predict(lineUp: LineUp, options: { samples: number; seed: number }): Prediction[] {
  const { samples, seed } = options;
  if (!Number.isInteger(samples) || samples < 100 || samples > 1_000_000) {
    throw new RangeError(`samples ${samples} is not a whole number from 100 to 1000000`);
  }
  const uniform = uniformStream(seed);
  // The middle values first: what is wrong with them is told as it stands, not as a failed draw.
  compare(lineUp);

  const { draft, inputs } = drawable(lineUp);
  const values = inputs.map(() => new Float64Array(samples));
  const logRatios = lineUp.knives.map(() => new Float64Array(samples));
  let redrawn = 0;
  for (let i = 0; i < samples; i += 1) {
    for (let refusals = 0; ; refusals += 1) {
      redrawn += drawAll(inputs, values, i, uniform);
      try {
        logRatiosOf(draft).forEach((value, k) => {
          put(logRatios[k], i, value);
        });
        break;
      } catch (error) {
        // Inputs that do not fit each other, such as an edge drawn thicker than the spine: all are drawn again.
        if (!(error instanceof RangeError) || refusals >= MOST_REFUSALS) throw error;
        redrawn += 1;
      }
    }
  }

  const sliced = inputs.map((input, j) => ({ input, slice: slices(values[j] ?? new Float64Array()) }));
  return lineUp.knives.map(({ id }, k) => {
    const logs = logRatios[k] ?? new Float64Array();
    const sorted = logs.slice().sort();
    const own: Record<string, Uint8Array> = {};
    for (const { input, slice } of sliced) {
      if (id === lineUp.baseline) continue;
      if (input.knife === null || input.knife === id) own[input.name] = slice;
      else if (input.knife === lineUp.baseline) own[`baseline.${input.name}`] = slice;
    }
    return {
      knife: id,
      low: Math.exp(quantile(sorted, 0.05)),
      median: Math.exp(quantile(sorted, 0.5)),
      high: Math.exp(quantile(sorted, 0.95)),
      beatsBaseline: logs.filter((v) => v > 0).length / samples,
      variance: varianceShares(logs, own),
      redrawn,
    };
  });
}

/** ln of each knife's ratio to the baseline: the terms of `compare`, without its notes and shares. */
function logRatiosOf(lineUp: LineUp): number[] {
  const depth = lineUp.contactDepthMm ?? parameters.contactDepthMm.default;
  const points = lineUp.knives.map((knife) => pointOf(knife, depth));
  for (const { name, angleDeg, apexAngleDeg } of points) {
    if (apexAngleDeg < angleDeg) {
      refuse(`${name}: microbevel angle ${apexAngleDeg}° is not at least the bevel's ${angleDeg}°`);
    }
  }
  const work = workOf(lineUp, points);
  const baseline = points[lineUp.knives.findIndex(({ id }) => id === lineUp.baseline)];
  return points.map((point) => {
    if (baseline === undefined || point === baseline) return 0;
    return terms.reduce((sum, term) => {
      const { factor } = term.close(point, baseline, work);
      return factor === null ? sum : sum + Math.log(factor);
    }, 0);
  });
}

function put(array: Float64Array | undefined, i: number, value: number): void {
  if (array !== undefined) array[i] = value;
}

/** Draws every input into sample i; returns how many draws had to be repeated. */
function drawAll(
  inputs: readonly Input[],
  values: readonly Float64Array[],
  i: number,
  uniform: () => number,
): number {
  let repeated = 0;
  inputs.forEach((input, j) => {
    const { spread } = input;
    let value = draw(spread, uniform);
    while (value < spread.allowed.low || value > spread.allowed.high) {
      repeated += 1;
      value = draw(spread, uniform);
    }
    put(values[j], i, value);
    input.set(value);
  });
  return repeated;
}

/** The point below which a share p of the sorted values lies, straight between neighbours. */
function quantile(sorted: Float64Array, p: number): number {
  const place = p * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] ?? Number.NaN;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? Number.NaN;
  return low + (place - below) * (high - low);
}
