import type { ComparisonStorage } from '../../comparison/saved/last.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { isOfAddress, writeAddress } from './page.ts';

/** Address and storage follow the comparison after this pause. */
const keepMs = 300;

/**
 * Lets the address and what is kept on this machine follow a comparison that is changed, so that a reload keeps it even
 * where storage is denied.
 *
 * @param say Where trouble with the storage is told, once for each kind.
 */
export function keepsOwn(
  storage: ComparisonStorage,
  say: (text: string) => void,
): (entry: ComparisonEntry) => void {
  let timer = 0;
  return (entry) => {
    clearTimeout(timer);
    const { href } = location;
    timer = window.setTimeout(() => {
      // The reader has gone on or back meanwhile: the other address stays as it is, and what it says is shown.
      if (location.href !== href || isOfAddress(entry)) return;
      writeAddress(entry);
      const kept = storage.save(entry);
      if (!kept.ok && kept.first) say(kept.message);
    }, keepMs);
  };
}
