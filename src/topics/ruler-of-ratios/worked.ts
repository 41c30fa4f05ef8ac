import { fullName, largest, rulerOf } from './values.ts';
import { brief, plain, times } from '../../scene/show.ts';
import type { WorkedOf } from '../worked.ts';

/** Six digits where 1 is taken off a value in the next step, without empty decimals: those of a small gain are few. */
const on = (value: number): string =>
  Math.abs(value) < 1e-3 ? plain(value, 6) : plain(value, 6).replace(/\.?0+$/, '');
const none = 'none';

/** The share of the largest effect: by steps of a tenth, and by what it adds in three places of the order. */
export const rulerWorked: Record<string, WorkedOf> = {
  'share-of-each': (scene) => {
    const ruler = rulerOf(scene);
    const big = largest(ruler);
    const { product, cancel } = ruler;
    const f = big?.factor ?? 1;
    const from = big?.from ?? 1;
    const steps = big?.steps ?? 0;
    const whole = big && !cancel ? brief(ruler.steps) : none;
    const gain = on(product - 1);
    const ratio = (part: number): string => (big && !cancel ? plain(part / (product - 1)) : none);
    return {
      givens: big
        ? `${ruler.effects.map(fullName).join(', ')}, in this order. The largest is ${fullName(big)}.${cancel ? ' They nearly cancel, so there is no share to find.' : ''}`
        : 'no effect, so there is no share to find.',
      steps: [
        {
          say: 'By the ruler: how many steps of a tenth more make the largest?',
          tex: '\\frac{\\log({{f}})}{\\log(1.1)} \\approx {{n}}',
          values: { f: on(f), n: brief(steps) },
        },
        {
          say: 'How many make the whole?',
          tex: '\\frac{\\log({{F}})}{\\log(1.1)} \\approx {{N}}',
          values: { F: on(product), N: brief(ruler.steps) },
        },
        {
          say: 'The share of the largest is its part of the steps. No order comes in.',
          tex: '\\frac{{{n}}}{{{N}}} \\approx {{share}}',
          values: { n: brief(steps), N: whole, share: big && !cancel ? plain(big.share) : none },
        },
        {
          say: `By what it adds: it began at ${times(from)}. What it added, over all that was added.`,
          tex: '\\frac{{{from}} \\times {{f}} - {{from}}}{{{F}} - 1} \\approx {{part}}',
          values: { from: on(from), f: on(f), F: on(product), part: ratio(from * (f - 1)) },
        },
        {
          say: 'The same effect in the first place adds this part.',
          tex: '\\frac{{{f}} - 1}{{{gain}}} \\approx {{first}}',
          values: { f: on(f), gain, first: ratio(f - 1) },
        },
        {
          say: 'And in the last place, where the most has been made already.',
          tex: '\\frac{{{F}} - {{F}} / {{f}}}{{{gain}}} \\approx {{last}}',
          values: { f: on(f), F: on(product), gain, last: ratio(product - product / f) },
        },
      ],
    };
  },
};
