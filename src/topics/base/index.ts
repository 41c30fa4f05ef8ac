import { controls } from './controls.ts';
import { numbers } from './numbers.ts';
import { whose } from './whose.ts';
import type { Topic } from '../topic.ts';

/** What any page may show: names and measures of the two knives, their ratio by each reading, and the sliders. */
export const topic: Topic = {
  numbers,
  words: { whose },
  controls,
  guesses: { careful: ({ row }) => ({ answer: row.careful.multiplied, sum: null }) },
};
