import { behindControls } from './controls.ts';
import { behindNumbers } from './numbers.ts';
import { behindWords } from './words.ts';
import { behindWorked } from './worked.ts';
import { behindFactors } from './values.ts';
import { caliperPlaces } from './figure-caliper-places.ts';
import { fourTimes } from './figure-four-times.ts';
import { opened } from './figure-opened.ts';
import { threeGrinds } from './figure-three-grinds.ts';
import type { Topic } from '../topic.ts';

/** What lies behind the edge: thickness at the shoulder, primary grind, and what a lower bevel costs. */
export const topic: Topic = {
  numbers: behindNumbers,
  words: behindWords,
  worked: behindWorked,
  controls: behindControls,
  guesses: { behind: (scene) => ({ answer: behindFactors(scene).careful.both, sum: null }) },
  figures: [opened, threeGrinds, caliperPlaces, fourTimes],
};
