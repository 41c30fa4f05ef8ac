import { percent, plain, readsAsOne } from '../scene/show.ts';

/** Nearer to 1 than this, two figures of a ratio would hide the difference. */
const near = 0.095;

/**
 * How long a knife cuts beside another, to stand behind “cuts”: a ratio in two figures, or the difference in per cent
 * where it is small.
 *
 * @example asLongAs(1.64, 'Plover') // → '1.6 times as long as Plover'
 * @example asLongAs(1.02, 'Plover') // → '2% more than Plover'
 * @example asLongAs(1, 'Plover') // → 'as long as Plover'
 */
export function asLongAs(ratio: number, other: string): string {
  if (readsAsOne(ratio)) return `as long as ${other}`;
  const share = Math.abs(ratio - 1);
  return share < near
    ? `${percent(share, share < 0.0095 ? 1 : 0)} ${ratio > 1 ? 'more' : 'less'} than ${other}`
    : `${plain(ratio, 2)} times as long as ${other}`;
}
