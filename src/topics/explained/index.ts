import { explainedWords } from './words.ts';
import { headlineOf } from '../../scene/headline.ts';
import { temptingSum } from '../../scene/terms.ts';
import type { Topic } from '../topic.ts';

/** One comparison told to somebody who knows nothing of it. */
export const topic: Topic = {
  words: explainedWords,
  guesses: {
    explained: (scene) => {
      const answer = headlineOf(scene).middle;
      const sum = temptingSum(scene.row[scene.entry.reading]);
      // A sum that is hardly another number than the answer is no tempting mistake.
      const apart = sum > 0 && Math.abs(Math.log(sum / answer)) > 0.06;
      return { answer, sum: apart ? sum : null };
    },
  },
};
