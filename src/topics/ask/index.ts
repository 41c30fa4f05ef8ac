import { askWords } from './words.ts';
import type { Topic } from '../topic.ts';

/** What an audience is asked before it is told. */
export const topic: Topic = { words: askWords };
