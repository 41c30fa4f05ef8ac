import { chain } from '../overview/figure-chain.ts';
import { rankingsFigure } from '../overview/figure-rankings.ts';
import { readings } from '../overview/figure-readings.ts';
import { sections } from '../overview/figure-sections.ts';
import type { Topic } from '../topic.ts';

/** The figures of the whole comparison: pages say its sentences at once, and draw these only for other knives. */
export const topic: Topic = { figures: [chain, readings, rankingsFigure, sections] };
