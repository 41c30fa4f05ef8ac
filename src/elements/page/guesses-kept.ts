// cspell:ignore ztntfp
import { guessesKey } from '../start/guesses-key.ts';

/** So many are kept; the oldest goes first. */
export const mostGuesses = 20;

/** The part of `Storage` that is used. */
type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

/** Never throws: where storage is denied or full nothing is kept. */
export interface GuessKeeper {
  /** Whether any guess is kept: before that a page need not make its link. */
  any(): boolean;
  /** The guess kept for the comparison of a link; null where there is none. */
  load(link: string): number | null;
  /** @returns whether it was kept */
  keep(link: string, guess: number): boolean;
}

/**
 * A short name for the comparison of a link: 32 bits of FNV-1a (Fowler, Noll and Vo, by its published offset and prime),
 * in base 36.
 *
 * @example linkName('') // → 'ztntfp'
 */
export function linkName(link: string): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(link)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(36);
}

const isGuess = (value: unknown): value is [string, number] =>
  Array.isArray(value) &&
  typeof value[0] === 'string' &&
  typeof value[1] === 'number' &&
  Number.isFinite(value[1]) &&
  value[1] > 0;

/** The stored guesses, the oldest first; none where the text is of something else. */
function readGuesses(text: string | null): [string, number][] {
  try {
    const read: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(read) ? read.filter(isGuess) : [];
  } catch {
    return [];
  }
}

/** @param openShelf a function, since a browser that denies storage throws on the mere mention of it */
export function guessKeeper(openShelf: () => Shelf = () => localStorage): GuessKeeper {
  const all = (): [string, number][] => {
    try {
      return readGuesses(openShelf().getItem(guessesKey));
    } catch {
      return [];
    }
  };
  return {
    any: () => all().length > 0,
    load: (link) => all().findLast(([name]) => name === linkName(link))?.[1] ?? null,
    keep(link, guess) {
      const name = linkName(link);
      const others = all().filter(([other]) => other !== name);
      try {
        openShelf().setItem(guessesKey, JSON.stringify([...others, [name, guess]].slice(-mostGuesses)));
        return true;
      } catch {
        return false;
      }
    },
  };
}
