import { steelWorthWords } from './words.ts';
import type { Topic } from '../topic.ts';

/** What the steel is worth, with its bands: it comes late, for it takes many samples. */
export const topic: Topic = { words: steelWorthWords };
