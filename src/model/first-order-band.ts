import { refuse } from './check.ts';
import { compare } from './compare.ts';
import { drawName } from './drawn.ts';
import { inputsOf, steelOwners, type Input } from './inputs.ts';
import { noMemory } from './memory.ts';
import { firstOrder } from './propagation.ts';
import { regressionSpeaks } from './run.ts';
import { NORMAL_95, type Spread } from './sampling.ts';
import type { LineUp } from './types.ts';
import { worthOf } from './worth.ts';

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
  /** The central 90 % if ln ratio were normal about the close reading's ratio. */
  low: number;
  high: number;
  sensitivities: Sensitivity[];
}

/** The 95 % point of a normal distribution: 90 % lie within ± so many standard deviations. */
const NORMAL_90 = 1.644854;

/**
 * The band of a knife's ratio by first-order propagation, ln ratio taken as straight in every input about the middle
 * values (JCGM 100, 5.1.2): the sum one can do by hand, to stand beside the sampling of `predict`. It is good where the
 * ± are small, and parts from the sampling where they are not.
 *
 * @param lineUp as for `compare`
 * @throws RangeError for what `compare` refuses, and a knife that is not in the line-up
 * @example firstOrderBand({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, 'plover').logSd // → 0
 */
export function firstOrderBand(lineUp: LineUp, knife: string): FirstOrderBand {
  const row = compare(lineUp).rows.find((candidate) => candidate.knife === knife);
  if (!row)
    return refuse(`knife ${knife} is not among the knives: ${lineUp.knives.map(({ id }) => id).join(', ')}`);
  const speaks = regressionSpeaks(lineUp);
  const inputs = inputsOf(lineUp, speaks);
  const middles = new Map(inputs.map((input) => [drawName(input), input.spread.middle]));
  const owners = steelOwners(lineUp);
  /** The two knives whose worths make the ratio. */
  const sides = lineUp.knives.flatMap((own, k) =>
    ([knife, lineUp.baseline] as const).flatMap((id, i) =>
      id === own.id ? [{ sign: i === 0 ? 1 : -1, own, steelOwner: owners[k] ?? id }] : [],
    ),
  );
  type Side = (typeof sides)[number];
  /** ln worth of a knife with one input moved. */
  const worthAt = ({ own, steelOwner }: Side, moved: string, value: number): number => {
    const read = (owner: string | null, name: string) => {
      const full = drawName({ knife: owner, name });
      return full === moved ? value : (middles.get(full) ?? 0);
    };
    return Number(worthOf(lineUp, own, steelOwner, speaks, read, noMemory).worth);
  };
  /** Those of the two that an input moves; a residual belongs to a steel, and is named after the first knife of it. */
  const moving = ({ name, knife: owner }: Input): Side[] =>
    sides.filter(({ own }) => owner === null || owner === own.id || name === 'residual');
  const sensitivities = inputs.flatMap((input): Sensitivity[] => {
    const { name, knife: owner, spread } = input;
    const u = standardUncertainty(spread);
    if (u === 0) return [];
    const full = drawName(input);
    const step = u * 1e-3;
    // At the end of what the model takes there is a slope on one side alone.
    const below = Math.max(spread.allowed.low, spread.middle - step);
    const above = Math.min(spread.allowed.high, spread.middle + step);
    const rise = moving(input).reduce(
      (sum, side) => sum + side.sign * (worthAt(side, full, above) - worthAt(side, full, below)),
      0,
    );
    const sensitivity = rise / (above - below);
    return sensitivity === 0 || !Number.isFinite(sensitivity) ? [] : [{ name, knife: owner, u, sensitivity }];
  });
  const logSd = firstOrder(sensitivities);
  const reach = Math.exp(NORMAL_90 * logSd);
  return { logSd, low: row.product / reach, high: row.product * reach, sensitivities };
}

/** The standard deviation of a spread (JCGM 100, 4.3.7 and 4.3.9; a triangle need not be even-sided). */
function standardUncertainty({ shape, low, middle, high }: Spread): number {
  if (shape === 'uniform') return (high - low) / Math.sqrt(12);
  if (shape === 'normal') return (high - middle) / NORMAL_95;
  const squares = low * low + middle * middle + high * high - low * middle - low * high - middle * high;
  return Math.sqrt(squares / 18);
}
