import { additiveGuess, compound } from '../model/index.ts';
import { percentagesOf } from '../lineup/percentages.ts';
import { percentagesNumbers } from '../lineup/percentages-numbers.ts';
import { percentagesWords } from '../lineup/percentages-words.ts';
import { percentagesWorked } from '../lineup/percentages-worked.ts';
import { growingBars } from '../plots/growing-bars.ts';
import type { Topic } from './topic.ts';

/** Percentages that compound: the first lesson. */
export const topic: Topic = {
  numbers: percentagesNumbers,
  words: percentagesWords,
  worked: percentagesWorked,
  calls: {
    percentages: (scene) => ({
      answer: compound(percentagesOf(scene)),
      sum: additiveGuess(percentagesOf(scene)),
    }),
  },
  figures: [growingBars],
};
