import { squareWords } from './words.ts';
import { squaredFigure } from './figure-squared.ts';
import type { Topic } from '../topic.ts';

/** Prediction and measurement squared, and what is left over between them. */
export const topic: Topic = { words: squareWords, figures: [squaredFigure] };
