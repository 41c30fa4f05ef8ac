import { thousands } from './show.ts';

/**
 * How many line-ups the drawer holds, and how many it holds that this page cannot read.
 *
 * @example drawerWords(0, 1) // → 'One line-up in the drawer cannot be read by this page and is left as it is.'
 */
export function drawerWords(read: number, unread: number): string {
  const held = (many: number): string => (many === 1 ? 'One line-up' : `${thousands(many)} line-ups`);
  if (read === 0 && unread === 0) return 'The drawer is empty.';
  const left = unread === 1 ? 'is left as it is' : 'are left as they are';
  if (read === 0) return `${held(unread)} in the drawer cannot be read by this page and ${left}.`;
  const readable = `${held(read)} ${read === 1 ? 'is' : 'are'} in the drawer.`;
  return unread === 0
    ? readable
    : `${readable} ${thousands(unread)} more cannot be read by this page and ${left}.`;
}
