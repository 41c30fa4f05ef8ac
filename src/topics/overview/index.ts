import { words } from './words.ts';
import type { Topic } from '../topic.ts';

/** The whole comparison: what the Compare page and the explained page say. */
export const topic: Topic = { words };
