import { regression } from './carbide.ts';
import { within } from '../check.ts';

/**
 * Local exponent of the angle in the published regression, d ln T/d ln A = A·(−17.8)/T: by what per cent the card changes
 * for one per cent of angle. The regression being additive, it depends on the card as well: a rich steel shows a small one.
 *
 * @param p.cardMm card in 60 cycles at that angle, 100–2000 mm
 * @param p.includedAngleDeg **included**, 20–40°
 * @throws RangeError outside these ranges
 * @source thomas-2018-card
 * @example cardAngleExponent({ cardMm: 835, includedAngleDeg: 30 }) // → -0.640
 */
export function cardAngleExponent(p: { cardMm: number; includedAngleDeg: number }): number {
  const { low, high } = regression.includedAngleDeg;
  const angle = within('included angle', p.includedAngleDeg, low, high, '°');
  return (regression.perIncludedDegree * angle) / within('card', p.cardMm, regression.leastMm, 2000, ' mm');
}
