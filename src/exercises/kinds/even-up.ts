import { inverted } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { times } from '../percent.ts';
import type { Misstep } from '../problem.ts';
import { capital, list } from '../wording.ts';

const DIVIDE = 1;
const GATHER = 0;

const productOf = (factors: readonly number[]): number =>
  factors.reduce((product, factor) => product * factor, 1);

function misstepsOf({ total, evened }: NumbersOf['even-up'], { subject, baseline }: Scene): Misstep[] {
  const product = productOf(evened);
  const handicap = evened.find((factor) => factor < 1);
  return [
    {
      id: 'difference for ratio',
      answer: total - product,
      idea: 'You took away what the cause was worth. It was multiplied in, so dividing takes it out.',
      step: DIVIDE,
    },
    {
      id: 'took the gain away',
      answer: total - evened.reduce((sum, factor) => sum + factor - 1, 0),
      idea: 'You took only the gain of the cause away. It acted on all the rest too, so dividing takes it out.',
      step: DIVIDE,
    },
    {
      id: 'multiplied once more',
      answer: total * product,
      idea: 'You multiplied the cause in once more. It is in the whole already.',
      step: DIVIDE,
    },
    {
      id: 'gave what is evened',
      answer: product,
      idea: 'That is what the causes set equal were worth. Asked is what the others leave.',
      step: DIVIDE,
    },
    inverted(total / product, subject, baseline, DIVIDE),
    ...(handicap === undefined
      ? []
      : [
          {
            id: 'kept the handicap',
            answer: (total / product) * handicap,
            idea: 'You left in what had held it back. Once it is equal, it does so no more.',
            step: GATHER,
          },
        ]),
  ];
}

/**
 * Some causes are set equal between the two: what do the others leave?
 * Level 1 sets one cause equal; level 2 two; level 3 two of which one had held the subject back.
 */
export const evenUp: Maker<NumbersOf['even-up']> = {
  contexts: contextIds,
  example: { total: 3.6, evened: [1.5] },

  draw: (dice, level) => {
    const gain = (): number => dice.whole(12, 25) / 10;
    const evened = [gain(), ...(level === 2 ? [gain()] : level === 3 ? [dice.whole(5, 8) / 10] : [])];
    const product = productOf(evened);
    return { total: Math.ceil(product * 12 + dice.whole(0, 12)) / 10, evened };
  },

  set: (numbers, scene) => {
    const { total, evened } = numbers;
    const { context, subject, baseline } = scene;
    const product = productOf(evened);
    const left = total / product;
    const causes = context.causes.slice(0, evened.length);
    const worth = causes.map((cause, index) => `${cause} is worth ${inFigures(Number(evened[index]))} times`);

    return {
      question: `${context.place}, ${context.isTimes(subject, baseline, `${inFigures(total)} times`)}. Of this, ${list(worth)} as much. Now ${list(causes)} ${causes.length > 1 ? 'are' : 'is'} made the same as with ${baseline}, and all else stays. ${capital(context.timesAs(subject, baseline))}`,
      givens: [
        { name: 'all together', value: total, unit: '' },
        ...causes.map((name, index) => ({ name, value: Number(evened[index]), unit: '' as const })),
      ],
      unit: context.asks,
      answer: left,
      steps: [
        {
          text:
            evened.length > 1
              ? 'Multiply what the causes that are set equal were worth.'
              : 'Take what the cause that is set equal was worth.',
          tex: `${times(evened)} ${result(product)}`,
          values: [product],
        },
        {
          text: 'What is equal is worth 1 now. So divide the whole by what it was worth.',
          tex: `\\frac{${inFigures(total)}}{${inFigures(product)}} ${result(left)}`,
          values: [left],
        },
      ],
      missteps: misstepsOf(numbers, scene),
    };
  },
};
