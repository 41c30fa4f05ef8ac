import { tidyName } from '../files.ts';
import type { Named } from '../files.ts';
import type { TextStorage } from './last.ts';
import { freeId, freeName, SavedStore } from './stored.ts';

/** An entry of Saved that was put there by a page, to be taken out or brought up to date by the same page. */
export type PutAway = Named & { id: string };

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/**
 * Puts a comparison into Saved, without anything said.
 *
 * @param before an earlier version of it that was put in: where that is there as it was put, this one takes its place
 * @returns what is in Saved now; undefined where it could not be stored, and Saved is as it was
 */
export function putAway(
  openStorage: () => TextStorage,
  now: Date,
  { name, entry }: Named,
  before?: PutAway,
): PutAway | undefined {
  const store = new SavedStore(openStorage);
  if (!store.isReadable()) return undefined;
  const { items, unread } = store.look();
  const at = items.findIndex(
    (item) => item.id === before?.id && item.name === before.name && same(item.entry, before.entry),
  );
  const others = items.toSpliced(at, at < 0 ? 0 : 1);
  const put: PutAway = {
    id: (at < 0 ? undefined : before?.id) ?? freeId([...items, ...unread]),
    name: freeName(others, tidyName(name, entry.title)),
    entry,
  };
  const item = { ...put, changedAt: now.toISOString(), savedToFileAt: null };
  return store.write({ items: [...others, item], unread }) ? put : undefined;
}

/** Takes it out again, unless somebody renamed it meanwhile. */
export function takeOut(openStorage: () => TextStorage, { id, name }: PutAway): void {
  const store = new SavedStore(openStorage);
  if (!store.isReadable()) return;
  const { items, unread } = store.look();
  const left = items.filter((item) => item.id !== id || item.name !== name);
  if (left.length < items.length) store.write({ items: left, unread });
}
