import { refuse } from '../check.ts';
import { compare } from '../chain/compare.ts';
import { drawName } from './drawn.ts';
import { createMemory } from './memory.ts';
import type { Prediction } from './prediction.ts';
import { quantiles, shareAbove } from '../statistics/quantiles.ts';
import { namedPlaces } from '../statistics/random.ts';
import { runOf, type Run } from './sampled-run.ts';
import { sorted } from '../statistics/sorted.ts';
import type { Comparison } from '../types.ts';
import { weightedSum, type Values } from './values.ts';
import { evenSlices, slices, varianceShares } from './variance.ts';

/** Runs of one seed and number of samples, over comparisons that resemble each other. */
export interface Predictor {
  /** As `predict`: one prediction a knife, in the order of the comparison. */
  predict: (comparison: Comparison) => Prediction[];
  /**
   * ln of all sample ratios of one knife to the baseline, from the lowest to the highest: for dots and histograms. They
   * are kept, and not to be changed.
   */
  logRatios: (comparison: Comparison, knife: string) => Float64Array;
}

/**
 * A predictor that keeps its draws, and what it made of them, between calls. Every input has draws of its own under its
 * knife's id and its name, so a comparison that is changed in one place moves only there, smoothly and quickly.
 *
 * @param options samples, whole, 100 to 1000000; seed, whole, 0 to 4294967295
 * @throws RangeError for options outside those limits; its functions for what `compare` refuses, a gauge bias that is
 * not a ±, a knife that is not in the comparison, and where hardly any draw is accepted
 * @example createPredictor({ samples: 100, seed: 1 }).logRatios({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, 'plover')[99] // → 0
 */
export function createPredictor(options: { samples: number; seed: number }): Predictor {
  const { samples, seed } = options;
  if (!Number.isInteger(samples) || samples < 100 || samples > 1_000_000)
    refuse(`samples ${samples} is not a whole number from 100 to 1000000`);
  // The stream itself refuses a seed that is none.
  namedPlaces(seed, '');
  const memory = createMemory();

  /** ln of a knife's ratio to the baseline over the samples; a number where it does not vary. */
  const logRatio = ({ worths }: Run, comparison: Comparison, k: number): Values => {
    const own = worths.knives[k] ?? 0;
    const other = worths.knives[baselineOf(comparison)] ?? 0;
    if (own === other) return 0;
    return memory.keep<Values>(`ratio ${k}`, [own, other], (old) =>
      weightedSum(
        [
          [1, own],
          [-1, other],
        ],
        old,
      ),
    );
  };

  /** Not in the room of the one before, which may have been handed out. */
  const inOrder = (logs: Float64Array, k: number): Float64Array =>
    memory.keep(`ratio ${k} in order`, [logs], () => sorted(logs));

  /** The slices of every input that may move a knife's ratio, by the name it is reported under. */
  const slicesOf = (
    { inputs, drawn, worths }: Run,
    comparison: Comparison,
    k: number,
  ): Record<string, Uint8Array> => {
    const id = comparison.knives[k]?.id;
    const out: Record<string, Uint8Array> = {};
    inputs.forEach((input, j) => {
      const even = drawn[j]?.even ?? null;
      // The residual and its size count as one, below.
      if (even === null || input.name === 'residual' || input.name === 'residualCv') return;
      const sliced = () => memory.keep(`${drawName(input)} slices`, [even], () => evenSlices(even));
      if (input.knife === null || input.knife === id) out[input.name] = sliced();
      else if (input.knife === comparison.baseline) out[`baseline.${input.name}`] = sliced();
    });
    const own = worths.residuals[k] ?? 0;
    const other = worths.residuals[baselineOf(comparison)] ?? 0;
    const residual = memory.keep(`${k} residual slices`, [own, other], () => {
      const difference = weightedSum([
        [1, own],
        [-1, other],
      ]);
      return typeof difference === 'number' || difference.every((v) => v === 0) ? null : slices(difference);
    });
    if (residual !== null) out['residual'] = residual;
    return out;
  };

  return {
    predict(comparison) {
      // The middle values first: what is wrong with them is told as it stands, not as a failed draw.
      const { rows } = compare(comparison);
      const now = runOf(comparison, samples, seed, memory);
      const predictions = rows.map(({ knife, product }, k): Prediction => {
        const logs = logRatio(now, comparison, k);
        const { redrawn } = now;
        if (typeof logs === 'number')
          return {
            knife,
            low: product,
            median: product,
            high: product,
            beatsBaseline: product > 1 ? 1 : 0,
            variance: {},
            redrawn,
          };
        const order = inOrder(logs, k);
        const [low = 0, median = 0, high = 0] = quantiles(order, [0.05, 0.5, 0.95]);
        return {
          knife,
          low: Math.exp(low),
          median: Math.exp(median),
          high: Math.exp(high),
          beatsBaseline: shareAbove(order, 0),
          variance: varianceShares(logs, slicesOf(now, comparison, k)),
          redrawn,
        };
      });
      memory.sweep();
      return predictions;
    },
    logRatios(comparison, knife) {
      const { rows } = compare(comparison);
      const k = rows.findIndex((row) => row.knife === knife);
      const product = rows[k]?.product;
      if (product === undefined)
        return refuse(
          `knife ${knife} is not among the knives: ${comparison.knives.map(({ id }) => id).join(', ')}`,
        );
      const logs = logRatio(runOf(comparison, samples, seed, memory), comparison, k);
      return typeof logs === 'number' ? new Float64Array(samples).fill(Math.log(product)) : inOrder(logs, k);
    },
  };
}

const baselineOf = ({ knives, baseline }: Comparison): number =>
  knives.findIndex(({ id }) => id === baseline);
