import { edgesStanding } from './figure-edges-standing.ts';
import { edgesFigure } from './figure-edges.ts';
import type { Topic } from '../topic.ts';

/** Both edges of a comparison in section, to scale. */
export const topic: Topic = { figures: [edgesFigure, edgesStanding] };
