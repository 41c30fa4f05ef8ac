import { compound } from '../../model/index.ts';
import { inverted, wholeForGain } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result, settled } from '../figures.ts';
import type { Maker } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { change, multiplier, multipliersStep, perCentStep, percentsGiven, times } from '../percent.ts';
import { list } from '../wording.ts';

const DIVIDE = 1;
const MORE = 2;

/**
 * All together and all causes but one are known: what is the last one worth?
 * Level 1 has one known cause; level 2 two; level 3 a loss among two.
 */
export const missingFactor: Maker<NumbersOf['missing-factor']> = {
  contexts: contextIds,
  example: { known: [50], total: 140 },

  draw: (dice, level) => {
    const gain = (): number => dice.whole(15, 60, 5);
    const known = [gain(), ...(level === 2 ? [gain()] : level === 3 ? [-dice.whole(10, 40, 5)] : [])];
    const least = Math.ceil(settled((compound(known) * 1.15 - 1) * 20)) * 5;
    return { known, total: Math.max(least, 5) + dice.whole(0, 120, 5) };
  },

  set: ({ known, total }, { context, subject, baseline }) => {
    const ofKnown = compound(known);
    const inAll = multiplier(total);
    const missing = inAll / ofKnown;
    const sum = known.reduce((before, percent) => before + percent, 0);
    const sought = String(context.causes[known.length]);
    const said = known.map(
      (percent, index) =>
        `${String(context.causes[index])} alone gives ${change(percent, context.less)} ${context.yields}`,
    );

    return {
      question: `${context.place}, ${context.isMore(subject, baseline, change(total, context.less))}. Of this, ${list(said)}. All the rest comes from ${sought}. Each works on what the others leave. What percentage more ${context.yields} does ${sought} alone give?`,
      givens: [...percentsGiven(known, context.causes), { name: 'all together', value: total, unit: '%' }],
      unit: '% more',
      answer: missing,
      steps: [
        multipliersStep([total, ...known]),
        {
          text: `Divide the multiplier of all together by ${known.length > 1 ? 'those of the causes that are known' : 'that of the cause that is known'}.`,
          tex: `\\frac{${inFigures(inAll)}}{${times(known.map(multiplier))}} ${result(missing)}`,
          values: [missing],
        },
        perCentStep(missing, '% more'),
      ],
      missteps: [
        {
          id: 'subtracted the percentages',
          answer: 1 + (total - sum) / 100,
          idea: 'You took percentages away. But they were multiplied together, so dividing undoes it.',
          step: DIVIDE,
        },
        {
          id: 'multiplied once more',
          answer: inAll * ofKnown,
          idea: 'You multiplied by what is known. It is in the whole already and has to be taken out of it.',
          step: DIVIDE,
        },
        {
          id: 'gave the whole',
          answer: inAll,
          idea: 'That is all of it together. A part of it comes from what is known.',
          step: DIVIDE,
        },
        wholeForGain(missing, MORE),
        inverted(missing, 'the whole', 'what is known', DIVIDE),
      ],
    };
  },
};
