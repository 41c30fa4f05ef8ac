import { explainedWords } from './words.ts';
import { temptingSum } from '../../scene/terms.ts';
import type { Topic } from '../topic.ts';

/** One comparison told to somebody who knows nothing of it. */
export const topic: Topic = {
  words: explainedWords,
  guesses: {
    explained: ({ entry, row }) => {
      const chosen = row[entry.reading];
      const sum = temptingSum(chosen);
      // A sum that is hardly another number than the product is no tempting mistake.
      const apart = sum > 0 && Math.abs(Math.log(sum / chosen.product)) > 0.06;
      return { answer: chosen.product, sum: apart ? sum : null };
    },
  },
};
