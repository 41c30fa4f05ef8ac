import { additiveGuess, compound } from '../../model/index.ts';
import { percentagesOf } from '../../scene/percentages.ts';
import { brief, plain, roundedPercent, times } from '../../scene/show.ts';
import type { WorkedOf } from '../worked.ts';

const first = (values: readonly number[], index: number): number => values[index] ?? 0;

/** The first lesson's sum, step by step. */
export const percentagesWorked: Record<string, WorkedOf> = {
  'forty-and-forty': (scene) => {
    const all = percentagesOf(scene);
    const [a, b] = [first(all, 0), first(all, 1)];
    const two = [a, b];
    return {
      givens: `two effects, ${roundedPercent(a)} and ${roundedPercent(b)}.`,
      steps: [
        {
          say: 'Turn each percentage into a multiplier.',
          tex: '1 + \\frac{{{a}}}{100} = {{fa}} \\qquad 1 + \\frac{{{b}}}{100} = {{fb}}',
          values: { a: brief(a), b: brief(b), fa: plain(1 + a / 100), fb: plain(1 + b / 100) },
        },
        {
          say: 'The second works on what the first left: multiply.',
          tex: '{{fa}} \\times {{fb}} = {{product}}',
          values: { fa: plain(1 + a / 100), fb: plain(1 + b / 100), product: plain(compound(two)) },
        },
        {
          say: 'The tempting sum takes both of the start.',
          tex: '1 + \\frac{{{a}}}{100} + \\frac{{{b}}}{100} = {{sum}}',
          values: { a: brief(a), b: brief(b), sum: plain(additiveGuess(two)) },
        },
        {
          say: `Side by side: ${times(compound(two))} and ${times(additiveGuess(two))}. The gap is the second effect taken of the first.`,
          tex: '\\frac{{{a}}}{100} \\times \\frac{{{b}}}{100} = {{gap}}',
          values: { a: brief(a), b: brief(b), gap: plain((a / 100) * (b / 100)) },
        },
      ],
    };
  },
};
