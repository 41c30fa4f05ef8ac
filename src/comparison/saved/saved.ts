import { readComparisons, tidyName } from '../files.ts';
import type { Named } from '../files.ts';
import type { TextStorage } from './last.ts';
import { documentVersion, documentIn, migrate } from '../migrations.ts';
import { validate } from '../validate.ts';
import type { ComparisonEntry } from '../entry.ts';

/** A comparison in Saved. Times are ISO 8601. */
export interface SavedComparison extends Named {
  id: string;
  /** When it was put in or last changed. */
  changedAt: string;
  /** When it was last saved to a file; null where it never was, or was changed since. */
  savedToFileAt: string | null;
}

export interface Outcome {
  /** What the page says to the visitor; may be empty. */
  message: string;
}

/** The visitor's saved comparisons. Never throws: without storage they stay in memory, and the page says so once. */
export interface SavedList {
  items(): readonly SavedComparison[];
  /** How many comparisons are stored that this version of the page cannot read. They are left as they are. */
  unread(): number;
  /** Those comparisons as they were found, one a line. */
  unreadText(): string;
  /** Erases them for good. */
  eraseUnread(): Outcome;
  put(entry: ComparisonEntry, name?: string): Outcome;
  rename(id: string, name: string): Outcome;
  copy(id: string): Outcome;
  erase(id: string): Outcome;
  /** Puts back what was erased last. */
  putBack(): Outcome;
  /** Notes that these were saved to a file. */
  markSaved(ids: readonly string[]): Outcome;
  /** Takes the comparisons of a file in; one that is here already, under its name, is not taken twice. */
  take(text: string): Outcome;
}

const key = 'keenfold.drawer';
/** Where a stored text that cannot be read is stored again, so that nothing writes over it. */
export const unreadSavedKey = 'keenfold.drawer.unreadable';

interface Stored {
  items: SavedComparison[];
  /** As found: of a later version, or damaged. */
  unread: unknown[];
}

/**
 * @param openStorage opens the storage; a browser that denies storage throws on the mere mention of it
 * @param now the clock
 */
export function createSavedList(
  openStorage: () => TextStorage = () => localStorage,
  now: () => Date = () => new Date(),
): SavedList {
  /** Where the storage could not be written: this page's own list, and what was stored when it was last read. */
  let memory: { mine: Stored; stored: Stored } | undefined;
  let isTroubleKnown = false;
  let erased: { item: SavedComparison; at: number } | undefined;

  const trouble = (): string => {
    if (isTroubleKnown) return '';
    isTroubleKnown = true;
    return ' This browser does not keep the drawer, or has no room for it: it is here until you close the page. Save it to a file.';
  };

  /** What is stored, as far as it can be looked at. */
  const stored = (): Stored | undefined => {
    try {
      return storedIn(openStorage());
    } catch {
      return undefined;
    }
  };

  function look(): Stored {
    const found = stored();
    if (!memory && found) return found;
    const { mine, stored: before } = memory ?? { mine: nothing, stored: nothing };
    // Another page of the site may have written meanwhile.
    memory = found ? { mine: merged(before, mine, found), stored: found } : { mine, stored: before };
    return memory.mine;
  }

  function write(next: Stored, message: string): Outcome {
    try {
      openStorage().setItem(
        key,
        JSON.stringify({
          items: [...next.items.map(storedForm), ...next.unread],
        }),
      );
      memory = undefined;
      return { message };
    } catch {
      memory = { mine: next, stored: memory?.stored ?? stored() ?? nothing };
      return { message: `${message}${trouble()}` };
    }
  }

  const fresh = (items: readonly SavedComparison[], { name, entry }: Named): SavedComparison => ({
    id: freeId([...items, ...look().unread]),
    name: freeName(items, name),
    entry,
    changedAt: now().toISOString(),
    savedToFileAt: null,
  });

  const change = (
    id: string,
    changed: (item: SavedComparison) => SavedComparison,
    message: string,
  ): Outcome => {
    const { items, unread } = look();
    return write({ items: items.map((item) => (item.id === id ? changed(item) : item)), unread }, message);
  };

  return {
    items: () => look().items,
    unread: () => look().unread.length,
    unreadText: () =>
      look()
        .unread.map((item) => JSON.stringify(item))
        .join('\n'),
    eraseUnread: () => write({ items: look().items, unread: [] }, ''),
    put(entry, name) {
      const { items, unread } = look();
      const item = fresh(items, { name: tidyName(name, entry.title), entry });
      return write({ items: [...items, item], unread }, `“${item.name}” is in the drawer.`);
    },
    rename(id, name) {
      const { items } = look();
      const others = items.filter((item) => item.id !== id);
      return change(
        id,
        (item) => ({
          ...item,
          name: freeName(others, tidyName(name, item.entry.title)),
          savedToFileAt: null,
        }),
        'Renamed.',
      );
    },
    copy(id) {
      const { items, unread } = look();
      const item = items.find((candidate) => candidate.id === id);
      if (!item) return { message: '' };
      const double = fresh(items, item);
      return write({ items: [...items, double], unread }, `“${double.name}” is in the drawer.`);
    },
    erase(id) {
      const { items, unread } = look();
      const at = items.findIndex((candidate) => candidate.id === id);
      const item = items[at];
      if (!item) return { message: '' };
      erased = { item, at };
      return write(
        { items: items.toSpliced(at, 1), unread },
        `“${item.name}” is erased. It can be put back.`,
      );
    },
    putBack() {
      if (!erased) return { message: 'Nothing was erased.' };
      const { item, at } = erased;
      erased = undefined;
      const { items, unread } = look();
      const back = { ...item, id: freeId([...items, ...unread]), name: freeName(items, item.name) };
      return write({ items: items.toSpliced(at, 0, back), unread }, `“${back.name}” is back.`);
    },
    markSaved(ids) {
      const { items, unread } = look();
      const savedToFileAt = now().toISOString();
      return write(
        { items: items.map((item) => (ids.includes(item.id) ? { ...item, savedToFileAt } : item)), unread },
        '',
      );
    },
    take(text) {
      const read = readComparisons(text);
      if (!read.ok) return { message: read.message };
      const { items, unread } = look();
      const all = [...items];
      let here = 0;
      for (const comparison of read.comparisons) {
        if (all.some((item) => item.name === comparison.name && same(item.entry, comparison.entry)))
          here += 1;
        else all.push(fresh(all, comparison));
      }
      const taken = all.length - items.length;
      const said = [
        `${taken === 1 ? 'One line-up was' : `${taken} line-ups were`} taken from the file.`,
        here > 0 ? `${here} ${here === 1 ? 'was' : 'were'} here already.` : '',
        ...read.problems,
      ].filter((sentence) => sentence !== '');
      return taken === 0 ? { message: said.join(' ') } : write({ items: all, unread }, said.join(' '));
    },
  };
}

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

const same = (one: ComparisonEntry, other: ComparisonEntry): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** An id that nothing in Saved has, what cannot be read included. */
function freeId(items: readonly unknown[]): string {
  const taken = new Set(
    items.map((item) => (typeof item === 'object' && item !== null && 'id' in item ? item.id : '')),
  );
  let number = items.length + 1;
  while (taken.has(String(number))) number += 1;
  return String(number);
}

function freeName(items: readonly SavedComparison[], name: string): string {
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
    if (storage.getItem(unreadSavedKey) === null) storage.setItem(unreadSavedKey, text);
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
