import { gritsControls } from './controls.ts';
import { gritsNumbers } from './numbers.ts';
import { gritsWords } from './words.ts';
import { gritsWorked } from './worked.ts';
import { finishesOf } from './values.ts';
import { grains } from './figure-grains.ts';
import { gritScales } from './figure-grit-scales.ts';
import { scratchDepths } from './figure-scratch-depths.ts';
import type { Topic } from '../topic.ts';

/** Grit numbers by scale, the grains behind them and the scratches they leave. */
export const topic: Topic = {
  numbers: gritsNumbers,
  words: gritsWords,
  worked: gritsWorked,
  controls: gritsControls,
  guesses: {
    grits: (scene) => {
      const { subject, baseline } = finishesOf(scene);
      return { answer: Math.max(subject.um / baseline.um, baseline.um / subject.um), sum: null };
    },
  },
  figures: [grains, gritScales, scratchDepths],
};
