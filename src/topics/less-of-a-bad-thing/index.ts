import { lessControls } from './controls.ts';
import { lessNumbers } from './numbers.ts';
import { lessOf } from './values.ts';
import { lessWords } from './words.ts';
import { lessWorked } from './worked.ts';
import { lessBars } from './figure-less-bars.ts';
import { lessLines } from './figure-less-lines.ts';
import { thereAndBack } from './figure-there-and-back.ts';
import type { Topic } from '../topic.ts';

/** What less of something harmful is worth, by each of three readings: the second lesson. */
export const topic: Topic = {
  numbers: lessNumbers,
  words: lessWords,
  worked: lessWorked,
  controls: lessControls,
  guesses: { less: (scene) => ({ answer: lessOf(scene).inverse, sum: null }) },
  figures: [lessBars, lessLines, thereAndBack],
};
