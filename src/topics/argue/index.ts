import { argueChoices } from './choices.ts';
import { argueWords } from './words.ts';
import { positionsFigure } from './figure-positions.ts';
import type { Topic } from '../topic.ts';

/** The disputed assumptions, as switches, and what would settle each. */
export const topic: Topic = { words: argueWords, choices: argueChoices, figures: [positionsFigure] };
