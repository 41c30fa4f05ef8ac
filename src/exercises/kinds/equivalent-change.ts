import { additiveGuess, compound } from '../../model/index.ts';
import { wholeForGain } from '../common-missteps.ts';
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
import { list } from '../wording.ts';

const MULTIPLIERS = 0;
const MULTIPLY = 1;
const PER_CENT = 2;

/**
 * Changes one after another: which single change does the same?
 * Level 1 has two rises; level 2 a rise and a fall; level 3 three changes.
 */
export const equivalentChange: Maker<NumbersOf['equivalent-change']> = {
  contexts: contextIds,
  example: { percents: [40, 25] },

  draw: (dice, level) => {
    const rise = (): number => dice.whole(20, 90, 5);
    const fall = (): number => -dice.whole(20, 60, 5);
    if (level === 1) return { percents: [rise(), rise()] };
    if (level === 2) return { percents: [rise(), fall()] };
    return { percents: [rise(), fall(), dice.pick([rise(), fall()])] };
  },

  set: ({ percents }, { context, subject }) => {
    const product = compound(percents);
    const falls = percents.filter((percent) => percent < 0);
    const ofThemselves = percents.reduce((total, percent) => (total * percent) / 100, 1);
    return {
      question: `${context.place}, ${context.output(subject)} ${list(percents.map(moves))}, one change after another. Which single change does the same? Give it in per cent, + for a rise and − for a fall.`,
      givens: percentsGiven(percents, changes),
      unit: '% more',
      answer: product,
      steps: [
        multipliersStep(percents),
        {
          text: 'Multiply the multipliers: each change starts from where the one before it ended.',
          tex: `${times(percents.map(multiplier))} ${result(product)}`,
          values: [product],
        },
        perCentStep(product, '% more'),
      ],
      missteps: [
        {
          id: 'added the percentages',
          answer: additiveGuess(percents),
          idea: 'You added the percentages. But each change starts from another whole.',
          step: MULTIPLY,
        },
        {
          id: 'multiplied the percentages themselves',
          answer: 1 + ofThemselves,
          idea: 'You multiplied the percentages themselves. Turn each into a multiplier before you multiply.',
          step: MULTIPLIERS,
        },
        wholeForGain(product, PER_CENT),
        ...(falls.length > 0
          ? [
              {
                id: 'took a loss for a gain',
                answer: compound(percents.map(Math.abs)),
                idea: 'You counted a fall as a rise. A fall has a multiplier below 1.',
                step: MULTIPLIERS,
              },
              {
                id: 'left the falls out',
                answer: compound(percents.filter((percent) => percent > 0)),
                idea: 'You took the rises only. The falls have multipliers too.',
                step: MULTIPLIERS,
              },
            ]
          : [
              {
                id: 'arithmetic mean',
                answer: 1 + (additiveGuess(percents) - 1) / percents.length,
                idea: 'You took the mean of the percentages. All the changes happen, one after another.',
                step: MULTIPLY,
              },
            ]),
      ],
    };
  },
};
