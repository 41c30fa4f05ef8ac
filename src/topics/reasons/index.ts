import { words } from './words.ts';
import type { Topic } from '../topic.ts';

/** The biggest reasons why one knife cuts longer than another. */
export const topic: Topic = { words };
