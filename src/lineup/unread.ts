import { unreadKey } from './keep.ts';

/** What lies aside; null where nothing does, or storage is denied. */
export function laidAside(openShelf: () => Pick<Storage, 'getItem'> = () => localStorage): string | null {
  try {
    return openShelf().getItem(unreadKey);
  } catch {
    return null;
  }
}

/** Erases what lies aside, for good. */
export function eraseLaidAside(openShelf: () => Pick<Storage, 'removeItem'> = () => localStorage): void {
  openShelf().removeItem(unreadKey);
}
