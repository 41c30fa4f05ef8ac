import { gritsControls } from '../lineup/grits-controls.ts';
import { gritsNumbers } from '../lineup/grits-numbers.ts';
import { gritsWords } from '../lineup/grits-words.ts';
import { gritsWorked } from '../lineup/grits-worked.ts';
import { finishesOf } from '../lineup/grits.ts';
import { grains } from '../plots/grains.ts';
import { gritScales } from '../plots/grit-scales.ts';
import { scratchDepths } from '../plots/scratch-depths.ts';
import type { Topic } from './topic.ts';

/** Grit numbers by scale, the grains behind them and the scratches they leave. */
export const topic: Topic = {
  numbers: gritsNumbers,
  words: gritsWords,
  worked: gritsWorked,
  controls: gritsControls,
  calls: {
    grits: (scene) => {
      const { subject, baseline } = finishesOf(scene);
      return { answer: Math.max(subject.um / baseline.um, baseline.um / subject.um), sum: null };
    },
  },
  figures: [grains, gritScales, scratchDepths],
};
