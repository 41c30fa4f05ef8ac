/** How an uncertain value scatters, and draws from it. */

import type { Quantity } from './types.ts';

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

/** The 97.5 % point of a normal distribution: a ± of that shape is its 95 % half width (JCGM 100, 4.3.4). */
const NORMAL_95 = 1.959964;

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

/** One draw, from one uniform number, or two for the normal shape (Box and Muller). */
export function draw({ shape, low, middle, high }: Spread, uniform: () => number): number {
  const u = uniform();
  if (shape === 'uniform') return low + (high - low) * u;
  if (shape === 'normal') {
    const standard = Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * uniform());
    return middle + ((high - middle) / NORMAL_95) * standard;
  }
  const rising = (middle - low) / (high - low);
  return u < rising
    ? low + Math.sqrt(u * (high - low) * (middle - low))
    : high - Math.sqrt((1 - u) * (high - low) * (high - middle));
}
