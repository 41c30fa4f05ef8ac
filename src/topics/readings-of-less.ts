import { lessControls } from '../lineup/less-controls.ts';
import { lessNumbers } from '../lineup/less-numbers.ts';
import { lessOf } from '../lineup/less.ts';
import { lessWords } from '../lineup/less-words.ts';
import { lessWorked } from '../lineup/less-worked.ts';
import { lessBars } from '../plots/less-bars.ts';
import { lessLines } from '../plots/less-lines.ts';
import { thereAndBack } from '../plots/there-and-back.ts';
import type { Topic } from './topic.ts';

/** What less of something harmful is worth, by each of three readings: the second lesson. */
export const topic: Topic = {
  numbers: lessNumbers,
  words: lessWords,
  worked: lessWorked,
  controls: lessControls,
  calls: { less: (scene) => ({ answer: lessOf(scene).inverse, sum: null }) },
  figures: [lessBars, lessLines, thereAndBack],
};
