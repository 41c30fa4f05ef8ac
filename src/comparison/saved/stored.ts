import { tidyName } from '../files.ts';
import type { Named } from '../files.ts';
import type { TextStorage } from './last.ts';
import { layAside } from './lay-aside.ts';
import { documentVersion, documentIn, migrate } from '../migrations.ts';
import { validate } from '../validate.ts';

/** A comparison in Saved. Times are ISO 8601. */
export interface SavedComparison extends Named {
  id: string;
  /** When it was put in or last changed. */
  changedAt: string;
  /** When it was last saved to a file; null where it never was, or was changed since. */
  savedToFileAt: string | null;
}

const key = 'keenfold.drawer';
/** Where a stored text that cannot be read is stored again, so that nothing writes over it. */
export const unreadSavedKey = 'keenfold.drawer.unreadable';

export interface Stored {
  items: SavedComparison[];
  /** As found: of a later version, or damaged. */
  unread: unknown[];
}

/** Saved as it is stored; without storage it stays in memory. */
export class SavedStore {
  /** Where the storage could not be written: this page's own list, and what was stored when it was last read. */
  #memory: { mine: Stored; stored: Stored } | undefined;
  #openStorage: () => TextStorage;

  /** @param openStorage opens the storage; a browser that denies storage throws on the mere mention of it */
  constructor(openStorage: () => TextStorage) {
    this.#openStorage = openStorage;
  }

  look(): Stored {
    const found = this.#stored();
    if (!this.#memory && found) return found;
    const { mine, stored: before } = this.#memory ?? { mine: nothing, stored: nothing };
    // Another page of the site may have written meanwhile.
    this.#memory = found ? { mine: merged(before, mine, found), stored: found } : { mine, stored: before };
    return this.#memory.mine;
  }

  /** Whether what is stored can be looked at, so that nothing of it is lost when something is written. */
  isReadable(): boolean {
    return this.#stored() !== undefined;
  }

  /** @returns whether it is stored; if not, it is kept in memory */
  write(next: Stored): boolean {
    try {
      this.#openStorage().setItem(key, textOf(next));
      this.#memory = undefined;
      return true;
    } catch {
      this.#memory = { mine: next, stored: this.#memory?.stored ?? this.#stored() ?? nothing };
      return false;
    }
  }

  /** What is stored, as far as it can be looked at. */
  #stored(): Stored | undefined {
    try {
      return storedIn(this.#openStorage());
    } catch {
      return undefined;
    }
  }
}

const textOf = ({ items, unread }: Stored): string =>
  JSON.stringify({ items: [...items.map(storedForm), ...unread] });

/** The names in the storage are older than those in the code. */
const storedForm = ({ entry, changedAt, savedToFileAt, ...rest }: SavedComparison) => ({
  ...rest,
  kept: changedAt,
  saved: savedToFileAt,
  version: documentVersion,
  comparison: entry,
});

const nothing: Stored = { items: [], unread: [] };

/**
 * What is stored now, with what this page has done since it last looked: what it changed is as it has it, what it erased
 * is gone, and what it put in comes last. What another page put in under the same id or name keeps it.
 */
function merged(before: Stored, mine: Stored, now: Stored): Stored {
  const find = ({ items }: Stored, id: string) => items.find((item) => item.id === id);
  const changed = (item: SavedComparison): boolean =>
    JSON.stringify(item) !== JSON.stringify(find(before, item.id));
  const items = now.items.flatMap((item) => {
    if (!find(before, item.id)) return [item];
    const own = find(mine, item.id);
    return own ? [changed(own) ? own : item] : [];
  });
  for (const item of mine.items.filter(changed)) {
    const old = find(before, item.id);
    if (old && items.includes(item)) continue;
    const id = items.some((other) => other.id === item.id) ? freeId([...items, ...now.unread]) : item.id;
    items.push({ ...item, id, name: freeName(items, item.name) });
  }
  return { items, unread: now.unread };
}

/** An id that nothing in Saved has, what cannot be read included. */
export function freeId(items: readonly unknown[]): string {
  const taken = new Set(
    items.map((item) => (typeof item === 'object' && item !== null && 'id' in item ? item.id : '')),
  );
  let number = items.length + 1;
  while (taken.has(String(number))) number += 1;
  return String(number);
}

export function freeName(items: readonly SavedComparison[], name: string): string {
  const taken = new Set(items.map((item) => item.name));
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name} (${number})`)) number += 1;
  return `${name} (${number})`;
}

function storedIn(storage: TextStorage): Stored {
  const text = storage.getItem(key);
  if (text === null) return { items: [], unread: [] };
  const document = parsed(text);
  if (!document) {
    // Before anything is written over it.
    if (!layAside(storage, unreadSavedKey, text)) throw new Error('what cannot be read has no other place');
    return { items: [], unread: [] };
  }
  const read: Stored = { items: [], unread: [] };
  for (const found of document) {
    const item = savedFrom(found, read.items);
    if (item) read.items.push(item);
    else read.unread.push(found);
  }
  return read;
}

function savedFrom(found: unknown, before: readonly SavedComparison[]): SavedComparison | undefined {
  if (typeof found !== 'object' || found === null) return undefined;
  const { id, name, kept, saved, version } = found as Record<string, unknown>;
  if (typeof id !== 'string' || before.some((item) => item.id === id)) return undefined;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > documentVersion)
    return undefined;
  const checked = validate(migrate(documentIn(found), version));
  if (!checked.ok) return undefined;
  return {
    id,
    name: tidyName(name, checked.entry.title),
    entry: checked.entry,
    changedAt: typeof kept === 'string' ? kept : '',
    savedToFileAt: typeof saved === 'string' ? saved : null,
  };
}

function parsed(text: string): unknown[] | undefined {
  try {
    const { items } = JSON.parse(text) as { items?: unknown };
    return Array.isArray(items) ? items : undefined;
  } catch {
    return undefined;
  }
}
