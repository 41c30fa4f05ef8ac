import { words } from '../lineup/words.ts';
import { chain } from '../plots/chain.ts';
import { rankingsFigure } from '../plots/rankings.ts';
import { readings } from '../plots/readings.ts';
import { sections } from '../plots/sections.ts';
import type { Topic } from './topic.ts';

/** The whole comparison: what the bench and the telling show. */
export const topic: Topic = { words, figures: [chain, readings, rankingsFigure, sections] };
