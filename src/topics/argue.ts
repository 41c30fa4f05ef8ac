import { argueChoices } from '../lineup/argue-choices.ts';
import { argueWords } from '../lineup/argue-words.ts';
import { positionsFigure } from '../plots/positions.ts';
import type { Topic } from './topic.ts';

/** The disputed assumptions, as switches, and what would settle each. */
export const topic: Topic = { words: argueWords, choices: argueChoices, figures: [positionsFigure] };
