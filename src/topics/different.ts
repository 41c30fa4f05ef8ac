import { differentControls } from '../lineup/different-controls.ts';
import { differentNumbers } from '../lineup/different-numbers.ts';
import { differentWords } from '../lineup/different-words.ts';
import { differentWorked } from '../lineup/different-worked.ts';
import { extent } from '../lineup/different.ts';
import { trialOf } from '../lineup/trial.ts';
import { powerCurveFigure } from '../plots/power-curve.ts';
import { runsByLot } from '../plots/runs-by-lot.ts';
import { toldOrAlike } from '../plots/told-or-alike.ts';
import type { Topic } from './topic.ts';

/** When runs have told two knives apart, when they have shown them alike, and how many it takes. */
export const topic: Topic = {
  numbers: differentNumbers,
  words: differentWords,
  worked: differentWorked,
  controls: differentControls,
  calls: {
    spread: (scene) => {
      const { least, most } = extent(trialOf(scene).x);
      return { answer: most / least, sum: null };
    },
  },
  figures: [runsByLot, toldOrAlike, powerCurveFigure],
};
