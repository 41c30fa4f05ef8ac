import type { Reading } from '../model/index.ts';

/** What a page calls each of the model's two readings. */
export const readingName: Readonly<Record<Reading, string>> = {
  quick: 'quick sum',
  careful: 'careful estimate',
};
