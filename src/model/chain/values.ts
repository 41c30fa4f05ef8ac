/** What an input or a part of the model is over a run: one value for every sample, or one a sample. */
export type Values = number | Float64Array;

/** The value in sample i. */
export const at = (values: Values, i: number): number =>
  typeof values === 'number' ? values : (values[i] ?? Number.NaN);

/** A new array, in the room of one that is done with where there is one: rooms of this size are dear to come by. */
export const roomFor = (samples: number, old: Values | null | undefined): Float64Array =>
  old instanceof Float64Array && old.length === samples
    ? new Float64Array(old.buffer)
    : new Float64Array(samples);

/** An input as a loop reads it, at place i·step. */
interface Lane {
  data: Float64Array;
  step: number;
}
const lane = (values: Values): Lane =>
  typeof values === 'number' ? { data: Float64Array.of(values), step: 0 } : { data: values, step: 1 };

/** Two inputs ready to be read together, and where the result goes: one place where neither varies. */
export function lanes(a: Values, b: Values, old?: Values): { a: Lane; b: Lane; out: Float64Array } {
  const samples = typeof a !== 'number' ? a.length : typeof b !== 'number' ? b.length : 1;
  return { a: lane(a), b: lane(b), out: roomFor(samples, old) };
}

/** What a loop gave, as a number where it ran over one place only. */
export const settled = (out: Float64Array): Values => (out.length === 1 ? (out[0] ?? Number.NaN) : out);

/** One input less another in every sample. */
export function differences(left: Values, right: Values, old?: Values): Values {
  const { a, b, out } = lanes(left, right, old);
  for (let i = 0; i < out.length; i += 1) out[i] = (a.data[i * a.step] ?? 0) - (b.data[i * b.step] ?? 0);
  return settled(out);
}

/** The sum of several inputs in every sample, each times its weight. */
export function weightedSum(
  parts: readonly (readonly [weight: number, values: Values])[],
  old?: Values,
): Values {
  let constant = 0;
  const varying: [number, Float64Array][] = [];
  for (const [weight, values] of parts) {
    if (typeof values === 'number') constant += weight * values;
    else varying.push([weight, values]);
  }
  const [first] = varying;
  if (first === undefined) return constant;
  const out = roomFor(first[1].length, old).fill(constant);
  for (const [weight, values] of varying)
    for (let i = 0; i < out.length; i += 1) out[i] = (out[i] ?? 0) + weight * (values[i] ?? Number.NaN);
  return out;
}

/** A copy with other values in some samples; `others` holds one for each of `places`, in their order. */
export function replaced(values: Values, samples: number, places: Uint32Array, others: Values): Values {
  if (typeof values === 'number' && typeof others === 'number') return values;
  const out = typeof values === 'number' ? new Float64Array(samples).fill(values) : values.slice();
  places.forEach((place, j) => {
    out[place] = at(others, j);
  });
  return out;
}
