import { steelNumbers } from './numbers.ts';
import { steelWords } from './words.ts';
import { steelWorked } from './worked.ts';
import { cardByHardness } from './figure-card-by-hardness.ts';
import { phaseBars } from './figure-phase-bars.ts';
import { tieLines } from './figure-tie-lines.ts';
import { worthByAngle } from './figure-worth-by-angle.ts';
import type { Topic } from '../topic.ts';

/** What a steel can do: hardness, carbide, and what either is worth on an edge. */
export const topic: Topic = {
  numbers: steelNumbers,
  words: steelWords,
  worked: steelWorked,
  guesses: { steel: ({ row }) => ({ answer: row.careful.families.steel, sum: null }) },
  figures: [phaseBars, tieLines, cardByHardness, worthByAngle],
};
