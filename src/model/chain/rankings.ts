import { compare } from './compare.ts';
import type { Comparison, Ends, Reading } from '../types.ts';

export interface Ranked {
  knife: string;
  /** Times the baseline: of slicing, all factors multiplied at the middle settings; of side load, the middle of the range. */
  value: number;
  /** The range of a side load; both ends the value itself for slicing. */
  low: number;
  high: number;
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
 * there is no other to compare it with.
 *
 * @param options.reading of the slicing ranking; `careful` is the default
 * @throws RangeError for what `compare` refuses
 */
export function rankings(comparison: Comparison, options?: { reading: Reading }): Rankings {
  const { rows } = compare(comparison, options);
  const by = (value: (row: (typeof rows)[number]) => Ends | null): Ranked[] =>
    rows
      .flatMap((row) => {
        const range = value(row);
        return range === null
          ? []
          : [{ knife: row.knife, value: Math.sqrt(range.low * range.high), ...range }];
      })
      .sort((a, b) => b.value - a.value);
  const chipping = by((row) => row.sideLoad.chipping);
  const missing = comparison.knives.filter(({ toughness }) => toughness === undefined);
  return {
    slicing: rows
      .map(({ knife, multiplied }) => ({ knife, value: multiplied, low: multiplied, high: multiplied }))
      .sort((a, b) => b.value - a.value),
    rolling: by((row) => row.sideLoad.rolling),
    chipping: chipping.length > 1 ? chipping : null,
    chippingReason:
      missing.length === 0
        ? null
        : `Resistance to chipping needs a toughness, and that of ${missing.map(({ name, id }) => name ?? id).join(', ')} is not given.`,
  };
}
