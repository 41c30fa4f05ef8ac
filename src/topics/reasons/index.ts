import { figures } from './figure-reasons.ts';
import { words } from './words.ts';
import type { Topic } from '../topic.ts';

/** The biggest reasons why one knife cuts longer than another, each with its picture. */
export const topic: Topic = { words, figures };
