import { undoPercent } from '../../model/index.ts';
import { lessOf, shortPercent } from './values.ts';
import { brief, plain } from '../../scene/show.ts';
import type { WorkedOf } from '../worked.ts';

/** Four digits where a value goes on into the next step, without empty decimals. */
const on = (value: number): string => (Math.abs(value) < 1e-3 ? plain(value, 4) : brief(value));

/** The three readings of a fall, and what a rise and a fall by the same percentage leave. */
export const lessWorked: Record<string, WorkedOf> = {
  'less-of-a-bad-thing': (scene) => {
    const { percent, leftPercent, exponent, faceValue, inverse, damped } = lessOf(scene);
    const p = brief(percent);
    const left = on(leftPercent / 100);
    return {
      givens: `${shortPercent(percent)} less of something that is in the way; exponent ${brief(exponent)} for the damped reading.`,
      steps: [
        {
          say: 'What is left of it, as a part of the whole.',
          tex: '1 - \\frac{{{p}}}{100} = {{left}}',
          values: { p, left },
        },
        {
          say: 'Face value: the percentage is called a gain as it stands.',
          tex: '1 + \\frac{{{p}}}{100} = {{face}}',
          values: { p, face: on(faceValue) },
        },
        {
          say: 'Inverse: how many times does what is left go into the whole?',
          tex: '\\frac{1}{{{left}}} \\approx {{inverse}}',
          values: { left, inverse: on(inverse) },
        },
        {
          say: `Damped: the inverse to the power ${brief(exponent)}.${exponent === 0.5 ? ' That is its square root.' : ''}`,
          tex: '{{inverse}}^{{{e}}} \\approx {{damped}}',
          values: { inverse: on(inverse), e: brief(exponent), damped: on(damped) },
        },
        {
          say: 'There and back: a rise, and then a fall by the same percentage.',
          tex: '\\begin{gathered} \\left(1 + \\frac{{{p}}}{100}\\right) \\times \\left(1 - \\frac{{{p}}}{100}\\right) \\\\ = 1 - \\left(\\frac{{{p}}}{100}\\right)^2 \\approx {{back}} \\end{gathered}',
          values: { p, back: on(1 - (percent / 100) ** 2) },
        },
        {
          say: 'What truly undoes the rise, in per cent. Take the rise off again, but of the risen heap.',
          tex: '-\\frac{{{p}}}{1 + \\frac{{{p}}}{100}} \\approx {{undo}}',
          values: { p, undo: on(undoPercent(percent)) },
          unit: '%',
        },
      ],
    };
  },
};
