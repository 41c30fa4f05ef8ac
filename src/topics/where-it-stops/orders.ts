import { found } from '../../comparison/found.ts';
import type { Trial } from '../../scene/limits.ts';
import type { Scene } from '../../scene/scene.ts';
import { readAlike, roundRatio } from '../../scene/show.ts';

/** A knife's place in one trial, and how many times the baseline it reaches. */
export interface Placed {
  knife: string;
  name: string;
  /** What it is placed by: of a side load the middle of its range. */
  value: number;
  low: number;
  high: number;
}

/** The knives in each trial, best first; those who stand level keep their order in slicing. Empty where none can be ranked. */
export function orders({ knives, rankings }: Scene): Record<Trial, Placed[]> {
  const inSlicing = (id: string): number => rankings.slicing.findIndex(({ knife }) => knife === id);
  const order = (trial: Trial): Placed[] =>
    (rankings[trial] ?? [])
      .map((ranked) => ({ ...ranked, name: found(knives, ranked.knife, 'knife').name }))
      .sort((a, b) => roundRatio(b.value) - roundRatio(a.value) || inSlicing(a.knife) - inSlicing(b.knife));
  return { slicing: order('slicing'), rolling: order('rolling'), chipping: order('chipping') };
}

/** Whether all who are ranked stand level. */
export const allLevel = (order: readonly Placed[]): boolean =>
  new Set(order.map(({ value }) => roundRatio(value))).size <= 1;

/** The names in their order, those who stand level joined: `Dunlin, Curlew = Avocet, Plover`. */
export const inOrder = (order: readonly Placed[]): string =>
  order
    .map(({ name, value }, index) => {
      const before = order[index - 1];
      return index === 0 || !before ? name : `${readAlike(before.value, value) ? ' = ' : ', '}${name}`;
    })
    .join('');
