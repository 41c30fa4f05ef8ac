import { runsWords } from './words.ts';
import type { Topic } from '../topic.ts';

/** What was cut: the log and its verdict. */
export const topic: Topic = { words: runsWords };
