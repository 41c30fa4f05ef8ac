import { suspectsWords } from './words.ts';
import type { Topic } from '../topic.ts';

/** Which single measure would have to be another to explain what was cut. */
export const topic: Topic = { words: suspectsWords };
