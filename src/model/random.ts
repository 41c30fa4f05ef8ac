/**
 * Random numbers that are the same for the same seed on every machine: xoshiro128** (Blackman & Vigna, ACM
 * Transactions on Mathematical Software 47, 2021) on 32-bit integers, its four words of state filled from the
 * seed by a 32-bit splitmix step.
 */

/** The bare generator from four words of state, not all 0; each call gives a whole number from 0 to 2³² − 1. */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  const rotate = (word: number, by: number): number => (word << by) | (word >>> (32 - by));
  return () => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
}

/**
 * A stream of numbers strictly between 0 and 1, always the same for the same seed.
 *
 * @param seed a whole number from 0 to 4294967295; anything else is refused
 * @example uniformStream(7)() === uniformStream(7)() // → true
 */
export function uniformStream(seed: number): () => number {
  if (!Number.isInteger(seed) || seed < 0 || seed > 0xffffffff) {
    throw new RangeError(`seed ${seed} is not a whole number from 0 to 4294967295`);
  }
  let counter = seed;
  const word = (): number => {
    counter = (counter + 0x9e3779b9) | 0;
    let mixed = Math.imul(counter ^ (counter >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  };
  const next = xoshiro128([word(), word(), word(), word()]);
  return () => (next() + 0.5) / 0x100000000;
}
