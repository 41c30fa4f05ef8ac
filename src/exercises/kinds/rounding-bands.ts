import { inverted, wholeForGain } from '../common-missteps.ts';
import { contextIds, contexts } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { perCentStep } from '../percent.ts';
import type { Given, Level, Misstep } from '../problem.ts';
import { capital } from '../wording.ts';

const ENDS = 0;
const DIVIDE = 1;
const MORE = 2;
const HALF = 5;

/** How far the first amount is pushed, and the second the other way: apart for the most, together for the least. */
const pushOf = (level: Level): number => (level === 1 ? HALF : -HALF);
const wayOf = (level: Level): string => (level === 1 ? 'at the most' : 'at the least');

function misstepsOf(
  { own, other }: NumbersOf['rounding-bands'],
  { level, subject, baseline }: Scene,
): Misstep[] {
  const push = pushOf(level);
  const answer = (own + push) / (other - push);
  return [
    {
      id: 'took rounded for exact',
      answer: own / other,
      idea: 'You took the rounded numbers as they are. Each stands for a band of true ones.',
      step: ENDS,
    },
    {
      id: 'the other end',
      answer: (own - push) / (other + push),
      idea: `You pushed both the other way. Asked is what the ratio may be ${wayOf(level)}.`,
      step: ENDS,
    },
    {
      id: 'same end for both',
      answer: (own + push) / (other + push),
      idea: 'You moved both the same way. The ratio reaches furthest where they move against each other.',
      step: ENDS,
    },
    {
      id: 'took ten for five',
      answer: (own + 2 * push) / (other - 2 * push),
      idea: 'You moved each by a whole ten. Rounding to the nearest ten hides half of that.',
      step: ENDS,
    },
    level === 3 ? wholeForGain(answer, MORE) : inverted(answer, subject, baseline, DIVIDE),
  ];
}

/**
 * Two amounts, each rounded to the nearest ten: how far may their ratio reach?
 * Level 1 asks for the most; level 2 for the least; level 3 for the least in per cent more.
 */
export const roundingBands: Maker<NumbersOf['rounding-bands']> = {
  // What is counted has no value half-way between two whole ones.
  contexts: contextIds.filter((id) => contexts[id].amount.continuous),
  example: { own: 70, other: 40 },

  draw: (dice) => {
    const other = dice.whole(30, 120, 10);
    return { own: other + dice.whole(20, 150, 10), other };
  },

  set: (numbers, scene) => {
    const { own, other } = numbers;
    const { context, level, subject, baseline } = scene;
    if (!(other > 2 * HALF && own > other + 2 * HALF))
      throw new RangeError(`amounts ${own} and ${other} are not more than 10 apart and above 10`);
    const most = level === 1;
    const push = pushOf(level);
    const answer = (own + push) / (other - push);
    const unit: Given['unit'] = context.amount.unit;
    const asked = (level === 3 ? context.perCentMore : context.timesAs)(subject, baseline);

    return {
      question: `${context.place}, ${context.amount.is(subject, inFigures(own))} and ${context.amount.is(baseline, inFigures(other))}, each rounded to the nearest ten. ${capital(wayOf(level))}, ${asked}`,
      givens: [
        { name: `${subject}, rounded`, value: own, unit },
        { name: `${baseline}, rounded`, value: other, unit },
      ],
      unit: level === 3 ? '% more' : context.asks,
      answer,
      steps: [
        {
          text: `Rounding may hide up to ${HALF} either way. For the ratio to be ${most ? 'largest' : 'smallest'}, push the two ${most ? 'apart' : 'together'}: ${subject} ${most ? 'up' : 'down'}, ${baseline} ${most ? 'down' : 'up'}.`,
          tex: `${own} ${most ? '+' : '-'} ${HALF} ${result(own + push)} \\qquad ${other} ${most ? '-' : '+'} ${HALF} ${result(other - push)}`,
          values: [own + push, other - push],
          asks: context.amount.unit,
        },
        {
          text: `Divide the end for ${subject} by the end for ${baseline}.`,
          tex: `\\frac{${own + push}}{${other - push}} ${result(answer)}`,
          values: [answer],
        },
        ...(level === 3 ? [perCentStep(answer, '% more')] : []),
      ],
      missteps: misstepsOf(numbers, scene),
    };
  },
};
