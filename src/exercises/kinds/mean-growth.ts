import { additiveGuess, compound } from '../../model/index.ts';
import { wholeForGain } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import {
  changes,
  multiplier,
  multipliersStep,
  perCentStep,
  percentsGiven,
  signed,
  times,
} from '../percent.ts';
import { list } from '../wording.ts';

const MULTIPLY = 1;
const ROOT = 2;
const PER_CENT = 3;

/**
 * Unequal changes one after another: which equal change each time does the same?
 * Level 1 has two rises; level 2 three; level 3 a fall among three.
 */
export const meanGrowth: Maker<NumbersOf['mean-growth']> = {
  contexts: contextIds,
  example: { percents: [20, 150] },

  draw: (dice, level) => {
    const small = dice.whole(5, 40, 5);
    const large = dice.whole(90, 200, 5);
    if (level === 1) return { percents: dice.several([small, large], 2) };
    const middle = level === 2 ? dice.whole(5, 80, 5) : -dice.whole(20, 50, 5);
    return { percents: dice.several([small, large, middle], 3) };
  },

  set: ({ percents }, { context, subject }) => {
    const count = percents.length;
    if (count < 2 || count > 3) throw new RangeError(`number of percentages ${count} is not between 2 and 3`);
    const product = compound(percents);
    const mean = Math.exp(Math.log(product) / count);
    const root = count === 2 ? `\\sqrt{${inFigures(product)}}` : `\\sqrt[3]{${inFigures(product)}}`;

    return {
      question: `${context.place}, in ${count} trials one after another, ${context.output(subject)} changes by ${list(percents.map(signed))}. Which equal percentage each time leads to the same end?`,
      givens: percentsGiven(percents, changes),
      unit: '% more',
      answer: mean,
      steps: [
        multipliersStep(percents),
        {
          text: 'Multiply the multipliers: so many times the start is the end.',
          tex: `${times(percents.map(multiplier))} ${result(product)}`,
          values: [product],
        },
        {
          text: `Find the number that, multiplied ${count === 2 ? 'twice' : 'three times'}, makes the same: the ${count === 2 ? 'square' : 'cube'} root.`,
          tex: `${root} ${result(mean)}`,
          values: [mean],
        },
        perCentStep(mean, '% more'),
      ],
      missteps: [
        {
          id: 'arithmetic mean of ratios',
          answer: 1 + (additiveGuess(percents) - 1) / count,
          idea: 'You took the arithmetic mean of the percentages. Added up it fits, but changes that follow one another multiply.',
          step: MULTIPLY,
        },
        {
          id: 'shared out the whole',
          answer: 1 + (product - 1) / count,
          idea: 'You divided the change in all by the number of trials. Equal changes multiply, so it takes a root.',
          step: ROOT,
        },
        {
          id: 'gave the whole',
          answer: product,
          idea: 'That is the change in all. Asked is the equal change each time.',
          step: ROOT,
        },
        wholeForGain(mean, PER_CENT),
      ],
    };
  },
};
