import { explainedWords } from './words.ts';
import { heldBeside } from '../../scene/held-beside.ts';
import type { Topic } from '../topic.ts';

/** One comparison told to somebody who knows nothing of it. */
export const topic: Topic = { words: explainedWords, guesses: { explained: heldBeside } };
