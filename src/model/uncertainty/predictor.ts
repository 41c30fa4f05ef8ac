import { refuse } from '../check.ts';
import { compare } from '../chain/compare.ts';
import { drawName } from './drawn.ts';
import { createMemory, noMemory } from '../chain/memory.ts';
import type { Memory } from '../chain/memory.ts';
import { structures } from '../chain/structures.ts';
import { differences, type Values } from '../chain/values.ts';
import { livesOf } from './lives.ts';
import type { Band, Prediction } from './prediction.ts';
import { quantiles, shareAbove } from '../statistics/quantiles.ts';
import { namedPlaces } from '../statistics/random.ts';
import { readerOf, runOf, type Run } from './sampled-run.ts';
import { sorted } from '../statistics/sorted.ts';
import type { Comparison, Structure } from '../types.ts';
import { evenSlices, slices, varianceShares } from './variance.ts';

/** Runs of one seed and number of samples, over comparisons that resemble each other. */
export interface Predictor {
  /** As `predict`: one prediction a knife, in the order of the comparison. */
  predict: (comparison: Comparison) => Prediction[];
  /**
   * ln of all sample ratios of one knife to the baseline, from the lowest to the highest, or of those that took one
   * structure: for dots and histograms. They are kept, and not to be changed.
   */
  logRatios: (comparison: Comparison, knife: string, structure?: Structure) => Float64Array;
}

const POINTS = [0.05, 0.5, 0.95];

/** The band of ratios whose logarithms are in order. */
function bandOf(inOrder: Float64Array): Band {
  const [low = 0, median = 0, high = 0] = quantiles(inOrder, POINTS);
  return { low: Math.exp(low), median: Math.exp(median), high: Math.exp(high) };
}

/** The values of the samples that took a structure. */
function picked(values: Float64Array, taken: Float64Array, place: number): Float64Array {
  const out = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i += 1) {
    if (taken[i] !== place) continue;
    out[count] = values[i] ?? 0;
    count += 1;
  }
  return out.slice(0, count);
}

/** Fewer samples of a structure than this say little of it: all are then looked at as if they had it. */
const FEWEST = 100;

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
  const held: Held = { samples, memory: createMemory() };
  const run = (comparison: Comparison): Run => runOf(comparison, samples, seed, held.memory);
  return {
    predict(comparison) {
      // The middle values first: what is wrong with them is told as it stands, not as a failed draw.
      const { rows } = compare(comparison);
      const now = run(comparison);
      const predictions = rows.map(({ knife }, k) => predictionOf(held, now, comparison, knife, k));
      held.memory.sweep();
      return predictions;
    },
    logRatios(comparison, knife, structure) {
      const { rows } = compare(comparison);
      const k = rows.findIndex((row) => row.knife === knife);
      if (k < 0)
        return refuse(
          `knife ${knife} is not among the knives: ${comparison.knives.map(({ id }) => id).join(', ')}`,
        );
      const now = run(comparison);
      if (structure !== undefined) return inOrderOf(held, now, comparison, k, structure);
      const logs = logRatio(held, now, comparison, k);
      return typeof logs === 'number' ? new Float64Array(samples).fill(logs) : inOrder(held, logs, k);
    },
  };
}

/** What a predictor keeps between calls. */
interface Held {
  samples: number;
  memory: Memory;
}

/** ln of a knife's ratio to the baseline over the samples; a number where it does not vary. */
function logRatio({ memory }: Held, { lives }: Run, comparison: Comparison, k: number): Values {
  const own = lives.knives[k] ?? 0;
  const other = lives.knives[baselineOf(comparison)] ?? 0;
  if (own === other) return 0;
  return memory.keep<Values>(`ratio ${k}`, [own, other], (old) => differences(own, other, old));
}

/** Not in the room of the one before, which may have been handed out. */
const inOrder = ({ memory }: Held, logs: Float64Array, k: number): Float64Array =>
  memory.keep(`ratio ${k} in order`, [logs], () => sorted(logs));

/** ln of the ratios of the samples that took a structure, in order; of all, as if they had, where too few did. */
function inOrderOf(
  held: Held,
  run: Run,
  comparison: Comparison,
  k: number,
  structure: Structure,
): Float64Array {
  const { samples, memory } = held;
  const place = structures.indexOf(structure);
  const logs = logRatio(held, run, comparison, k);
  const taken = run.lives.structure;
  if (run.lives.knives[k] === run.lives.knives[baselineOf(comparison)]) return new Float64Array(samples);
  if (typeof taken !== 'number' && typeof logs !== 'number') {
    const own = memory.keep(`ratio ${k} ${structure}`, [logs, taken], () =>
      sorted(picked(logs, taken, place)),
    );
    if (own.length >= FEWEST) return own;
  } else if (taken === place && typeof logs !== 'number') return inOrder(held, logs, k);
  const { knives } = livesOf(comparison, readerOf(run.inputs, run.drawn), noMemory, place);
  const ratio = differences(knives[k] ?? 0, knives[baselineOf(comparison)] ?? 0);
  return typeof ratio === 'number' ? new Float64Array(samples).fill(ratio) : sorted(ratio);
}

/** The slices of every input that may move a knife's ratio, by the name it is reported under. */
function slicesOf(
  { memory }: Held,
  { inputs, drawn, lives }: Run,
  comparison: Comparison,
  k: number,
): Record<string, Uint8Array> {
  const id = comparison.knives[k]?.id;
  const out: Record<string, Uint8Array> = {};
  inputs.forEach((input, j) => {
    const even = drawn[j]?.even ?? null;
    // The residual and its size count as one, below, and so does the structure.
    if (even === null || ['residual', 'residualCv', 'structure'].includes(input.name)) return;
    const sliced = () => memory.keep(`${drawName(input)} slices`, [even], () => evenSlices(even));
    if (input.knife === null || input.knife === id) out[input.name] = sliced();
    else if (input.knife === comparison.baseline) out[`baseline.${input.name}`] = sliced();
  });
  const { structure } = lives;
  if (typeof structure !== 'number')
    out['structure'] = memory.keep('structure slices', [structure], () => Uint8Array.from(structure));
  const own = lives.residuals[k] ?? 0;
  const other = lives.residuals[baselineOf(comparison)] ?? 0;
  const residual = memory.keep(`${k} residual slices`, [own, other], () => {
    const difference = differences(own, other);
    return typeof difference === 'number' || difference.every((v) => v === 0) ? null : slices(difference);
  });
  if (residual !== null) out['residual'] = residual;
  return out;
}

function predictionOf(held: Held, run: Run, comparison: Comparison, knife: string, k: number): Prediction {
  const logs = logRatio(held, run, comparison, k);
  const { redrawn } = run;
  const byStructure = Object.fromEntries(
    structures.map((structure) => [structure, bandOf(inOrderOf(held, run, comparison, k, structure))]),
  ) as Record<Structure, Band>;
  if (typeof logs === 'number') {
    const ratio = Math.exp(logs);
    const band = { low: ratio, median: ratio, high: ratio };
    return { knife, ...band, beatsBaseline: logs > 0 ? 1 : 0, byStructure, variance: {}, redrawn };
  }
  const order = inOrder(held, logs, k);
  const variance = varianceShares(logs, slicesOf(held, run, comparison, k));
  return { knife, ...bandOf(order), beatsBaseline: shareAbove(order, 0), byStructure, variance, redrawn };
}

const baselineOf = ({ knives, baseline }: Comparison): number =>
  knives.findIndex(({ id }) => id === baseline);
