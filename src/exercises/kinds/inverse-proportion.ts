import { percentReadings } from '../../model/index.ts';
import { inverted, restForLoss } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { change, multiplier, multipliersStep, perCentStep } from '../percent.ts';
import type { Given, Misstep, Step } from '../problem.ts';
import { capital } from '../wording.ts';

function misstepsOf(
  percent: number,
  answer: number,
  { context, level, subject, baseline }: Scene,
): Misstep[] {
  const { name } = context.hindrance;
  // Of amounts there is no multiplier to find first.
  const divideStep = level === 1 ? 0 : 1;
  return [
    {
      id: 'face value',
      answer: 1 - percent / 100,
      idea: `You took the percentage at face value. Half of the ${name} is twice the effect, not half as much again.`,
      step: divideStep,
    },
    { ...inverted(answer, subject, baseline, divideStep), id: 'took direct for inverse proportion' },
    level === 3
      ? restForLoss(answer, divideStep + 1)
      : {
          id: 'forgot the base',
          answer: answer - 1,
          idea: 'You gave only what is gained. The start is still there and counts too.',
          step: divideStep,
        },
    {
      id: 'gave the change for the ratio',
      answer: Math.abs(percent) / 100,
      idea: `You gave the change of the ${name} itself. Asked is what it makes of the effect.`,
      step: divideStep,
    },
  ];
}

/**
 * Something that hinders is less or more: what does that make of what it hinders?
 * Level 1 gives both amounts; level 2 per cent less of the hindrance; level 3 per cent more, and asks for per cent less.
 */
export const inverseProportion: Maker<NumbersOf['inverse-proportion']> = {
  contexts: contextIds,
  example: { amountIndex: 2, percent: -40 },

  draw: (dice, level) => ({
    amountIndex: dice.whole(0, 5),
    percent: level === 3 ? dice.whole(20, 90, 5) : -dice.whole(20, 75, 5),
  }),

  set: ({ amountIndex, percent }, scene) => {
    const { context, level, subject, baseline } = scene;
    const { name, unit, amounts, output } = context.hindrance;
    const other = Number(amounts[amountIndex % amounts.length]);
    const own = other * multiplier(percent);
    const left = multiplier(percent);
    const answer = percent < 0 ? percentReadings(-percent, 1).inverse : 1 / left;
    const byAmounts = level === 1;

    const givens: Given[] = byAmounts
      ? [
          { name: `${name} of ${subject}`, value: own, unit },
          { name: `${name} of ${baseline}`, value: other, unit },
        ]
      : [{ name: `change of the ${name}`, value: percent, unit: '%' }];
    const said = byAmounts
      ? `The ${name} is ${inFigures(own)} ${unit} with ${subject} and ${inFigures(other)} ${unit} with ${baseline}.`
      : `The ${name} of ${subject} is ${change(percent, 'less')} than that of ${baseline}.`;
    const divide: Step = {
      text: byAmounts
        ? `In inverse proportion the other one stands on top: divide the ${name} of ${baseline} by that of ${subject}.`
        : 'In inverse proportion the multiplier is turned over: divide 1 by it.',
      tex: `\\frac{${byAmounts ? inFigures(other) : 1}}{${inFigures(byAmounts ? own : left)}} ${result(answer)}`,
      values: [answer],
    };

    return {
      question: `${context.place}, take it that ${output} is in inverse proportion to the ${name}. ${said} All else is equal. ${capital((level === 3 ? context.perCentMore : context.timesAs)(subject, baseline, context.less))}`,
      givens,
      unit: level === 3 ? '% less' : context.asks,
      answer,
      steps: [
        ...(byAmounts ? [] : [multipliersStep([percent])]),
        divide,
        ...(level === 3 ? [perCentStep(answer, '% less')] : []),
      ],
      missteps: misstepsOf(percent, answer, scene),
    };
  },
};
