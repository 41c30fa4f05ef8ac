import { logShares } from '../../model/index.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { change, multipliersStep } from '../percent.ts';
import type { Misstep } from '../problem.ts';
import { list } from '../wording.ts';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** @param logsStep the step that takes the logarithms; the one after it divides */
function misstepsOf(factors: readonly number[], asked: number, logsStep: number): Misstep[] {
  const own = Number(factors[asked]);
  const product = factors.reduce((total, factor) => total * factor, 1);
  return [
    {
      id: 'share of the sum of gains',
      answer: (own - 1) / sum(factors.map((factor) => factor - 1)),
      idea: 'You compared the gains as if they added. They multiply, so a share needs lengths that add: logarithms.',
      step: logsStep,
    },
    {
      id: 'share of the sum of factors',
      answer: own / sum(factors),
      idea: 'You took the factor as a part of the sum of factors. But the whole is their product.',
      step: logsStep,
    },
    {
      id: 'part of the product',
      answer: own / product,
      idea: 'You divided the factor by the product. That leaves the other factors turned over, and such parts do not add up to the whole.',
      step: logsStep,
    },
    {
      id: 'gave the rest',
      answer: 1 - Number(logShares(factors)[asked]),
      idea: 'That is the share of all the others together.',
      step: logsStep + 1,
    },
  ];
}

/**
 * What share of the whole advantage has one factor, measured so that the shares add up in any order?
 * Level 1 has powers of one number; level 2 any factors, by logarithms; level 3 percentages.
 */
export const shareOfFactor: Maker<NumbersOf['share-of-factor']> = {
  contexts: contextIds,
  example: { factors: [2, 4, 8], asked: 0, base: 2 },

  draw: (dice, level) => {
    if (level === 1) {
      const base = dice.pick([1.5, 2, 3]);
      const most = base === 2 ? 3 : 2;
      const factors = Array.from({ length: 3 }, () => base ** dice.whole(1, most));
      return { factors, asked: dice.whole(0, 2), base };
    }
    const factor = (): number =>
      level === 2 ? dice.pick([1.2, 1.25, 1.5, 1.6, 1.8, 2, 2.5, 3, 4]) : 1 + dice.whole(20, 150, 5) / 100;
    const factors = Array.from({ length: level }, factor);
    return { factors, asked: dice.whole(0, level - 1), base: 10 };
  },

  set: ({ factors, asked, base }, { context, level, subject, baseline }) => {
    const answer = Number(logShares(factors)[asked]);
    const logs = factors.map((factor) => Math.log(factor) / Math.log(base));
    const asPercent = level === 3;
    const percents = factors.map((factor) => Math.round((factor - 1) * 100));
    const causes = context.causes.slice(0, factors.length);
    const said = causes.map((cause, index) =>
      asPercent
        ? `${cause} gives ${change(Number(percents[index]), context.less)} ${context.yields}`
        : `${cause} is worth ${inFigures(Number(factors[index]))} times as much`,
    );
    const log = base === 10 ? '\\log' : `\\log_{${base}}`;

    return {
      question: `${context.place}, ${subject} is compared with ${baseline}: ${list(said)}. They multiply. What percentage of the whole length has ${String(causes[asked])}, laid end to end on a ruler of ratios?`,
      givens: causes.map((name, index) => ({
        name,
        value: Number((asPercent ? percents : factors)[index]),
        unit: asPercent ? '%' : '',
      })),
      unit: '%',
      answer,
      steps: [
        ...(asPercent ? [multipliersStep(percents)] : []),
        {
          text:
            base === 10
              ? 'The length of a factor on the ruler is its logarithm: take that of each.'
              : `The length of a factor on the ruler is how many times ${inFigures(base)} is multiplied to make it: count for each.`,
          tex: factors
            .map((factor, index) => `${log} ${inFigures(factor)} ${result(Number(logs[index]))}`)
            .join(' \\qquad '),
          values: logs,
        },
        {
          text: `Divide the length of ${String(causes[asked])} by all the lengths together, and take it in per cent.`,
          tex: `\\frac{${inFigures(Number(logs[asked]))}}{${logs.map((one) => inFigures(one)).join(' + ')}} \\times 100 ${result(answer * 100)}`,
          values: [answer],
          asks: '%',
        },
      ],
      missteps: misstepsOf(factors, asked, asPercent ? 1 : 0),
    };
  },
};
