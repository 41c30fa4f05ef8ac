import { additiveGuess, compound } from '../../model/index.ts';
import { wholeForGain } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { result } from '../figures.ts';
import type { Maker } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { change, multiplier, multipliersStep, perCentStep, percentsGiven, times } from '../percent.ts';
import type { Level, Misstep } from '../problem.ts';
import { capital, list } from '../wording.ts';

const MULTIPLIERS = 0;
const MULTIPLY = 1;
const MORE = 2;

const sumOf = (percents: readonly number[]): number =>
  percents.reduce((total, percent) => total + percent, 0) / 100;

/** Wrong ways where per cent more is asked. */
const misstepsToMore = (percents: readonly number[]): Misstep[] => [
  wholeForGain(compound(percents), MORE),
  {
    id: 'took a loss for a gain',
    answer: compound(percents.map(Math.abs)),
    idea: 'You counted the loss as a gain. A loss has a multiplier below 1.',
    step: MULTIPLIERS,
  },
];

/** Wrong ways where a number of times is asked. */
const misstepsToTimes = (percents: readonly number[]): Misstep[] => [
  {
    id: 'forgot the base',
    answer: compound(percents) - 1,
    idea: 'You gave only what is gained. The start is still there and counts too.',
    step: MULTIPLIERS,
  },
  {
    id: 'added the percentages and forgot the base',
    answer: sumOf(percents),
    idea: 'You added the percentages and left out the start. Each percentage has a multiplier, and the start is the 1 in it.',
    step: MULTIPLIERS,
  },
  {
    id: 'added the multipliers',
    answer: percents.length + sumOf(percents),
    idea: 'You added the multipliers. That counts the start once for each of them.',
    step: MULTIPLY,
  },
];

function misstepsOf(percents: readonly number[], level: Level): Misstep[] {
  const ofThemselves = percents.reduce((total, percent) => (total * percent) / 100, 1);
  return [
    {
      id: 'added the percentages',
      answer: additiveGuess(percents),
      idea: 'You added the percentages. But each works on what the ones before it left, not on the start.',
      step: MULTIPLY,
    },
    {
      id: 'multiplied the percentages themselves',
      answer: 1 + ofThemselves,
      idea: 'You multiplied the percentages themselves. Turn each into a multiplier before you multiply.',
      step: MULTIPLIERS,
    },
    {
      id: 'arithmetic mean',
      answer: 1 + sumOf(percents) / percents.length,
      idea: 'You took the mean of the percentages. All of them act together, each on what the others leave.',
      step: MULTIPLY,
    },
    ...(level === 3 ? misstepsToMore(percents) : misstepsToTimes(percents)),
  ];
}

/**
 * Two or three percentage advantages, each of what the others leave: what do they make together?
 * Level 1 has two; level 2 three; level 3 has a loss among three and asks for per cent more.
 */
export const forwardChain: Maker<NumbersOf['forward-chain']> = {
  contexts: contextIds,
  example: { percents: [40, 40] },

  draw: (dice, level) => {
    const gain = (most: number): number => dice.whole(10, most, 5);
    if (level === 1) return { percents: [gain(70), gain(70)] };
    if (level === 2) return { percents: [gain(100), gain(100), gain(100)] };
    return { percents: [gain(100), -dice.whole(10, 40, 5), gain(100)] };
  },

  set: ({ percents }, { context, level, subject, baseline }) => {
    if (percents.length < 2 || percents.length > context.causes.length) {
      throw new RangeError(
        `number of percentages ${percents.length} is not between 2 and ${context.causes.length}`,
      );
    }
    const asksMore = level === 3;
    const product = compound(percents);

    const said = percents.map(
      (percent, index) =>
        `${String(context.causes[index])} alone gives ${change(percent, context.less)} ${context.yields}`,
    );
    const asked = (asksMore ? context.perCentMore : context.timesAs)(subject, baseline);

    return {
      question: `${context.place}, ${subject} is compared with ${baseline}. ${capital(list(said))}. Each works on what the others leave. Together, ${asked}`,
      givens: percentsGiven(percents, context.causes),
      unit: asksMore ? '% more' : context.asks,
      answer: product,
      steps: [
        multipliersStep(percents),
        {
          text: 'Multiply the multipliers, because each works on what the ones before it left.',
          tex: `${times(percents.map(multiplier))} ${result(product)}`,
          values: [product],
        },
        ...(asksMore ? [perCentStep(product, '% more')] : []),
      ],
      missteps: misstepsOf(percents, level),
    };
  },
};
