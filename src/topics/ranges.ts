import { rangeNumbers } from '../lineup/range-numbers.ts';
import { rangeWords } from '../lineup/range-words.ts';
import { groundRoom, roomIn, roomOfFamilies } from '../lineup/ranges.ts';
import { rangeWorked } from '../lineup/range-worked.ts';
import { drawLevelFigure } from '../plots/draw-level.ts';
import { rangeRace, rangeRaceLinear } from '../plots/range-race.ts';
import type { Topic } from './topic.ts';

/** How far each family can move a knife, and what it takes to draw level. */
export const topic: Topic = {
  numbers: rangeNumbers,
  words: rangeWords,
  worked: rangeWorked,
  calls: {
    contest: ({ lineUp }) => {
      const { close } = roomOfFamilies(lineUp);
      return { answer: groundRoom(close).factor / roomIn(close, 'steel').factor, sum: null };
    },
  },
  figures: [rangeRace, rangeRaceLinear, drawLevelFigure],
};
