import { uniformStream } from '../model/index.ts';

/** Draws that are the same for the same words and seed on every machine. */
export interface Dice {
  /** A whole multiple of `by` between `from` and `to`, both included. */
  whole(from: number, to: number, by?: number): number;
  pick<T>(from: readonly T[]): T;
  /** So many different ones, in the order drawn. */
  several<T>(from: readonly T[], count: number): T[];
}

/**
 * Dice for one problem. The words keep the kinds and levels of one seed from sharing their draws.
 *
 * @param seed a whole number from 0 to 4294967295; anything else is refused with a RangeError
 */
export function diceFor(words: string, seed: number): Dice {
  if (!Number.isInteger(seed) || seed < 0 || seed > 0xffffffff) {
    throw new RangeError(`seed ${seed} is not a whole number from 0 to 4294967295`);
  }
  const next = uniformStream((fnv1a(words) ^ seed) >>> 0);
  const index = (count: number): number => Math.floor(next() * count);
  const take = <T>(pool: T[]): T => {
    const [taken] = pool.splice(index(pool.length), 1);
    if (taken === undefined) throw new RangeError('there is nothing left to draw from');
    return taken;
  };
  return {
    whole: (from, to, by = 1) => from + by * index(Math.floor((to - from) / by) + 1),
    pick: (from) => take([...from]),
    several: (from, count) => {
      const pool = [...from];
      return Array.from({ length: count }, () => take(pool));
    },
  };
}

/** The 32-bit hash of Fowler, Noll and Vo, variant 1a, over UTF-16 code units below 256. */
function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}
