/**
 * Random numbers that are the same for the same seed on every machine: xoshiro128** (Blackman & Vigna, ACM
 * Transactions on Mathematical Software 47, 2021) on 32-bit integers, its four words of state filled from the
 * seed by a 32-bit splitmix step.
 */

type State = readonly [number, number, number, number];

const rotate = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** The next whole number from 0 to 2³² − 1; the four words of state move on. */
function step(state: Int32Array): number {
  const a = state[0] ?? 0;
  const b = state[1] ?? 0;
  const c = state[2] ?? 0;
  const d = state[3] ?? 0;
  state[2] = c ^ a ^ (b << 9);
  state[3] = rotate(d ^ b, 11);
  state[1] = b ^ c ^ a;
  state[0] = a ^ d ^ b;
  return Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
}

/** The bare generator from four words of state, not all 0; each call gives a whole number from 0 to 2³² − 1. */
export function xoshiro128(words: State): () => number {
  const state = Int32Array.from(words);
  return () => step(state);
}

const SPLIT = 0x9e3779b9;

/** Every bit of the result depends on every bit of the word (the finalising step of a 32-bit splitmix). */
function mix(word: number): number {
  let mixed = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return (mixed ^ (mixed >>> 16)) >>> 0;
}

const fraction = (word: number): number => (word + 0.5) / 0x100000000;

function checkSeed(seed: number): void {
  if (!Number.isInteger(seed) || seed < 0 || seed > 0xffffffff) {
    throw new RangeError(`seed ${seed} is not a whole number from 0 to 4294967295`);
  }
}

/**
 * A stream of numbers strictly between 0 and 1, always the same for the same seed.
 *
 * @param seed a whole number from 0 to 4294967295; anything else is refused
 * @example uniformStream(7)() === uniformStream(7)() // → true
 */
export function uniformStream(seed: number): () => number {
  checkSeed(seed);
  let counter = seed;
  const word = (): number => {
    counter = (counter + SPLIT) | 0;
    return mix(counter);
  };
  const next = xoshiro128([word(), word(), word(), word()]);
  return () => fraction(next());
}

/** Two words that tell a seed and a name from every other; 64 bits, so that a clash is beyond chance. */
function wordsOf(seed: number, name: string): [number, number] {
  let [one, other] = [mix(seed ^ SPLIT), mix((seed + SPLIT) | 0)];
  for (let i = 0; i < name.length; i += 1) {
    const code = name.charCodeAt(i);
    one = mix((one + SPLIT) ^ code);
    other = mix(Math.imul(other, 0x01000193) ^ code);
  }
  return [one, other];
}

/** Never four words of 0: no word is left alone by adding the constant. */
function namedState(seed: number, name: string): State {
  const [one, other] = wordsOf(seed, name);
  return [one, other, mix((one + SPLIT) | 0), mix((other + SPLIT) | 0)];
}

/**
 * Numbers strictly between 0 and 1, a stream of its own for every name under one seed: what is added under another name
 * leaves it as it is.
 *
 * @param seed as for `uniformStream`
 * @param out is filled and given back
 * @example drawUniform(7, 'friction', new Float64Array(1))[0] === drawUniform(7, 'edgeMm', new Float64Array(1))[0] // → false
 */
export function drawUniform(seed: number, name: string, out: Float64Array): Float64Array {
  checkSeed(seed);
  const state = Int32Array.from(namedState(seed, name));
  for (let i = 0; i < out.length; i += 1) out[i] = (step(state) + 0.5) / 0x100000000;
  return out;
}

/**
 * The same numbers by place instead of in a row: any sample may be drawn again, any number of times, without moving
 * another.
 *
 * @param seed as for `uniformStream`
 * @returns a function of sample and attempt, both whole and 0 or above
 * @example namedPlaces(7, 'friction')(3, 1) === namedPlaces(7, 'friction')(3, 2) // → false
 */
export function namedPlaces(seed: number, name: string): (sample: number, attempt: number) => number {
  checkSeed(seed);
  const [one, other] = wordsOf(seed, `${name} again`);
  return (sample, attempt) => fraction(mix(mix(mix((one + sample) | 0) ^ other) + Math.imul(attempt, SPLIT)));
}
