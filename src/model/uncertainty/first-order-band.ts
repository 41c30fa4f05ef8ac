import { refuse } from '../check.ts';
import { compare } from '../chain/compare.ts';
import { noMemory } from '../chain/memory.ts';
import { structures, weightsOf } from '../chain/structures.ts';
import { at } from '../chain/values.ts';
import type { Comparison } from '../types.ts';
import { inputsOf } from './inputs.ts';
import { livesOf } from './lives.ts';
import { firstOrder } from './propagation.ts';
import { readerOf } from './sampled-run.ts';
import { NORMAL_95, type Spread } from './sampling.ts';

/** What one input adds to the standard deviation of ln ratio, to first order. */
export interface Sensitivity {
  /** As `Prediction.variance` names it, and the knife it belongs to; null for what all knives share. */
  name: string;
  knife: string | null;
  /** Standard uncertainty of the input, in its unit. */
  u: number;
  /** How far ln ratio moves per unit of the input, both routes of an angle together. */
  sensitivity: number;
}

export interface FirstOrderBand {
  /** Standard deviation of ln ratio. */
  logSd: number;
  /** The middle: the mean, in the logarithm, of the three totals at the middle settings, by their weights. */
  middle: number;
  /** The central 90% if ln ratio were normal about that middle. */
  low: number;
  high: number;
  sensitivities: Sensitivity[];
}

/** The 95% point of a normal distribution: 90% lie within ± so many standard deviations. */
const NORMAL_90 = 1.644854;

/** How far an input is moved for its slope, in standard uncertainties. */
const STEP = 1e-3;

/**
 * The band of a knife's ratio by first-order propagation, ln ratio taken as straight in every input about the middle
 * values (JCGM 100, 5.1.2): the sum one can do by hand, to stand beside the sampling of `predict`. It is good where the
 * ± are small, and parts from the sampling where they are not. The structure is one more input: its standard uncertainty
 * is the scatter of the three totals, and the slopes of the others are means over the three.
 *
 * @param comparison as for `compare`
 * @throws RangeError for what `compare` refuses, and a knife that is not in the comparison
 * @example firstOrderBand({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, 'plover').logSd // → 0
 */
export function firstOrderBand(comparison: Comparison, knife: string): FirstOrderBand {
  const row = compare(comparison).rows.find((candidate) => candidate.knife === knife);
  if (!row)
    return refuse(
      `knife ${knife} is not among the knives: ${comparison.knives.map(({ id }) => id).join(', ')}`,
    );
  // The ratio is of two: what the others are does not move it.
  const two = {
    ...comparison,
    knives: comparison.knives.filter(({ id }) => id === knife || id === comparison.baseline),
  };
  const weights = weightsOf(comparison.assumptions);
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value, i) => sum + value * (weights[i] ?? 0), 0);
  const totals = structures.map((structure) => Math.log(row[structure]));
  const middle = mean(totals);
  const scatter = Math.sqrt(mean(totals.map((total) => (total - middle) ** 2)));
  const sensitivities = slopesOf(two, knife, mean);
  if (scatter > 0) sensitivities.push({ name: 'structure', knife: null, u: scatter, sensitivity: 1 });
  const logSd = firstOrder(sensitivities);
  const reach = Math.exp(NORMAL_90 * logSd);
  const ratio = Math.exp(middle);
  return { logSd, middle: ratio, low: ratio / reach, high: ratio * reach, sensitivities };
}

/** How far each input that is not known exactly moves ln ratio, as the mean over the structures. */
function slopesOf(
  two: Comparison,
  knife: string,
  mean: (values: readonly number[]) => number,
): Sensitivity[] {
  const inputs = inputsOf(two);
  const moved = inputs.flatMap((input) => {
    const { middle, allowed } = input.spread;
    const u = standardUncertainty(input.spread);
    // At the end of what the model takes there is a slope on one side alone.
    const [below, above] = [
      Math.max(allowed.low, middle - u * STEP),
      Math.min(allowed.high, middle + u * STEP),
    ];
    return u === 0 || input.name === 'structure' ? [] : [{ input, u, below, above }];
  });
  // A run of two samples for every input that may move: it alone a little below its middle, and a little above.
  const drawn = inputs.map((input) => {
    const { middle } = input.spread;
    const j = moved.findIndex((one) => one.input === input);
    const own = moved[j];
    if (!own) return { values: middle };
    const values = new Float64Array(2 * moved.length).fill(middle);
    values.set([own.below, own.above], 2 * j);
    return { values };
  });
  const runs = structures.map((_, place) => livesOf(two, readerOf(inputs, drawn), noMemory, place).knives);
  const logRatios = (sample: number): number[] =>
    runs.map((lives) => {
      const of = (id: string) => at(lives[two.knives.findIndex((own) => own.id === id)] ?? 0, sample);
      return of(knife) - of(two.baseline);
    });
  return moved.flatMap(({ input: { name, knife: owner }, u, below, above }, j): Sensitivity[] => {
    const sensitivity = (mean(logRatios(2 * j + 1)) - mean(logRatios(2 * j))) / (above - below);
    return sensitivity === 0 || !Number.isFinite(sensitivity) ? [] : [{ name, knife: owner, u, sensitivity }];
  });
}

/** The standard deviation of a spread (JCGM 100, 4.3.7 and 4.3.9; a triangle need not be even-sided). */
function standardUncertainty({ shape, low, middle, high }: Spread): number {
  if (shape === 'uniform') return (high - low) / Math.sqrt(12);
  if (shape === 'normal') return (high - middle) / NORMAL_95;
  const squares = low * low + middle * middle + high * high - low * middle - low * high - middle * high;
  return Math.sqrt(squares / 18);
}
