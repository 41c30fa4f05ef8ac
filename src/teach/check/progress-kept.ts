import { readProgress, writeProgress } from './progress.ts';
import type { Progress } from './progress.ts';

const key = 'keenfold.progress';

/** The part of `Storage` that is used. */
type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Progress on the reader's own machine. Never throws: where storage is denied or full nothing is kept. */
export interface ProgressKeeper {
  /** null where the browser lets nothing be read. */
  load(): Progress | null;
  /** @returns whether it was kept */
  keep(change: (progress: Progress) => Progress): boolean;
  /** @returns whether it is gone */
  erase(): boolean;
}

/** @param openShelf a function, since a browser that denies storage throws on the mere mention of it */
export function progressKeeper(openShelf: () => Shelf = () => localStorage): ProgressKeeper {
  const attempt = <T>(what: () => T, otherwise: T): T => {
    try {
      return what();
    } catch {
      return otherwise;
    }
  };
  return {
    load: () => attempt(() => readProgress(openShelf().getItem(key)), null),
    keep: (change) =>
      attempt(() => {
        const shelf = openShelf();
        shelf.setItem(key, writeProgress(change(readProgress(shelf.getItem(key)))));
        return true;
      }, false),
    erase: () =>
      attempt(() => {
        openShelf().removeItem(key);
        return true;
      }, false),
  };
}
