import type { Topic } from '../topic.ts';
import { words } from './words.ts';

/** What the Compare page says at once: the answer in large and in short, and the short answers that need no samples. */
export const topic: Topic = { words };
