/** The very edge: what a scratch and wear take from it, and what a regrind takes off its bevel. */

import { positive, refuse, within } from '../check.ts';
import { edgeAngle, effectiveFriction, frictionAngleDeg } from './geometry.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The angle, friction and slice/push ratio at which the exponent of the angle in all is read. */
const reading = { angleDeg: 15, friction: 0.25, slicePush: 3 };

/** d ln tan(θ + φ)/d ln θ there, φ held: what the wedge alone takes of the exponent. */
const wedgeExponent = (() => {
  const theta = radians(reading.angleDeg);
  return (2 * theta) / Math.sin(2 * (theta + radians(frictionAngleDeg(effectiveFriction(reading)))));
})();

/** d ln sin θ/d ln θ there. */
const sineExponent = radians(reading.angleDeg) / Math.tan(radians(reading.angleDeg));

/** The least exponent of the angle in all the model takes: with less, a lower angle would be worth less at the apex. */
export const leastAngleExponent = Math.floor(wedgeExponent * 1e4) / 1e4;

/**
 * The exponent of the apex factor: wedge and apex together have the local exponent E at 15°, at friction 0.25 and
 * slice/push ratio 3. It is fixed there, so that friction and draw change what an angle is worth:
 * e = (E − 0.8262)/0.9770.
 *
 * @param totalExponent E, 0.8262 to 4
 * @throws RangeError outside this range
 * @source thomas-2018-card
 * @example apexExponent(1.3) // → 0.48489
 */
export function apexExponent(totalExponent: number): number {
  return apexExponentAt(within('angle exponent', totalExponent, leastAngleExponent, 4));
}

/** The same without the check, for whole runs of samples. */
export const apexExponentAt = (totalExponent: number): number =>
  Math.max(0, (totalExponent - wedgeExponent) / sineExponent);

/**
 * The second route of the angle, as tooth depth: a scratch of depth d on one bevel sets the apex back d/(2 sin θ),
 * so the factor is sin θb/sin θa. That the depth helps a slice is assumed, and published microscopy disputes it.
 *
 * @param p.angleDeg per side, 4–45
 * @throws RangeError outside this range
 * @example toothFactor({ angleDeg: 10, baselineAngleDeg: 20 }) // → 1.96962
 */
export function toothFactor(p: { angleDeg: number; baselineAngleDeg: number }): number {
  return (
    Math.sin(radians(edgeAngle('baseline edge angle', p.baselineAngleDeg))) /
    Math.sin(radians(edgeAngle('edge angle', p.angleDeg)))
  );
}

/**
 * Both candidate mechanisms of the apex: tooth depth (sin) and steel to wear away to a flat of one width (tan).
 *
 * @throws RangeError outside 4–45°
 * @example apexFactors({ angleDeg: 10, baselineAngleDeg: 20 }).wear // → 2.06418
 */
export function apexFactors(p: { angleDeg: number; baselineAngleDeg: number }): {
  tooth: number;
  wear: number;
} {
  return {
    tooth: toothFactor(p),
    wear: Math.tan(radians(p.baselineAngleDeg)) / Math.tan(radians(p.angleDeg)),
  };
}

/**
 * Steel to wear away until the edge has a flat of width b: b²/(4 tan θ), µm² of cross-section. With wear in proportion
 * to load and distance over hardness, life goes as this area times the hardness.
 *
 * @throws RangeError where the flat is not above 0, or the angle outside 4–45°
 * @source archard-1953-wear
 * @example wearAreaUm2({ flatUm: 10, angleDeg: 15 }) // → 93.3013
 */
export function wearAreaUm2(p: { flatUm: number; angleDeg: number }): number {
  return (
    positive('flat', p.flatUm, ' µm') ** 2 / (4 * Math.tan(radians(edgeAngle('edge angle', p.angleDeg))))
  );
}

/**
 * How far a scratch of depth d on one bevel sets the apex back: d/(2 sin θ); on both bevels twice that.
 *
 * @returns µm
 * @throws RangeError where the depth is not above 0, or the angle outside 4–45°
 * @example toothDepthUm({ scratchUm: 2, angleDeg: 30, bevels: 1 }) // → 2
 */
export function toothDepthUm(p: { scratchUm: number; angleDeg: number; bevels: 1 | 2 }): number {
  return (
    (p.bevels * positive('scratch depth', p.scratchUm, ' µm')) /
    (2 * Math.sin(radians(edgeAngle('edge angle', p.angleDeg))))
  );
}

/**
 * Steel to take off, per mm of edge, when a bevel goes from one angle to a lower one: t²/4·(cot θ₂ − cot θ₁),
 * the flanks above the bevel taken as parallel.
 *
 * @param p.edgeMm thickness behind the edge, mm
 * @returns mm² of cross-section, equal to mm³ per mm of edge
 * @throws RangeError where an angle is outside 4–45°, or the new angle is above the old one
 * @example steelRemovedMm2({ edgeMm: 0.5, fromAngleDeg: 20, toAngleDeg: 10 }) // → 0.182738
 */
export function steelRemovedMm2(p: { edgeMm: number; fromAngleDeg: number; toAngleDeg: number }): number {
  const edgeMm = positive('thickness behind the edge', p.edgeMm, ' mm');
  const from = edgeAngle('angle before', p.fromAngleDeg);
  const to = edgeAngle('angle after', p.toAngleDeg);
  if (to > from)
    refuse(
      `angle after ${to}° is not at most the angle before, ${from}°: a steeper bevel is a microbevel, not a regrind`,
    );
  return ((edgeMm * edgeMm) / 4) * (1 / Math.tan(radians(to)) - 1 / Math.tan(radians(from)));
}
