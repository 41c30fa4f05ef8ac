import { expect, test } from 'vitest';
import { drawerWords } from '../../src/lineup/drawer-words.ts';

test.each([
  [0, 0, 'The drawer is empty.'],
  [1, 0, 'One line-up is in the drawer.'],
  [1200, 0, '1,200 line-ups are in the drawer.'],
  [0, 1, 'One line-up in the drawer cannot be read by this page and is left as it is.'],
  [0, 2, '2 line-ups in the drawer cannot be read by this page and are left as they are.'],
  [3, 1, '3 line-ups are in the drawer. 1 more cannot be read by this page and is left as it is.'],
  [1, 2, 'One line-up is in the drawer. 2 more cannot be read by this page and are left as they are.'],
])('%d read and %d unread: %s', (read, unread, words) => {
  expect(drawerWords(read, unread)).toBe(words);
});
