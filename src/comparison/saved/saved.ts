import { readComparisons, tidyName } from '../files.ts';
import type { Named } from '../files.ts';
import type { TextStorage } from './last.ts';
import type { ComparisonEntry } from '../entry.ts';
import { SavedStore, freeId, freeName } from './stored.ts';
import type { SavedComparison, Stored } from './stored.ts';

export type { SavedComparison } from './stored.ts';

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

const notSavedComparison =
  ' This browser does not keep what you save, or has no room for it: it is here until you close the page. Save it to a file.';

const same = (one: ComparisonEntry, other: ComparisonEntry): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/**
 * @param openStorage opens the storage; a browser that denies storage throws on the mere mention of it
 * @param now the clock
 */
export const createSavedList = (
  openStorage: () => TextStorage = () => localStorage,
  now: () => Date = () => new Date(),
): SavedList => new StoredList(openStorage, now);

class StoredList implements SavedList {
  #store: SavedStore;
  #now: () => Date;
  /** It is said once that nothing is kept. */
  #saidNotKept = false;
  #erased: { item: SavedComparison; at: number } | undefined;

  constructor(openStorage: () => TextStorage, now: () => Date) {
    this.#store = new SavedStore(openStorage);
    this.#now = now;
  }

  items(): readonly SavedComparison[] {
    return this.#store.look().items;
  }

  unread(): number {
    return this.#store.look().unread.length;
  }

  unreadText(): string {
    return this.#store
      .look()
      .unread.map((item) => JSON.stringify(item))
      .join('\n');
  }

  eraseUnread(): Outcome {
    return this.#write({ items: [...this.items()], unread: [] }, '');
  }

  put(entry: ComparisonEntry, name?: string): Outcome {
    return this.#add({ name: tidyName(name, entry.title), entry });
  }

  rename(id: string, name: string): Outcome {
    const others = this.items().filter((item) => item.id !== id);
    return this.#change(
      (item) =>
        item.id === id
          ? { ...item, name: freeName(others, tidyName(name, item.entry.title)), savedToFileAt: null }
          : item,
      'Renamed.',
    );
  }

  copy(id: string): Outcome {
    const item = this.items().find((candidate) => candidate.id === id);
    return item ? this.#add(item) : { message: '' };
  }

  erase(id: string): Outcome {
    const { items, unread } = this.#store.look();
    const at = items.findIndex((candidate) => candidate.id === id);
    const item = items[at];
    if (!item) return { message: '' };
    this.#erased = { item, at };
    return this.#write(
      { items: items.toSpliced(at, 1), unread },
      `“${item.name}” is erased. It can be put back.`,
    );
  }

  putBack(): Outcome {
    if (!this.#erased) return { message: 'Nothing was erased.' };
    const { item, at } = this.#erased;
    this.#erased = undefined;
    const { items, unread } = this.#store.look();
    const back = { ...item, id: freeId([...items, ...unread]), name: freeName(items, item.name) };
    return this.#write({ items: items.toSpliced(at, 0, back), unread }, `“${back.name}” is back.`);
  }

  markSaved(ids: readonly string[]): Outcome {
    const savedToFileAt = this.#now().toISOString();
    return this.#change((item) => (ids.includes(item.id) ? { ...item, savedToFileAt } : item), '');
  }

  take(text: string): Outcome {
    const read = readComparisons(text);
    if (!read.ok) return { message: read.message };
    const { items, unread } = this.#store.look();
    const all = [...items];
    let here = 0;
    for (const comparison of read.comparisons) {
      if (all.some((item) => item.name === comparison.name && same(item.entry, comparison.entry))) here += 1;
      else all.push(this.#fresh(all, comparison));
    }
    const taken = all.length - items.length;
    const said = [
      `${taken === 1 ? 'One comparison was' : `${taken} comparisons were`} taken from the file.`,
      here > 0 ? `${here} ${here === 1 ? 'was' : 'were'} here already.` : '',
      ...read.problems,
    ].filter((sentence) => sentence !== '');
    return taken === 0 ? { message: said.join(' ') } : this.#write({ items: all, unread }, said.join(' '));
  }

  #add(comparison: Named): Outcome {
    const { items, unread } = this.#store.look();
    const item = this.#fresh(items, comparison);
    return this.#write({ items: [...items, item], unread }, `“${item.name}” is saved.`);
  }

  #fresh(items: readonly SavedComparison[], { name, entry }: Named): SavedComparison {
    return {
      id: freeId([...items, ...this.#store.look().unread]),
      name: freeName(items, name),
      entry,
      changedAt: this.#now().toISOString(),
      savedToFileAt: null,
    };
  }

  #change(changed: (item: SavedComparison) => SavedComparison, message: string): Outcome {
    const { items, unread } = this.#store.look();
    return this.#write({ items: items.map(changed), unread }, message);
  }

  #write(next: Stored, message: string): Outcome {
    if (this.#store.write(next) || this.#saidNotKept) return { message };
    this.#saidNotKept = true;
    return { message: `${message}${notSavedComparison}` };
  }
}
