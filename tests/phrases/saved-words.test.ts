import { expect, test } from 'vitest';
import { savedWords } from '../../src/phrases/saved-words.ts';

test.each([
  [0, 0, 'The drawer is empty.'],
  [1, 0, 'The drawer holds one line-up.'],
  [1200, 0, 'The drawer holds 1,200 line-ups.'],
  [0, 1, 'The drawer holds one line-up that this page cannot read; it is left as it is.'],
  [0, 2, 'The drawer holds 2 line-ups that this page cannot read; they are left as they are.'],
  [3, 1, 'The drawer holds 3 line-ups, and one more that this page cannot read; it is left as it is.'],
  [1, 2, 'The drawer holds one line-up, and 2 more that this page cannot read; they are left as they are.'],
])('%d read and %d unread: %s', (read, unread, words) => {
  expect(savedWords(read, unread)).toBe(words);
});
