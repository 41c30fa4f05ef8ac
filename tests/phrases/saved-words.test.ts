import { expect, test } from 'vitest';
import { savedWords } from '../../src/phrases/saved-words.ts';

test.each([
  [0, 0, 'Nothing is saved here yet.'],
  [1, 0, 'Saved here: one comparison.'],
  [1200, 0, 'Saved here: 1,200 comparisons.'],
  [0, 1, 'Saved here: one comparison that this page can’t read; it is left as it is.'],
  [0, 2, 'Saved here: 2 comparisons that this page can’t read; they are left as they are.'],
  [3, 1, 'Saved here: 3 comparisons, and one more that this page can’t read; it is left as it is.'],
  [1, 2, 'Saved here: one comparison, and 2 more that this page can’t read; they are left as they are.'],
])('%d read and %d unread: %s', (read, unread, words) => {
  expect(savedWords(read, unread)).toBe(words);
});
