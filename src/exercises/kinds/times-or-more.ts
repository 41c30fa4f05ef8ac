import { inverted, wholeForGain } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { change, multiplier, multipliersStep, perCentStep } from '../percent.ts';
import type { Draft } from '../problem.ts';
import { capital } from '../wording.ts';

/**
 * "2.5 times as long" against "150% more".
 * Level 1 turns times into per cent more; level 2 per cent more into times; level 3 compares the two.
 */
export const timesOrMore: Maker<NumbersOf['times-or-more']> = {
  contexts: contextIds,
  example: { times: 2.5 },

  draw: (dice, level) => ({
    times: dice.whole(24, level === 3 ? 80 : 180) / 20,
    ...(level === 3 ? { other: dice.whole(24, 50) / 20 } : {}),
  }),

  set: ({ times, other }, scene) => {
    if (!(times > 1 && times < 1000))
      throw new RangeError(`number of times ${times} is not between 1 and 1000`);
    if (scene.level === 1) return asksMore(times, scene);
    return scene.level === 2 ? asksTimes(times, scene) : comparesThem(times, other ?? 1.5, scene);
  },
};

function asksMore(ratio: number, { context, subject, baseline }: Scene): Draft {
  return {
    question: `${context.place}, ${context.isTimes(subject, baseline, `${inFigures(ratio)} times`)}. ${capital(context.perCentMore(subject, baseline))}`,
    givens: [{ name: 'number of times', value: ratio, unit: '' }],
    unit: '% more',
    answer: ratio,
    steps: [perCentStep(ratio, '% more')],
    missteps: [
      wholeForGain(ratio, 0),
      {
        id: 'took it of the wrong base',
        answer: 2 - 1 / ratio,
        idea: `You took the gain as a part of ${subject}. Per cent more is counted from ${baseline}.`,
        step: 0,
      },
      {
        id: 'counted the start twice',
        answer: 2 + ratio,
        idea: 'You added the start where it has to be taken away.',
        step: 0,
      },
      inverted(ratio, subject, baseline, 0),
    ],
  };
}

function asksTimes(ratio: number, { context, subject, baseline }: Scene): Draft {
  const percent = (ratio - 1) * 100;
  return {
    question: `${context.place}, ${context.isMore(subject, baseline, change(percent, context.less))}. ${capital(context.timesAs(subject, baseline))}`,
    givens: [{ name: 'more', value: percent, unit: '%' }],
    unit: context.asks,
    answer: ratio,
    steps: [multipliersStep([percent])],
    missteps: [
      {
        id: 'forgot the base',
        answer: ratio - 1,
        idea: 'You turned the percentage alone into a number of times. The start is still there and counts too.',
        step: 0,
      },
      {
        id: 'counted the start twice',
        answer: ratio + 1,
        idea: 'You counted the start twice. The percentage says what comes on top of it once.',
        step: 0,
      },
      {
        id: 'inverse where face value is right',
        answer: 1 / (2 - ratio),
        idea: 'You treated it as less of something that hinders. Here it is more of the effect itself.',
        step: 0,
      },
      inverted(ratio, subject, baseline, 0),
    ],
  };
}

function comparesThem(ratio: number, other: number, { context, subject, baseline, third }: Scene): Draft {
  const percent = (other - 1) * 100;
  const of = ratio * 100;
  const gain = ratio - 1;
  return {
    question: `${context.place}, ${context.isTimes(subject, third, `${inFigures(of)}%`)}, but ${context.isMore(baseline, third, change(percent, context.less))}. ${capital(context.timesAs(subject, baseline))}`,
    givens: [
      { name: `${subject}, as a part of ${third}`, value: of, unit: '%' },
      { name: `${baseline}, more than ${third}`, value: percent, unit: '%' },
    ],
    unit: context.asks,
    answer: ratio / other,
    steps: [
      {
        text: 'The first percentage is of the whole: divide it by 100.',
        tex: `\\frac{${inFigures(of)}}{100} ${result(ratio)}`,
        values: [ratio],
      },
      { ...multipliersStep([percent]), text: 'The second says more: it comes on top of 1.' },
      {
        text: `Divide the number of times of ${subject} by that of ${baseline}.`,
        tex: `\\frac{${inFigures(ratio)}}{${inFigures(multiplier(percent))}} ${result(ratio / other)}`,
        values: [ratio / other],
      },
    ],
    missteps: [
      {
        id: 'took more for of it',
        answer: ratio / (other - 1),
        idea: `You took the percentage of ${baseline} for all of it. It says how much more.`,
        step: 1,
      },
      {
        id: 'took of it for more',
        answer: (1 + ratio) / other,
        idea: `You took the percentage of ${subject} for what is more. It says all of it.`,
        step: 0,
      },
      {
        id: 'compared the gains',
        answer: gain / (other - 1),
        idea: 'You compared what each has more. The question compares all that each has.',
        step: 2,
      },
      {
        id: 'difference for ratio',
        answer: ratio - other,
        idea: 'You took one from the other. "How many times" asks for a quotient.',
        step: 2,
      },
      inverted(ratio / other, subject, baseline, 2),
    ],
  };
}
