import { answersWords } from './words.ts';
import type { Topic } from '../topic.ts';

/** Short answers to common objections. */
export const topic: Topic = { words: answersWords };
