import { pack } from '../link/packing.ts';
import { decodeLink, encodeLink } from '../link/codec.ts';
import { validate } from '../validate.ts';
import type { Kept, Stored, Version } from './keeper.ts';
import { exampleOrigin } from './keeper.ts';
import { lastKey } from './last-key.ts';
import { layAside } from './lay-aside.ts';
import type { ComparisonEntry } from '../entry.ts';

/** Where the text of one that cannot be read is stored, so that nothing writes over it. */
export const unreadKey = 'keenfold.line-up.unread';

/** The part of the browser's `Storage` that is used. */
export type TextStorage = Pick<Storage, 'getItem' | 'setItem'>;

/** The comparison kept last, as it is found; of a text that cannot be read also why. */
export type Found = Exclude<Stored, { is: 'unreadable' }> | { is: 'unreadable'; text: string; why: string };

/** Stores the last comparison on the visitor's machine. Never throws. It writes over whatever is there: `Keeping` asks first. */
export interface LastStorage {
  look(): Found;
  /** @returns what went wrong; null where it is stored */
  write(kept: Kept): 'denied' | 'full' | null;
  /** Stores a text that cannot be read elsewhere. @returns whether it is there now */
  layAside(text: string): boolean;
}

/** A comparison as the keeper sees it. */
export const versionOf = (entry: ComparisonEntry): Version => ({
  entry,
  key: JSON.stringify(pack(entry)),
  worth: entry.invented !== true && !isEmpty(entry),
});

const ofNobody = new Set(['id', 'name', 'state']);

/** Whether nothing was measured, cut or typed. */
const isEmpty = ({ knives, runs, faceValues }: ComparisonEntry): boolean =>
  (runs ?? []).length === 0 &&
  faceValues === null &&
  knives.every((knife) =>
    Object.entries(knife).every(
      ([name, value]) => ofNobody.has(name) || value === undefined || value === null,
    ),
  );

/**
 * @param openStorage Opens the storage. A function, since a browser that denies storage throws on the mere mention of it.
 */
export function lastStorage(openStorage: () => TextStorage = () => localStorage): LastStorage {
  /** The text read last, and what it came to: most looks find it as it was. */
  let known: { text: string; found: Found } | undefined;
  return {
    look() {
      let text: string | null;
      try {
        text = openStorage().getItem(lastKey);
      } catch {
        return { is: 'denied' };
      }
      if (text === null) return { is: 'nothing' };
      if (known?.text !== text) known = { text, found: foundIn(text) };
      return known.found;
    },
    write(kept) {
      try {
        openStorage().setItem(lastKey, storedText(kept));
        return null;
      } catch (error) {
        return isFull(error) ? 'full' : 'denied';
      }
    },
    layAside(text) {
      try {
        return layAside(openStorage(), unreadKey, text);
      } catch {
        return false;
      }
    },
  };
}

/** A link; below it the runs, which a link may leave behind and the storage must not; below them where it comes from. */
const storedText = ({ entry, origin, line }: Kept): string =>
  [encodeLink(entry), entry.runs ? JSON.stringify(entry.runs) : '', `${origin} ${line}`].join('\n');

function foundIn(text: string): Found {
  const [link = '', runs = '', from = ''] = text.split('\n', 3);
  const read = readStored(link, runs);
  if (!read.ok) return { is: 'unreadable', text, why: read.why };
  const version = versionOf(read.entry);
  // Before origins were stored, what was kept was the visitor's own.
  const [origin = '', line = ''] = from.split(' ');
  return { is: 'kept', ...version, origin: origin || (version.worth ? 'own' : exampleOrigin), line };
}

function readStored(
  link: string,
  runs: string,
): { ok: true; entry: ComparisonEntry } | { ok: false; why: string } {
  const read = decodeLink(link);
  if (!read.ok) return read;
  if (runs === '') return { ok: true, entry: read.entry };
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
