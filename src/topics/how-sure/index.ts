import { sureNumbers } from './numbers.ts';
import { sureControls } from './controls.ts';
import { sureWords } from './words.ts';
import { sureWorked } from './worked.ts';
import { sureOf } from '../../scene/sure.ts';
import { histogram } from './figure-histogram.ts';
import { quantileDotsFigure } from './figure-quantile-dots.ts';
import { whatMatters } from './figure-what-matters.ts';
import type { Topic } from '../topic.ts';

/** How far a ratio can be off: its band, what matters to it, and how it may be rounded. */
export const topic: Topic = {
  numbers: sureNumbers,
  words: sureWords,
  worked: sureWorked,
  controls: sureControls,
  guesses: { band: (scene) => ({ answer: sureOf(scene).high / sureOf(scene).low, sum: null }) },
  figures: [quantileDotsFigure, histogram, whatMatters],
};
