/** One run: every input of a comparison drawn, and how long the knives cut in each sample. */

import { drawName, drawnFrom, MOST_ATTEMPTS, redraw, type Drawn } from './drawn.ts';
import { inputsOf, type Input } from './inputs.ts';
import { noMemory, type Memory } from '../chain/memory.ts';
import { replaced, roomFor, type Values } from '../chain/values.ts';
import { drawUniform, namedPlaces } from '../statistics/random.ts';
import type { Comparison } from '../types.ts';
import { livesOf, refusedSamples, type Lives } from './lives.ts';

export interface Run {
  inputs: readonly Input[];
  drawn: readonly Drawn[];
  lives: Lives;
  /** Samples drawn again as a whole, because inputs did not fit each other. */
  refused: Uint32Array;
  redrawn: number;
}

/**
 * Runs a comparison that `compare` accepts.
 *
 * @param memory keeps draws and parts from run to run. What a run gives is
 * good until the next one with this memory.
 * @throws RangeError where hardly any draw is accepted, or a gauge's bias is no ±
 */
export function runOf(comparison: Comparison, samples: number, seed: number, memory: Memory): Run {
  const inputs = inputsOf(comparison);
  const drawn = inputs.map((input) => {
    const name = drawName(input);
    const { shape, low, middle, high, allowed } = input.spread;
    if (low === high) return { even: null, values: middle, repeated: 0 };
    const even = memory.keep<Float64Array>(`${name} even`, [seed, samples], (old) =>
      drawUniform(seed, name, roomFor(samples, old)),
    );
    return memory.keep<Drawn>(name, [even, shape, low, middle, high, allowed.low, allowed.high], (old) =>
      drawnFrom(even, seed, input, old?.values),
    );
  });
  const lives = livesOf(comparison, readerOf(inputs, drawn), memory);
  const refused = memory.keep('refused', [...lives.knives, lives.structure], () =>
    refusedSamples(lives, samples),
  );
  const repeated = drawn.reduce((sum, { repeated: count }) => sum + count, 0);
  if (refused.length === 0) return { inputs, drawn, lives, refused, redrawn: repeated };

  const again = redrawTogether(comparison, inputs, refused, seed);
  const put = (values: Values, k: number, others: readonly Values[]): Values =>
    replaced(values, samples, refused, others[k] ?? 0);
  return {
    inputs,
    drawn: drawn.map((before, j) => ({
      even: before.even === null ? null : replacedEven(before.even, refused, again.even[j]),
      values: put(before.values, j, again.values),
      repeated: before.repeated,
    })),
    lives: {
      knives: lives.knives.map((values, k) => put(values, k, again.lives.knives)),
      residuals: lives.residuals.map((values, k) => put(values, k, again.lives.residuals)),
      structure: put(lives.structure, 0, [again.lives.structure]),
    },
    refused,
    redrawn: repeated + again.repeated,
  };
}

/** The values of an input by knife and name; 0 for one there is no need to draw. */
export function readerOf(inputs: readonly Input[], drawn: readonly { values: Values }[]) {
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
  comparison: Comparison,
  inputs: readonly Input[],
  places: Uint32Array,
  seed: number,
): { even: Float64Array[]; values: Float64Array[]; lives: Lives; repeated: number } {
  const streams = inputs.map((input) => namedPlaces(seed, `${drawName(input)} together`));
  const even = inputs.map(() => new Float64Array(places.length));
  const values = inputs.map(({ spread }) => new Float64Array(places.length).fill(spread.middle));
  const attempts = new Uint32Array(places.length);
  let repeated = 0;
  let open = Uint32Array.from(places, (_, j) => j);
  for (let round = 0; open.length > 0; round += 1) {
    const noneFits = open.length === places.length && round * places.length > MOST_REFUSALS;
    if (round > MOST_ROUNDS || noneFits)
      throw new RangeError(
        `the stated ranges hardly ever fit each other: ${open.length} of ${places.length} samples were refused ${round} times`,
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
    const lives = livesOf(comparison, readerOf(inputs, tried), noMemory);
    const still = refusedSamples(lives, open.length);
    open = still.map((j) => open[j] ?? 0);
  }
  const drawn = values.map((all) => ({ values: all }));
  return { even, values, lives: livesOf(comparison, readerOf(inputs, drawn), noMemory), repeated };
}

/** Rounds of drawing whole samples again, or refusals without one accepted, before the comparison is called impossible. */
const MOST_ROUNDS = 2000;
const MOST_REFUSALS = 20_000;

function set(array: Float64Array | undefined, j: number, value: number): void {
  // Unreachable: there is an array for every input.
  if (array !== undefined) array[j] = value;
}
