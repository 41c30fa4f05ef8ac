import { steelNumbers } from '../lineup/steel-numbers.ts';
import { steelWords } from '../lineup/steel-words.ts';
import { steelWorked } from '../lineup/steel-worked.ts';
import { phaseBars } from '../plots/phase-bars.ts';
import { tieLines } from '../plots/tie-lines.ts';
import { worthByAngle } from '../plots/worth-by-angle.ts';
import type { Topic } from './topic.ts';

/** What a steel can do: hardness, carbide, and what either is worth on an edge. */
export const topic: Topic = {
  numbers: steelNumbers,
  words: steelWords,
  worked: steelWorked,
  calls: { steel: ({ row }) => ({ answer: row.close.families.steel, sum: null }) },
  figures: [phaseBars, tieLines, worthByAngle],
};
