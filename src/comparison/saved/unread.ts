import { unreadSavedKey } from './stored.ts';
import { unreadKey } from './last.ts';

/** Where texts that cannot be read are stored: of the last comparison, and of Saved as a whole. */
const keys = [unreadKey, unreadSavedKey];

/** The stored texts that cannot be read, one a line; empty where there are none, or storage is denied. */
export function unreadTexts(openStorage: () => Pick<Storage, 'getItem'> = () => localStorage): string {
  try {
    return keys.flatMap((key) => openStorage().getItem(key) ?? []).join('\n');
  } catch {
    return '';
  }
}

/** Erases the stored texts that cannot be read, for good. */
export function eraseUnreadTexts(openStorage: () => Pick<Storage, 'removeItem'> = () => localStorage): void {
  for (const key of keys) openStorage().removeItem(key);
}
