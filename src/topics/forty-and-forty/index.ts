import { additiveGuess, compound } from '../../model/index.ts';
import { percentagesOf } from '../../scene/percentages.ts';
import { percentagesNumbers } from './numbers.ts';
import { pageWords } from './page-words.ts';
import { percentagesWords } from './words.ts';
import { percentagesWorked } from './worked.ts';
import type { Topic } from '../topic.ts';

/** Percentages that compound: the first lesson. */
export const topic: Topic = {
  numbers: percentagesNumbers,
  words: { ...percentagesWords, ...pageWords },
  worked: percentagesWorked,
  guesses: {
    percentages: (scene) => ({
      answer: compound(percentagesOf(scene)),
      sum: additiveGuess(percentagesOf(scene)),
    }),
  },
};
