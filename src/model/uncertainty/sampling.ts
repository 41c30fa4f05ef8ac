/** How an uncertain value scatters, and the values drawn from it. */

import { normalScore } from '../statistics/normal-score.ts';
import type { Quantity } from '../types.ts';

type Shape = 'uniform' | 'triangular' | 'normal';

export interface Limits {
  low: number;
  high: number;
}

/** How one value scatters; `middle` is the most likely one of a triangle and the centre of the other shapes. */
export interface Spread extends Limits {
  shape: Shape;
  middle: number;
  /** What the model accepts; a draw outside is repeated. */
  allowed: Limits;
}

/** The 97.5% point of a normal distribution: a ± of that shape is its 95% half width (JCGM 100, 4.3.4). */
export const NORMAL_95 = 1.959964;

/** The spread of a quantity; a bare ± takes the `usual` shape, an unknown is uniform over its stated range. */
export function spreadOf(quantity: Quantity, allowed: Limits, usual: Shape = 'uniform'): Spread {
  if (typeof quantity === 'number') {
    return { shape: 'uniform', low: quantity, middle: quantity, high: quantity, allowed };
  }
  if ('unknown' in quantity) {
    const { low, high } = quantity;
    return { shape: 'uniform', low, middle: (low + high) / 2, high, allowed };
  }
  const { value, plusMinus, shape = usual } = quantity;
  return { shape, low: value - plusMinus, middle: value, high: value + plusMinus, allowed };
}

function triangularAt(low: number, middle: number, high: number, u: number): number {
  return u * (high - low) < middle - low
    ? low + Math.sqrt(u * (high - low) * (middle - low))
    : high - Math.sqrt((1 - u) * (high - low) * (high - middle));
}

/**
 * The value of a spread below which a share u of it lies: drawn evenly between 0 and 1, u gives draws of it. It rises
 * with u whatever the shape, so the order of the draws is that of their u.
 *
 * @param u above 0 and below 1
 * @example valueAt({ shape: 'uniform', low: 10, middle: 15, high: 20, allowed: { low: 4, high: 45 } }, 0.25) // → 12.5
 */
export function valueAt(spread: Spread, u: number): number {
  return valuesAt(spread, Float64Array.of(u), new Float64Array(1))[0] ?? Number.NaN;
}

/** The same for many at once, a loop to each shape: one for all would look the shape up once a sample. */
export function valuesAt(spread: Spread, even: Float64Array, out: Float64Array): Float64Array {
  const { shape, low, middle, high } = spread;
  const sd = (high - middle) / NORMAL_95;
  const n = out.length;
  if (shape === 'uniform') for (let i = 0; i < n; i += 1) out[i] = low + (high - low) * (even[i] ?? 0);
  else if (shape === 'normal')
    for (let i = 0; i < n; i += 1) out[i] = middle + sd * normalScore(even[i] ?? 0);
  else for (let i = 0; i < n; i += 1) out[i] = triangularAt(low, middle, high, even[i] ?? 0);
  return out;
}

/** Whether any draw of a spread may lie outside what the model accepts. */
export const mayLeave = ({ shape, low, high, allowed }: Spread): boolean =>
  shape === 'normal'
    ? allowed.low > -Infinity || allowed.high < Infinity
    : low < allowed.low || high > allowed.high;
