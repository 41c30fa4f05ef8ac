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

/** A function of one input over all samples; of a number it is a number. */
export function map(f: (a: number) => number, a: Values, old?: Values): Values {
  if (typeof a === 'number') return f(a);
  const out = roomFor(a.length, old);
  for (let i = 0; i < out.length; i += 1) out[i] = f(a[i] ?? Number.NaN);
  return out;
}

/** A function of two inputs over all samples; where neither varies it is a number. */
export function map2(f: (a: number, b: number) => number, a: Values, b: Values, old?: Values): Values {
  if (typeof b === 'number') return map((value) => f(value, b), a, old);
  if (typeof a === 'number') return map((value) => f(a, value), b, old);
  const out = roomFor(a.length, old);
  for (let i = 0; i < out.length; i += 1) out[i] = f(a[i] ?? Number.NaN, b[i] ?? Number.NaN);
  return out;
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
