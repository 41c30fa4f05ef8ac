import { counted } from './counted.ts';

/**
 * How many comparisons Saved holds, and how many it holds that this page cannot read.
 *
 * @example savedWords(0, 1) // → 'Saved here: one comparison that this page can’t read; it is left as it is.'
 */
export function savedWords(read: number, unread: number): string {
  if (read + unread === 0) return 'Nothing is saved here yet.';
  const left = unread === 1 ? 'it is left as it is' : 'they are left as they are';
  const more = read > 0 ? counted(unread, 'more', 'more') : counted(unread, 'comparison');
  const parts = [
    ...(read > 0 ? [counted(read, 'comparison')] : []),
    ...(unread > 0 ? [`${more} that this page can’t read; ${left}`] : []),
  ];
  return `Saved here: ${parts.join(', and ')}.`;
}
