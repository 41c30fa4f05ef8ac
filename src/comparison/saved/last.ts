import { decodeLink, encodeLink } from '../link/codec.ts';
import { validate } from '../validate.ts';
import { lastKey } from './last-key.ts';
import type { ComparisonEntry } from '../entry.ts';

/** Where the text of one that cannot be read is stored, so that nothing writes over it. */
export const unreadKey = 'keenfold.line-up.unread';

export type StorageTrouble = 'denied' | 'full' | 'corrupted';

/** Trouble with the storage. `first` is true once for each kind, so that the page says it once. */
export interface NotSaved {
  ok: false;
  kind: StorageTrouble;
  message: string;
  first: boolean;
}

/** Stores the last comparison on the visitor's machine. Never throws: without storage the page goes on in memory. */
export interface ComparisonStorage {
  save(entry: ComparisonEntry): { ok: true } | NotSaved;
  /** The stored comparison, null where there is none yet. */
  load(): { ok: true; entry: ComparisonEntry | null } | NotSaved;
}

const messages: Record<StorageTrouble, string> = {
  denied:
    'This browser does not let the page keep your comparison. It is here until you close the page; copy its link to keep it.',
  full: 'There is no room left on this machine to keep your comparison. It is here until you close the page; copy its link to keep it.',
  corrupted: 'The comparison kept from your last visit cannot be read.',
};

/** The part of the browser's `Storage` that is used. */
export type TextStorage = Pick<Storage, 'getItem' | 'setItem'>;

/**
 * @param openStorage Opens the storage. A function, since a browser that denies storage throws on the mere mention of it.
 */
export function createStorage(openStorage: () => TextStorage = () => localStorage): ComparisonStorage {
  const known = new Set<StorageTrouble>();
  const notSaved = (kind: StorageTrouble, detail = ''): NotSaved => {
    const first = !known.has(kind);
    known.add(kind);
    return {
      ok: false,
      kind,
      message: detail === '' ? messages[kind] : `${messages[kind]} ${detail}`,
      first,
    };
  };
  return {
    save(entry) {
      try {
        // A link may leave runs behind; the storage must not.
        const runs = entry.runs ? `\n${JSON.stringify(entry.runs)}` : '';
        openStorage().setItem(lastKey, encodeLink(entry) + runs);
        return { ok: true };
      } catch (error) {
        return notSaved(isFull(error) ? 'full' : 'denied');
      }
    },
    load() {
      let storage: TextStorage;
      let text: string | null;
      try {
        storage = openStorage();
        text = storage.getItem(lastKey);
      } catch {
        return notSaved('denied');
      }
      if (text === null) return { ok: true, entry: null };
      const read = readStored(text);
      if (read.ok) return read;
      const aside = storeUnread(storage, text)
        ? ' It is kept aside: on the page Saved you can save it to a file.'
        : '';
      return notSaved('corrupted', `${read.why}${aside}`);
    },
  };
}

/**
 * Stores a text that cannot be read under a key of its own, before another comparison is stored in its place. One that is
 * there already stays until it is erased.
 *
 * @returns whether the text is there now
 */
function storeUnread(storage: TextStorage, text: string): boolean {
  try {
    if (storage.getItem(unreadKey) === null) storage.setItem(unreadKey, text);
    return storage.getItem(unreadKey) === text;
  } catch {
    return false;
  }
}

/** The comparison of a stored text: a link, and below it the runs where there are any. */
function readStored(text: string): { ok: true; entry: ComparisonEntry } | { ok: false; why: string } {
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
