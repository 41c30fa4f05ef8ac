import { compound } from '../../model/index.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { change, changes, multiplier, multipliersStep, percentsGiven, times } from '../percent.ts';
import { capital } from '../wording.ts';

const MULTIPLIERS = 0;
const DIVIDE = 1;

/**
 * An amount and the percentage that led to it: what was the amount before?
 * Level 1 has a gain; level 2 a loss; level 3 two changes.
 */
export const reverseBase: Maker<NumbersOf['reverse-base']> = {
  contexts: contextIds,
  example: { base: 60, percents: [40] },

  draw: (dice, level) => {
    const base = dice.whole(40, 400, 20);
    if (level === 1) return { base, percents: [dice.whole(20, 90, 5)] };
    if (level === 2) return { base, percents: [-dice.whole(20, 70, 5)] };
    // Quarters of sixteenths: the amount stays whole, and below a thousand.
    const quarter = (): number => dice.pick([25, 50, 75, -25, -50]);
    return { base: dice.whole(80, 320, 16), percents: [quarter(), quarter()] };
  },

  set: ({ base, percents }, { context, subject, baseline, third }) => {
    const product = compound(percents);
    const amount = base * product;
    const back = percents.reduce((left, percent) => left * (1 - percent / 100), amount);
    const sum = percents.reduce((total, percent) => total + percent, 0);
    const [last = 0, first] = [...percents].reverse();
    const said =
      first === undefined
        ? context.isMore(subject, baseline, change(last, context.less))
        : `${context.isMore(subject, third, change(last, context.less))}, and ${context.isMore(third, baseline, change(first, context.less))}`;

    return {
      question: `${context.place}, ${context.amount.is(subject, inFigures(amount))}. ${capital(said)}. ${capital(context.amount.asked(baseline))}`,
      givens: [
        { name: `amount of ${subject}`, value: amount, unit: context.amount.unit },
        ...percentsGiven(percents, changes),
      ],
      unit: context.amount.unit,
      answer: base,
      steps: [
        multipliersStep(percents),
        {
          text: `Divide the amount of ${subject} by ${percents.length > 1 ? 'the multipliers' : 'the multiplier'}: it is so many times what is asked for.`,
          tex: `\\frac{${inFigures(amount)}}{${times(percents.map(multiplier))}} ${result(base)}`,
          values: [base],
          asks: context.amount.unit,
        },
      ],
      missteps: [
        {
          id: 'took the percentage of the wrong base',
          answer: back,
          idea: `You took the percentage of the amount of ${subject}. It is a percentage of what is asked for.`,
          step: DIVIDE,
        },
        {
          id: 'went forward',
          answer: amount * product,
          idea: `You went on from ${subject}. Asked is where the change began.`,
          step: DIVIDE,
        },
        {
          id: 'gave the difference',
          answer: Math.abs(amount - base),
          idea: 'You gave what lies between the two amounts. Asked is an amount itself.',
          step: DIVIDE,
        },
        {
          id: 'gave the percentage of the amount',
          answer: Math.abs((amount * sum) / 100),
          idea: 'You took the percentage itself. The start belongs to the multiplier too, as the 1 in it.',
          step: MULTIPLIERS,
        },
      ],
    };
  },
};
