import { compound } from '../model/index.ts';
import { inFigures, result } from './figures.ts';
import type { Given, Step } from './problem.ts';

/**
 * A percentage with its sign, as on paper.
 *
 * @example signed(-25) // → '−25%'
 */
export const signed = (percent: number): string =>
  `${percent < 0 ? '−' : '+'}${inFigures(Math.abs(percent))}%`;

/**
 * "40% more", or with the word for less.
 *
 * @example change(-25, 'fewer') // → '25% fewer'
 */
export const change = (percent: number, less: string): string =>
  `${inFigures(Math.abs(percent))}% ${percent < 0 ? less : 'more'}`;

/** "rises by 40%" */
export const moves = (percent: number): string =>
  `${percent < 0 ? 'falls' : 'rises'} by ${inFigures(Math.abs(percent))}%`;

export const multiplier = (percent: number): number => compound([percent]);

export const percentsGiven = (percents: readonly number[], names: readonly string[]): Given[] =>
  percents.map((value, index) => ({ name: String(names[index]), value, unit: '%' }));

/** "first change", "second change" and so on, for percentages that come one after another. */
export const changes: readonly string[] = ['first change', 'second change', 'third change'];

/** Factors with the sign of multiplication between them. */
export const times = (factors: readonly number[]): string =>
  factors.map((factor) => inFigures(factor)).join(' \\times ');

/** The step that turns percentages into multipliers. */
export const multipliersStep = (percents: readonly number[]): Step => ({
  text: `Turn ${percents.length > 1 ? 'each' : 'the'} percentage into a multiplier: 1 and the hundredth part of the percentage, added for more, taken away for less.`,
  tex: percents
    .map(
      (percent) =>
        `1 ${percent < 0 ? '-' : '+'} \\frac{${inFigures(Math.abs(percent))}}{100} ${result(multiplier(percent))}`,
    )
    .join(' \\qquad '),
  values: percents.map(multiplier),
});

/** The step that turns a ratio into per cent more, or into per cent less. */
export const perCentStep = (ratio: number, asks: '% more' | '% less'): Step =>
  asks === '% more'
    ? {
        text: 'Take the start away, which is 1, and turn what remains into per cent.',
        tex: `(${inFigures(ratio)} - 1) \\times 100 ${result((ratio - 1) * 100)}`,
        values: [ratio],
        asks,
      }
    : {
        text: 'Take it away from the start, which is 1, and turn what is missing into per cent.',
        tex: `(1 - ${inFigures(ratio)}) \\times 100 ${result((1 - ratio) * 100)}`,
        values: [ratio],
        asks,
      };
