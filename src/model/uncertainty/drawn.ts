/** One input over a run: its even draws and the values they stand for. */

import type { Input } from './inputs.ts';
import { namedPlaces } from '../statistics/random.ts';
import { mayLeave, valueAt, valuesAt, type Spread } from './sampling.ts';
import { roomFor, type Values } from '../chain/values.ts';

export interface Drawn {
  /** One number between 0 and 1 a sample, which the value rises with; none where the input does not vary. */
  even: Float64Array | null;
  values: Values;
  /** Draws repeated because the model does not accept what they gave. */
  repeated: number;
}

/** Attempts at one value, or one sample, before its range is called impossible. */
export const MOST_ATTEMPTS = 20_000;

/** The name an input is drawn under: its own for every knife, and for what all share. */
export const drawName = ({ knife, name }: Pick<Input, 'knife' | 'name'>): string => `${knife ?? ''}/${name}`;

/** The values even draws stand for under the spread of an input that varies; each not accepted is drawn again, by itself. */
export function drawnFrom(even: Float64Array, seed: number, input: Input, old?: Values): Drawn {
  const { spread } = input;
  const values = valuesAt(spread, even, roomFor(even.length, old));
  if (!mayLeave(spread)) return { even, values, repeated: 0 };

  const again = namedPlaces(seed, drawName(input));
  let kept = even;
  let repeated = 0;
  for (let i = 0; i < values.length; i += 1) {
    if (accepted(spread, values[i] ?? 0)) continue;
    const redrawn = redraw(spread, (attempt) => again(i, attempt), input);
    // What is kept of a name stays as it was for other ranges.
    if (kept === even) kept = even.slice();
    kept[i] = redrawn.even;
    values[i] = redrawn.value;
    repeated += redrawn.attempts;
  }
  return { even: kept, values, repeated };
}

/** Draws until the value is accepted. */
export function redraw(
  spread: Spread,
  evenAt: (attempt: number) => number,
  input: Input,
): { even: number; value: number; attempts: number } {
  for (let attempts = 1; attempts <= MOST_ATTEMPTS; attempts += 1) {
    const even = evenAt(attempts);
    const value = valueAt(spread, even);
    if (accepted(spread, value)) return { even, value, attempts };
  }
  throw new RangeError(
    `${input.name} ${spread.low} to ${spread.high} hardly ever gives a value between ${spread.allowed.low} and ${spread.allowed.high}`,
  );
}

const accepted = ({ allowed }: Spread, value: number): boolean =>
  value >= allowed.low && value <= allowed.high;
