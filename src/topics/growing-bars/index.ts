import { growingBars } from '../forty-and-forty/figure-growing-bars.ts';
import type { Topic } from '../topic.ts';

/** Percentages that compound, drawn: the Compare page needs it only for other percentages. */
export const topic: Topic = { figures: [growingBars] };
