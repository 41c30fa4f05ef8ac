import { words } from './words.ts';
import { chain } from './figure-chain.ts';
import { rankingsFigure } from './figure-rankings.ts';
import { readings } from './figure-readings.ts';
import { sections } from './figure-sections.ts';
import type { Topic } from '../topic.ts';

/** The whole comparison: what the Compare page and the explained page show. */
export const topic: Topic = {
  words: words,
  figures: [chain, readings, rankingsFigure, sections],
};
