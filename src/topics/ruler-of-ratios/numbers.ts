import type { NumberOf } from '../base/numbers.ts';
import { fullName, largest, rulerOf, smallest } from './values.ts';
import type { Effect, Ruler } from './values.ts';
import { percent, plain, times } from '../../scene/show.ts';

/** A share, where there is one. */
export const shareText = (share: number | null): string => (share === null ? 'no share' : percent(share));

const of =
  (pick: (ruler: Ruler) => Effect | undefined, show: (effect: Effect, ruler: Ruler) => string): NumberOf =>
  (scene) => {
    const ruler = rulerOf(scene);
    const effect = pick(ruler);
    return effect ? show(effect, ruler) : 'no effect';
  };

/** How many times the largest length is the smallest; 1 where there are not two. */
export const spanOf = (ruler: Ruler): number => {
  const [big, small] = [largest(ruler), smallest(ruler)];
  return big && small ? Math.abs(big.steps / small.steps) : 1;
};

/** The numbers of a chain laid end to end. */
export const rulerNumbers: Record<string, NumberOf> = {
  'ruler.list': (scene) => rulerOf(scene).effects.map(fullName).join(', ') || 'no effect',
  'ruler.product': (scene) => times(rulerOf(scene).product),
  'ruler.steps': (scene) => `${plain(rulerOf(scene).steps)} steps`,
  'ruler.span': (scene) => times(spanOf(rulerOf(scene))),
  'ruler.largest': of(largest, fullName),
  'ruler.largest.steps': of(largest, ({ steps }) => `${plain(steps)} steps`),
  'ruler.largest.share': of(largest, ({ share }) => shareText(share)),
  'ruler.smallest': of(smallest, fullName),
  'ruler.smallest.steps': of(smallest, ({ steps }) => `${plain(steps)} steps`),
};
