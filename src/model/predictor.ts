/** Predictions that come again quickly when a line-up moves: draws are made once and only transformed. */

import { refuse } from './check.ts';
import { compare } from './compare.ts';
import { drawName, drawnFrom, evenDraws, MOST_ATTEMPTS, redraw, type Drawn } from './drawn.ts';
import { inputsOf, type Input } from './inputs.ts';
import { createMemory, noMemory, type Memory } from './memory.ts';
import type { Prediction } from './prediction.ts';
import { parameters } from './quantities.ts';
import { quantiles } from './quantiles.ts';
import { namedPlaces } from './random.ts';
import { pointOf, workOf } from './terms.ts';
import type { LineUp } from './types.ts';
import { replaced, weightedSum, type Values } from './values.ts';
import { evenSlices, slices, varianceShares } from './variance.ts';
import { refusedSamples, worthsOf, type Worths } from './worth.ts';

/** Runs of one seed and number of samples, over line-ups that resemble each other. */
export interface Predictor {
  /** As `predict`: one prediction a knife, in the order of the line-up. */
  predict: (lineUp: LineUp) => Prediction[];
  /** All sample ratios of one knife to the baseline, from the lowest to the highest: for dots and histograms. */
  ratios: (lineUp: LineUp, knife: string) => Float64Array;
}

interface Run {
  inputs: readonly Input[];
  drawn: readonly Drawn[];
  worths: Worths;
  /** Samples drawn again as a whole, because inputs did not fit each other. */
  refused: Uint32Array;
  redrawn: number;
}

/**
 * A predictor that keeps its draws, and what it made of them, between calls. Every input has draws of its own under its
 * knife's id and its name, so a line-up that is changed in one place moves only there, smoothly and quickly.
 *
 * @param options samples, whole, 100 to 1000000; seed, whole, 0 to 4294967295
 * @throws RangeError for options outside those limits; its functions for what `compare` refuses, a gauge bias that is
 * not a ±, a knife that is not in the line-up, and where hardly any draw is accepted
 * @example createPredictor({ samples: 100, seed: 1 }).ratios({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, 'plover')[99] // → 1
 */
export function createPredictor(options: { samples: number; seed: number }): Predictor {
  const { samples, seed } = options;
  if (!Number.isInteger(samples) || samples < 100 || samples > 1_000_000)
    refuse(`samples ${samples} is not a whole number from 100 to 1000000`);
  // The stream itself refuses a seed that is none.
  namedPlaces(seed, '');
  const memory = createMemory();
  const room = new Float64Array(samples);

  const run = (lineUp: LineUp): Run => {
    const speaks = regressionSpeaks(lineUp);
    const inputs = inputsOf(lineUp, speaks);
    const drawn = inputs.map((input) => {
      const name = drawName(input);
      const { shape, low, middle, high, allowed } = input.spread;
      if (low === high) return { even: null, values: middle, repeated: 0 };
      const even = memory.keep(`${name} even`, [], () => evenDraws(seed, name, samples));
      return memory.keep<Drawn>(name, [shape, low, middle, high, allowed.low, allowed.high], (old) =>
        drawnFrom(even, seed, input, old?.values),
      );
    });
    const worths = worthsOf(lineUp, speaks, readerOf(inputs, drawn), memory);
    const refused = memory.keep('refused', [...worths.knives, worths.margin], () =>
      refusedSamples(worths, samples),
    );
    const repeated = drawn.reduce((sum, { repeated: count }) => sum + count, 0);
    if (refused.length === 0) return { inputs, drawn, worths, refused, redrawn: repeated };

    const again = redrawTogether(lineUp, speaks, inputs, refused, seed);
    const put = (values: Values, k: number, others: readonly Values[]): Values =>
      replaced(values, samples, refused, others[k] ?? 0);
    return {
      inputs,
      drawn: drawn.map(({ even, values }, j) => ({
        even: even === null ? null : replacedEven(even, refused, again.even[j]),
        values,
        repeated: 0,
      })),
      worths: {
        knives: worths.knives.map((values, k) => put(values, k, again.worths.knives)),
        residuals: worths.residuals.map((values, k) => put(values, k, again.worths.residuals)),
        margin: worths.margin,
      },
      refused,
      redrawn: repeated + again.repeated,
    };
  };

  /** ln of a knife's ratio to the baseline over the samples; a number where it does not vary. */
  const logRatio = ({ worths }: Run, lineUp: LineUp, k: number): Values => {
    const own = worths.knives[k] ?? 0;
    const other = worths.knives[baselineOf(lineUp)] ?? 0;
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

  /** The slices of every input that may move a knife's ratio, by the name it is reported under. */
  const slicesOf = (
    { inputs, drawn, worths }: Run,
    lineUp: LineUp,
    k: number,
  ): Record<string, Uint8Array> => {
    const id = lineUp.knives[k]?.id;
    const out: Record<string, Uint8Array> = {};
    inputs.forEach((input, j) => {
      const even = drawn[j]?.even ?? null;
      // The residual and its size count as one, below.
      if (even === null || input.name === 'residual' || input.name === 'residualCv') return;
      const sliced = () => memory.keep(`${drawName(input)} slices`, [even], () => evenSlices(even));
      if (input.knife === null || input.knife === id) out[input.name] = sliced();
      else if (input.knife === lineUp.baseline) out[`baseline.${input.name}`] = sliced();
    });
    const own = worths.residuals[k] ?? 0;
    const other = worths.residuals[baselineOf(lineUp)] ?? 0;
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
    predict(lineUp) {
      // The middle values first: what is wrong with them is told as it stands, not as a failed draw.
      const { rows } = compare(lineUp);
      const now = run(lineUp);
      const predictions = rows.map(({ knife, product }, k): Prediction => {
        const logs = logRatio(now, lineUp, k);
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
        const [low = 0, median = 0, high = 0] = quantiles(logs, [0.05, 0.5, 0.95], room);
        let above = 0;
        for (let i = 0; i < samples; i += 1) if ((logs[i] ?? 0) > 0) above += 1;
        return {
          knife,
          low: Math.exp(low),
          median: Math.exp(median),
          high: Math.exp(high),
          beatsBaseline: above / samples,
          variance: varianceShares(logs, slicesOf(now, lineUp, k)),
          redrawn,
        };
      });
      memory.sweep();
      return predictions;
    },
    ratios(lineUp, knife) {
      const { rows } = compare(lineUp);
      const k = rows.findIndex((row) => row.knife === knife);
      const product = rows[k]?.product;
      if (product === undefined)
        return refuse(
          `knife ${knife} is not among the knives: ${lineUp.knives.map(({ id }) => id).join(', ')}`,
        );
      const logs = logRatio(run(lineUp), lineUp, k);
      if (typeof logs === 'number') return new Float64Array(samples).fill(product);
      return logs.map(Math.exp).sort();
    },
  };
}

/** Decided once, at the middle values, and held for all samples. */
function regressionSpeaks(lineUp: LineUp): boolean {
  const depthMm = lineUp.contactDepthMm ?? parameters.contactDepthMm.default;
  return (
    workOf(
      lineUp,
      lineUp.knives.map((knife) => pointOf(knife, depthMm)),
    ).regressionRefused === null
  );
}

const baselineOf = ({ knives, baseline }: LineUp): number => knives.findIndex(({ id }) => id === baseline);

/** The values of an input by knife and name; 0 for one there is no need to draw. */
function readerOf(inputs: readonly Input[], drawn: readonly { values: Values }[]) {
  const byName = new Map(inputs.map((input, j) => [drawName(input), drawn[j]?.values ?? 0]));
  return (knife: string | null, name: string): Values => byName.get(drawName({ knife, name })) ?? 0;
}

function replacedEven(
  even: Float64Array,
  places: Uint32Array,
  others: Float64Array | undefined,
): Float64Array {
  const out = even.slice();
  places.forEach((place, j) => {
    out[place] = others?.[j] ?? 0;
  });
  return out;
}

/** Draws every input of some samples again, together, until the model accepts each of them. */
function redrawTogether(
  lineUp: LineUp,
  speaks: boolean,
  inputs: readonly Input[],
  places: Uint32Array,
  seed: number,
): { even: Float64Array[]; worths: Worths; repeated: number } {
  const streams = inputs.map((input) => namedPlaces(seed, `${drawName(input)} together`));
  const even = inputs.map(() => new Float64Array(places.length));
  const values = inputs.map(({ spread }) => new Float64Array(places.length).fill(spread.middle));
  const attempts = new Uint32Array(places.length);
  const memory: Memory = noMemory;
  let repeated = 0;
  let open = Uint32Array.from(places, (_, j) => j);
  for (let round = 0; open.length > 0; round += 1) {
    if (round > MOST_ROUNDS)
      throw new RangeError(
        `the stated ranges hardly ever fit each other: ${open.length} of ${places.length} samples were refused ${MOST_ROUNDS} times`,
      );
    repeated += open.length;
    for (const j of open) {
      const place = places[j] ?? 0;
      inputs.forEach((input, n) => {
        if (input.spread.low === input.spread.high) return;
        const start = attempts[j] ?? 0;
        const got = redraw(input.spread, (attempt) => streams[n]?.(place, start + attempt) ?? 0.5, input);
        repeated += got.attempts - 1;
        set(even[n], j, got.even);
        set(values[n], j, got.value);
      });
      attempts[j] = (attempts[j] ?? 0) + MOST_ATTEMPTS;
    }
    const tried = values.map((all) => ({ values: Float64Array.from(open, (j) => all[j] ?? 0) }));
    const worths = worthsOf(lineUp, speaks, readerOf(inputs, tried), memory);
    const still = refusedSamples(worths, open.length);
    open = still.map((j) => open[j] ?? 0);
  }
  const drawn = values.map((all) => ({ values: all }));
  return { even, worths: worthsOf(lineUp, speaks, readerOf(inputs, drawn), memory), repeated };
}

/** Rounds of drawing whole samples again before the line-up itself is called impossible. */
const MOST_ROUNDS = 2000;

function set(array: Float64Array | undefined, j: number, value: number): void {
  if (array !== undefined) array[j] = value;
}
