import { behindControls } from '../lineup/behind-controls.ts';
import { behindNumbers } from '../lineup/behind-numbers.ts';
import { behindWords } from '../lineup/behind-words.ts';
import { behindWorked } from '../lineup/behind-worked.ts';
import { behindFactors } from '../lineup/behind.ts';
import { caliperPlaces } from '../plots/caliper-places.ts';
import { fourTimes } from '../plots/four-times.ts';
import { opened } from '../plots/opened.ts';
import { threeGrinds } from '../plots/three-grinds.ts';
import type { Topic } from './topic.ts';

/** What lies behind the edge: thickness at the shoulder, primary grind, and what a lower bevel costs. */
export const topic: Topic = {
  numbers: behindNumbers,
  words: behindWords,
  worked: behindWorked,
  controls: behindControls,
  calls: { behind: (scene) => ({ answer: behindFactors(scene).close.both, sum: null }) },
  figures: [opened, threeGrinds, caliperPlaces, fourTimes],
};
