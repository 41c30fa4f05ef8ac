import { decodeLink, encodeLink } from '../link/codec.ts';
import { validate } from '../validate.ts';
import type { ComparisonEntry } from '../entry.ts';

const key = 'keenfold.line-up';
/** Where one that cannot be read is kept aside. */
export const unreadKey = 'keenfold.line-up.unread';

export type StorageTrouble = 'denied' | 'full' | 'corrupted';

/** Trouble with the storage. `first` is true once for each kind: then it is said, afterwards it is known. */
export interface NotSaved {
  ok: false;
  kind: StorageTrouble;
  message: string;
  first: boolean;
}

/** Keeps the last comparison on the visitor's machine. Never throws: without storage the page goes on in memory. */
export interface ComparisonStorage {
  keep(entry: ComparisonEntry): { ok: true } | NotSaved;
  /** The comparison kept, null where there is none yet. */
  load(): { ok: true; entry: ComparisonEntry | null } | NotSaved;
}

const messages: Record<StorageTrouble, string> = {
  denied:
    'This browser does not let the page keep your line-up. It is here until you close the page; copy its link to keep it.',
  full: 'There is no room left on this machine to keep your line-up. It is here until you close the page; copy its link to keep it.',
  corrupted: 'The line-up kept from your last visit cannot be read.',
};

/** The part of `Storage` that is used. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem'>;

/**
 * @param openShelf Opens the storage. A function, since a browser that denies storage throws on the mere mention of it.
 */
export function createStorage(openShelf: () => Shelf = () => localStorage): ComparisonStorage {
  const said = new Set<StorageTrouble>();
  const notKept = (kind: StorageTrouble, detail = ''): NotSaved => {
    const first = !said.has(kind);
    said.add(kind);
    return {
      ok: false,
      kind,
      message: detail === '' ? messages[kind] : `${messages[kind]} ${detail}`,
      first,
    };
  };
  return {
    keep(entry) {
      try {
        // A link may leave runs behind; what is kept must not.
        const runs = entry.runs ? `\n${JSON.stringify(entry.runs)}` : '';
        openShelf().setItem(key, encodeLink(entry) + runs);
        return { ok: true };
      } catch (error) {
        return notKept(isFull(error) ? 'full' : 'denied');
      }
    },
    load() {
      let shelf: Shelf;
      let text: string | null;
      try {
        shelf = openShelf();
        text = shelf.getItem(key);
      } catch {
        return notKept('denied');
      }
      if (text === null) return { ok: true, entry: null };
      const read = kept(text);
      if (read.ok) return read;
      const aside = setAside_(shelf, text) ? ' It is kept aside: the drawer saves it to a file.' : '';
      return notKept('corrupted', `${read.why}${aside}`);
    },
  };
}

/**
 * Lays a kept comparison that cannot be read aside, as it is, before another is kept in its place. One that lies there
 * already stays until it is erased.
 *
 * @returns whether it lies there now
 */
function setAside_(shelf: Shelf, text: string): boolean {
  try {
    if (shelf.getItem(unreadKey) === null) shelf.setItem(unreadKey, text);
    return shelf.getItem(unreadKey) === text;
  } catch {
    return false;
  }
}

/** The comparison of a kept text: a link, and below it the runs where there are any. */
function kept(text: string): { ok: true; entry: ComparisonEntry } | { ok: false; why: string } {
  const [link = '', runs] = text.split('\n', 2);
  const read = decodeLink(link);
  if (!read.ok) return read;
  if (runs === undefined) return { ok: true, entry: read.entry };
  const whole = validate({ ...read.entry, runs: parsed(runs) });
  return whole.ok
    ? whole
    : { ok: false, why: `Its runs: ${whole.problems.map(({ message }) => message).join('; ')}.` };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isFull = (error: unknown): boolean =>
  error instanceof Error && /^(QuotaExceededError|NS_ERROR_DOM_QUOTA_REACHED)$/.test(error.name);
