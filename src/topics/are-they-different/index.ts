import { differentControls } from './controls.ts';
import { differentNumbers } from './numbers.ts';
import { differentWords } from './words.ts';
import { differentWorked } from './worked.ts';
import { extent } from './values.ts';
import { trialOf } from './trial.ts';
import { powerCurveFigure } from './figure-power-curve.ts';
import { runsByBatch } from './figure-runs-by-lot.ts';
import { differentOrEqual } from './figure-told-or-alike.ts';
import type { Topic } from '../topic.ts';

/** When runs have told two knives apart, when they have shown them alike, and how many it takes. */
export const topic: Topic = {
  numbers: differentNumbers,
  words: differentWords,
  worked: differentWorked,
  controls: differentControls,
  guesses: {
    spread: (scene) => {
      const { least, most } = extent(trialOf(scene).x);
      return { answer: most / least, sum: null };
    },
  },
  figures: [runsByBatch, differentOrEqual, powerCurveFigure],
};
