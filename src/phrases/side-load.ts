import type { Ends } from '../model/index.ts';
import { plain, readsAsOne, whole } from '../scene/show.ts';

/** Which way a range of ratios points as a whole: `open` where it holds values on both sides of 1. */
export type Side = 'more' | 'less' | 'same' | 'open';

/**
 * Which way a range of ratios points.
 *
 * @example sideOf({ low: 0.36, high: 0.64 }) // → 'less'
 * @example sideOf({ low: 0.9, high: 1.2 }) // → 'open'
 */
export function sideOf({ low, high }: Ends): Side {
  const [atLow, atHigh] = [readsAsOne(low), readsAsOne(high)];
  if (atLow && atHigh) return 'same';
  if (low > 1 || atLow) return 'more';
  return high < 1 || atHigh ? 'less' : 'open';
}

/** Whether two figures would make of one end no difference at all. */
const isNearOne = (ends: Ends): boolean =>
  [ends.low, ends.high].some((end) => !readsAsOne(end) && Number(plain(end, 2)) === 1);

/** Both ends in two figures, or in three where two would hide a difference; once where they agree. */
function shownEnds(ends: Ends): string[] {
  const figures = isNearOne(ends) ? 3 : 2;
  return [...new Set([ends.low, ends.high].map((end) => plain(end, figures)))];
}

/**
 * A range of side loads against another knife, to stand before “the side load of …”.
 *
 * @example sideLoadInWords({ low: 0.357, high: 0.638 }) // → '0.36 to 0.64 of'
 * @example sideLoadInWords({ low: 1.4, high: 2.1 }) // → '1.4 to 2.1 times'
 * @example sideLoadInWords({ low: 1.03, high: 1.06 }) // → '103 to 106% of'
 */
export const sideLoadInWords = (range: Ends): string =>
  isNearOne(range)
    ? `${[...new Set([whole(range.low * 100), whole(range.high * 100)])].join(' to ')}% of`
    : `${shownEnds(range).join(' to ')} ${range.high <= 1 ? 'of' : 'times'}`;

/**
 * The same as a label in a figure.
 *
 * @example sideLoadLabel({ low: 0.357, high: 0.638 }) // → '×0.36–0.64'
 */
export const sideLoadLabel = (range: Ends): string => `×${shownEnds(range).join('–')}`;
