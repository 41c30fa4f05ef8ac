import { percent, readsAsOne, short } from '../scene/show.ts';

/** Nearer to 1 than this, two figures of a ratio would hide the difference. */
const near = 0.095;

/** How long a knife cuts beside another, and the word that leads to the other. */
function amount(ratio: number): [said: string, than: string] {
  if (readsAsOne(ratio)) return ['as long', 'as'];
  const share = Math.abs(ratio - 1);
  return share < near
    ? [`${percent(share, share < 0.0095 ? 1 : 0)} ${ratio > 1 ? 'more' : 'less'}`, 'than']
    : [`${short(ratio, 2)} times as long`, 'as'];
}

/**
 * How long a knife cuts: a ratio in two figures, or the difference in per cent where it is small.
 *
 * @example howLong(1.64) // → '1.6 times as long'
 * @example howLong(0.98) // → '2% less'
 */
export const howLong = (ratio: number): string => amount(ratio)[0];

/**
 * The same beside another knife, to stand behind “cuts”.
 *
 * @example asLongAs(1.64, 'Plover') // → '1.6 times as long as Plover'
 * @example asLongAs(1.02, 'Plover') // → '2% more than Plover'
 * @example asLongAs(1, 'Plover') // → 'as long as Plover'
 */
export const asLongAs = (ratio: number, other: string): string => [...amount(ratio), other].join(' ');
