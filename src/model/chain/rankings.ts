import { compare } from './compare.ts';
import type { Comparison, Reading } from '../types.ts';

export interface Ranked {
  knife: string;
  /** Times the baseline. */
  value: number;
}

export interface Rankings {
  slicing: Ranked[];
  rolling: Ranked[];
  chipping: Ranked[] | null;
  /** Why chipping is null or leaves a knife out; null where every knife stands in it. */
  chippingReason: string | null;
}

/**
 * The comparison by slicing, by resistance to rolling and by resistance to chipping, each from best to worst and relative
 * to the baseline. Chipping holds only knives whose toughness is known, and is null where the baseline's is not or
 * there is no other to hold against it.
 *
 * @param options.reading of the slicing ranking; `close` is the default
 * @throws RangeError for what `compare` refuses
 */
export function rankings(comparison: Comparison, options?: { reading: Reading }): Rankings {
  const { rows } = compare(comparison, options);
  const by = (value: (row: (typeof rows)[number]) => number | null): Ranked[] =>
    rows
      .flatMap((row) => {
        const ranked = value(row);
        return ranked === null ? [] : [{ knife: row.knife, value: ranked }];
      })
      .sort((a, b) => b.value - a.value);
  const chipping = by((row) => row.sideLoad.chipping);
  const missing = comparison.knives.filter(({ toughness }) => toughness === undefined);
  return {
    slicing: by((row) => row.product),
    rolling: by((row) => row.sideLoad.rolling),
    chipping: chipping.length > 1 ? chipping : null,
    chippingReason:
      missing.length === 0
        ? null
        : `Resistance to chipping needs a toughness, and that of ${missing.map(({ name, id }) => name ?? id).join(', ')} is not given.`,
  };
}
