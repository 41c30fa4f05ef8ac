import { sureNumbers } from '../lineup/sure-numbers.ts';
import { sureControls } from '../lineup/sure-controls.ts';
import { sureWords } from '../lineup/sure-words.ts';
import { sureWorked } from '../lineup/sure-worked.ts';
import { sureOf } from '../lineup/sure.ts';
import { histogram } from '../plots/histogram.ts';
import { quantileDotsFigure } from '../plots/quantile-dots.ts';
import { whatMatters } from '../plots/what-matters.ts';
import type { Topic } from './topic.ts';

/** How far a ratio can be off: its band, what matters to it, and how it may be rounded. */
export const topic: Topic = {
  numbers: sureNumbers,
  words: sureWords,
  worked: sureWorked,
  controls: sureControls,
  calls: { band: (scene) => ({ answer: sureOf(scene).high / sureOf(scene).low, sum: null }) },
  figures: [quantileDotsFigure, histogram, whatMatters],
};
