import { measureWords } from './measures.ts';
import { askWords } from './words.ts';
import type { Topic } from '../topic.ts';

/** The question of a comparison and what is told with it, before its answer. */
export const topic: Topic = { words: { ...askWords, ...measureWords } };
