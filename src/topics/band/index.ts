import { bandWords } from './words.ts';
import type { Topic } from '../topic.ts';

/** The band behind the answer, in words: it comes late, for it takes many samples. */
export const topic: Topic = { words: bandWords };
