import { lastKey } from '../../comparison/saved/last-key.ts';
import type { ComparisonStorage } from '../../comparison/saved/last.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { fetchLinks } from './links.ts';
import { isOfAddress, writeAddress } from './page.ts';

/** Address and storage follow the comparison after this pause. */
const keepMs = 300;

let storage: ComparisonStorage | undefined;

/** What reads and writes the storage: fetched where something is stored, or at the first change. */
const fetchStorage = async (): Promise<ComparisonStorage> => {
  const { createStorage } = await import('../../comparison/saved/last.ts');
  return (storage ??= createStorage());
};

/** Whether something is stored. Where the browser denies even the look, what reads it says so. */
function isStored(): boolean {
  try {
    return localStorage.getItem(lastKey) !== null;
  } catch {
    return true;
  }
}

// What is stored is shown at once, in place of the example.
if (isStored()) await fetchStorage();

/** The comparison kept on this machine, null where there is none. */
export const keptHere = (): ReturnType<ComparisonStorage['load']> =>
  storage?.load() ?? { ok: true, entry: null };

/**
 * Lets the address and what is kept on this machine follow a comparison that is changed, so that a reload keeps it even
 * where storage is denied.
 *
 * @param say Where trouble with the storage is told, once for each kind.
 */
export function keepsOwn(say: (text: string) => void): (entry: ComparisonEntry) => void {
  let timer = 0;
  const keep = async (entry: ComparisonEntry, href: string): Promise<void> => {
    const [{ encodeLink }, keeper] = await Promise.all([fetchLinks(), fetchStorage()]);
    // The reader has gone on or back meanwhile: the other address stays as it is, and what it says is shown.
    if (location.href !== href || isOfAddress(entry)) return;
    writeAddress(encodeLink(entry));
    const kept = keeper.save(entry);
    if (!kept.ok && kept.first) say(kept.message);
  };
  return (entry) => {
    clearTimeout(timer);
    const { href } = location;
    // It comes while the hand may still be moving.
    fetchStorage().catch(() => undefined);
    timer = window.setTimeout(() => {
      // What did not come is fetched again at the next change.
      keep(entry, href).catch(() => undefined);
    }, keepMs);
  };
}
