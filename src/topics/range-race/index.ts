import { rangeNumbers } from './numbers.ts';
import { rangeWords } from './words.ts';
import { groundRoom, roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import { rangeWorked } from './worked.ts';
import { drawLevelFigure } from './figure-draw-level.ts';
import { rangeRace, rangeRaceLinear } from './figure-range-race.ts';
import type { Topic } from '../topic.ts';

/** How far each family can move a knife, and what it takes to draw level. */
export const topic: Topic = {
  numbers: rangeNumbers,
  words: rangeWords,
  worked: rangeWorked,
  guesses: {
    contest: ({ comparison }) => {
      const { careful } = roomOfFamilies(comparison);
      return { answer: groundRoom(careful).factor / roomIn(careful, 'steel').factor, sum: null };
    },
  },
  figures: [rangeRace, rangeRaceLinear, drawLevelFigure],
};
