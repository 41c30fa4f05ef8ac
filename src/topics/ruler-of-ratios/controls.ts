import type { Control } from '../base/controls.ts';
import { percentagesOf } from '../../scene/percentages.ts';
import { sceneOf } from '../../scene/scene.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { inDecimals } from '../../scene/show.ts';

/** The chain a page lays out, as percentages a comparison can hold. */
const chainOf = (entry: ComparisonEntry): readonly number[] =>
  entry.faceValues ??
  percentagesOf(sceneOf(entry)).map((percent) => Math.min(1000, Math.max(-99, inDecimals(percent, 1))));

/** Where the furthest-reaching percentage stands; the first of equals. */
const placeOfLargest = (chain: readonly number[]): number =>
  chain.reduce(
    (best, percent, index) =>
      Math.abs(Math.log1p(percent / 100)) > Math.abs(Math.log1p((chain[best] ?? 0) / 100)) ? index : best,
    0,
  );

/** The order of the chain: which place the largest effect takes; the others keep theirs among themselves. */
export const rulerControls: Record<string, Control> = {
  order: {
    label: () => 'Place of the largest effect',
    min: 1,
    max: 3,
    step: 1,
    unit: '',
    read: (entry) => placeOfLargest(chainOf(entry)) + 1,
    write: (entry, value) => {
      const chain = chainOf(entry);
      const place = placeOfLargest(chain);
      const others = chain.filter((_, index) => index !== place);
      const taken = chain.slice(place, place + 1);
      return { ...entry, faceValues: [...others.slice(0, value - 1), ...taken, ...others.slice(value - 1)] };
    },
  },
};
