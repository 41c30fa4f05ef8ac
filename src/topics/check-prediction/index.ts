import { predictionCheckWords } from './words.ts';
import { predictionCheckFigure } from './figure-squared.ts';
import type { Topic } from '../topic.ts';

/** Prediction and measurement squared, and what is left over between them. */
export const topic: Topic = { words: predictionCheckWords, figures: [predictionCheckFigure] };
