import { additiveGuess, compound } from '../../model/index.ts';
import { capital, list } from '../contexts.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker } from '../maker.ts';
import type { Misstep, NumbersOf } from '../problem.ts';

const MULTIPLIERS = 0;
const MULTIPLY = 1;
const MORE = 2;

/**
 * Two or three percentage advantages, each of what the others leave: what do they make together?
 * Level 1 has two; level 2 three; level 3 has a loss among three and asks for per cent more.
 */
export const forwardChain: Maker<NumbersOf['forward-chain']> = {
  contexts: ['rigging-loft', 'seed-trays'],
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
    const causes = context.causes.slice(0, percents.length);
    const factors = percents.map((percent) => compound([percent]));
    const product = compound(percents);
    const sum = percents.reduce((total, percent) => total + percent, 0) / 100;
    const ofThemselves = percents.reduce((total, percent) => (total * percent) / 100, 1);

    const said = percents.map(
      (percent, index) =>
        `${String(causes[index])} alone gives ${inFigures(Math.abs(percent))} % ${percent < 0 ? context.less : 'more'} ${context.yields}`,
    );
    const asked = (asksMore ? context.perCentMore : context.timesAs)(subject, baseline);

    const missteps: Misstep[] = [
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
      ...(asksMore
        ? [
            {
              id: 'forgot the base',
              answer: 1 + product,
              idea: 'You gave what there is in all. Asked is what there is more: the start was there before.',
              step: MORE,
            },
            {
              id: 'took a loss for a gain',
              answer: compound(percents.map(Math.abs)),
              idea: 'You counted the loss as a gain. A loss has a multiplier below 1.',
              step: MULTIPLIERS,
            },
            {
              id: 'arithmetic mean',
              answer: 1 + sum / percents.length,
              idea: 'You took the mean of the percentages. All of them act together, each on what the others leave.',
              step: MULTIPLY,
            },
          ]
        : [
            {
              id: 'forgot the base',
              answer: product - 1,
              idea: 'You gave only what is gained. The start is still there and counts too.',
              step: MULTIPLIERS,
            },
            {
              id: 'added the percentages and forgot the base',
              answer: sum,
              idea: 'You added the percentages and left out the start. Each percentage has a multiplier, and the start is the 1 in it.',
              step: MULTIPLIERS,
            },
            {
              id: 'added the multipliers',
              answer: percents.length + sum,
              idea: 'You added the multipliers. That counts the start once for each of them.',
              step: MULTIPLY,
            },
            {
              id: 'arithmetic mean',
              answer: 1 + sum / percents.length,
              idea: 'You took the mean. All the advantages act together, each on what the others leave.',
              step: MULTIPLY,
            },
          ]),
    ];

    return {
      question: `${context.place}, ${subject} is compared with ${baseline}. ${capital(list(said))}. Each works on what the others leave. Together, ${asked}`,
      givens: percents.map((value, index) => ({ name: String(causes[index]), value, unit: '%' })),
      unit: asksMore ? '% more' : context.asks,
      answer: product,
      steps: [
        {
          text: 'Turn each percentage into a multiplier: 1 and the hundredth part of the percentage, added for more, taken away for less.',
          tex: percents
            .map(
              (percent, at) =>
                `1 ${percent < 0 ? '-' : '+'} \\frac{${Math.abs(percent)}}{100} ${result(Number(factors[at]))}`,
            )
            .join(' \\qquad '),
          value: Number(factors[0]),
        },
        {
          text: 'Multiply the multipliers, because each works on what the ones before it left.',
          tex: `${factors.map((factor) => inFigures(factor)).join(' \\times ')} ${result(product)}`,
          value: product,
        },
        ...(asksMore
          ? [
              {
                text: 'Take the start away, which is 1, and turn what remains into per cent.',
                tex: `(${inFigures(product)} - 1) \\times 100 ${result((product - 1) * 100)}`,
                value: product - 1,
              },
            ]
          : []),
      ],
      missteps,
    };
  },
};
