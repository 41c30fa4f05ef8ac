import { unreadSavedKey } from './saved.ts';
import { unreadKey } from './last.ts';

/** What a text was kept from before it was laid aside: the last comparison, and Saved as a whole. */
const keys = [unreadKey, unreadSavedKey];

/** What lies aside, a text a line; empty where nothing does, or storage is denied. */
export function setAside(openShelf: () => Pick<Storage, 'getItem'> = () => localStorage): string {
  try {
    return keys.flatMap((key) => openShelf().getItem(key) ?? []).join('\n');
  } catch {
    return '';
  }
}

/** Erases what lies aside, for good. */
export function eraseSetAside(openShelf: () => Pick<Storage, 'removeItem'> = () => localStorage): void {
  for (const key of keys) openShelf().removeItem(key);
}
