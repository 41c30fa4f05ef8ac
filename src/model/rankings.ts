import { compare } from './compare.ts';
import type { LineUp } from './types.ts';

export interface Ranked {
  knife: string;
  /** Times the baseline. */
  value: number;
}

/**
 * The line-up by slicing, by resistance to rolling and by resistance to chipping, each from best to worst. Chipping
 * holds only knives whose toughness is known, and is null where the baseline's is not.
 */
export function rankings(lineUp: LineUp): {
  slicing: Ranked[];
  rolling: Ranked[];
  chipping: Ranked[] | null;
} {
  const { rows } = compare(lineUp);
  const sorted = (values: Ranked[]) => values.sort((a, b) => b.value - a.value);
  const chipping = rows.flatMap(({ knife, sideLoad }) =>
    sideLoad.chipping === null ? [] : [{ knife, value: sideLoad.chipping }],
  );
  return {
    slicing: sorted(rows.map(({ knife, product }) => ({ knife, value: product }))),
    rolling: sorted(rows.map(({ knife, sideLoad }) => ({ knife, value: sideLoad.rolling }))),
    chipping: chipping.length > 0 ? sorted(chipping) : null,
  };
}
