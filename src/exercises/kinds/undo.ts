import { compound, undoPercent } from '../../model/index.ts';
import { restForLoss, wholeForGain } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { result } from '../figures.ts';
import type { Maker } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import {
  changes,
  moves,
  multiplier,
  multipliersStep,
  perCentStep,
  percentsGiven,
  times,
} from '../percent.ts';

const DIVIDE = 1;
const PER_CENT = 2;

/**
 * A change in per cent: which change leads back to the start?
 * Level 1 undoes a rise; level 2 a fall; level 3 two changes by one.
 */
export const undo: Maker<NumbersOf['undo']> = {
  contexts: contextIds,
  example: { percents: [60] },

  draw: (dice, level) => {
    if (level === 1) return { percents: [dice.whole(20, 90, 5)] };
    if (level === 2) return { percents: [-dice.whole(20, 85, 5)] };
    return { percents: [dice.whole(10, 80, 5), dice.whole(-40, 40, 5) || 15] };
  },

  set: ({ percents }, { context, subject }) => {
    const product = compound(percents);
    const back = multiplier(undoPercent((product - 1) * 100));
    const asks = back < 1 ? '% less' : '% more';
    const sum = percents.reduce((total, percent) => total + percent, 0);
    return {
      question: `${context.place}, ${context.output(subject)} ${percents.map(moves).join(' and then ')}. By what percentage must it then ${back < 1 ? 'fall' : 'rise'} to be where it was at the start?`,
      givens: percentsGiven(percents, changes),
      unit: asks,
      answer: back,
      steps: [
        multipliersStep(percents),
        {
          text: `Divide 1 by the ${percents.length > 1 ? 'multipliers' : 'multiplier'}: the multiplier that leads back.`,
          tex: `\\frac{1}{${times(percents.map(multiplier))}} ${result(back)}`,
          values: [back],
        },
        perCentStep(back, asks),
      ],
      missteps: [
        {
          id: 'undid by the same per cent',
          answer: 1 - sum / 100,
          idea: 'You took the same per cent back. But the way back starts from another whole, and the same per cent of it is another amount.',
          step: DIVIDE,
        },
        {
          id: 'gave the change itself',
          answer: product,
          idea: 'That is the change itself. Asked is the way back.',
          step: DIVIDE,
        },
        asks === '% less' ? restForLoss(back, PER_CENT) : wholeForGain(back, PER_CENT),
        ...(percents.length > 1
          ? [
              {
                id: 'undid each by the same per cent',
                answer: percents.reduce((left, percent) => left * (1 - percent / 100), 1),
                idea: 'You took each percentage back as it is. Each way back starts from another whole.',
                step: DIVIDE,
              },
            ]
          : [
              {
                id: 'undid half',
                answer: 1 - sum / 200,
                idea: 'You halved the percentage. How much the way back is depends on the whole it starts from.',
                step: DIVIDE,
              },
            ]),
      ],
    };
  },
};
