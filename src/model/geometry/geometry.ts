import { positive, refuse, within } from '../check.ts';
import type { ExactGrind } from '../types.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (radian: number): number => (radian * 180) / Math.PI;

/** Edge angles per side the model takes, degrees. Below 4° the bevel itself breaks away (common practice, no source). */
export const edgeAngleRange = { low: 4, high: 45 } as const;

export const edgeAngle = (name: string, angleDeg: number): number => {
  if (!Number.isFinite(angleDeg) || angleDeg < edgeAngleRange.low || angleDeg > edgeAngleRange.high)
    refuse(`${name} ${String(angleDeg)}° is not between 4° and 45° per side`);
  return angleDeg;
};

/**
 * The edge angle per side from the thickness behind a bevel and the bevel's slant width, or its height along the
 * centre plane: t = 2 w sin θ = 2 h tan θ.
 *
 * @param m thickness and slant width or height, all in mm, above 0
 * @returns degrees per side
 * @throws RangeError where a length is not above 0, or the bevel is thicker than twice its slant width
 * @example edgeAngleDeg({ thicknessMm: 0.5, slantWidthMm: 1.2 }) // → 12.0247
 */
export function edgeAngleDeg(
  m: { thicknessMm: number; slantWidthMm: number } | { thicknessMm: number; heightMm: number },
): number {
  const thicknessMm = positive('bevel thickness', m.thicknessMm, ' mm');
  if ('heightMm' in m)
    return degrees(Math.atan(thicknessMm / (2 * positive('bevel height', m.heightMm, ' mm'))));
  const slantWidthMm = positive('bevel width', m.slantWidthMm, ' mm');
  if (thicknessMm >= 2 * slantWidthMm) {
    refuse(`bevel thickness ${thicknessMm} mm is not below twice the bevel width ${slantWidthMm} mm`);
  }
  return degrees(Math.asin(thicknessMm / (2 * slantWidthMm)));
}

/**
 * The friction angle φ = arctan µ, degrees.
 *
 * @throws RangeError outside 0–2
 * @example frictionAngleDeg(0.25) // → 14.0362
 */
export const frictionAngleDeg = (friction: number): number =>
  degrees(Math.atan(within('friction', friction, 0, 2)));

/**
 * Friction that is left for the push while slicing: friction opposes the resultant velocity, so with ξ the
 * slice/push speed ratio it is µ₀/√(1 + ξ² cos² θ).
 *
 * @param p.slicePush ξ, 0 or more; 0 is a plain push
 * @throws RangeError where ξ is negative or not finite, or friction or angle outside their range
 * @example effectiveFriction({ friction: 0.25, slicePush: 0, angleDeg: 20 }) // → 0.25
 */
export function effectiveFriction(p: { friction: number; slicePush: number; angleDeg: number }): number {
  const friction = within('friction', p.friction, 0, 2);
  const slicePush = within('slice/push ratio', p.slicePush, 0, 1e6);
  return friction / Math.hypot(1, slicePush * Math.cos(radians(within('angle', p.angleDeg, 0, 90, '°'))));
}

/**
 * What is left of the push force of a frictionless cut at slice/push ratio ξ: 1/(1 + ξ²).
 *
 * @throws RangeError where ξ is negative or not finite
 * @source atkins-2004-slice
 * @example pushForceShare(2) // → 0.2
 */
export function pushForceShare(slicePush: number): number {
  const xi = within('slice/push ratio', slicePush, 0, 1e6);
  return 1 / (1 + xi * xi);
}

/**
 * tan(θ + φ): the push a wedge of half angle θ needs for a set spread force, halved.
 *
 * @throws RangeError where θ + φ reaches 90°: such a wedge cannot be driven
 * @example wedgeResistance(45, 0) // → 1
 */
export function wedgeResistance(angleDeg: number, friction: number): number {
  const sum = angleDeg + frictionAngleDeg(friction);
  if (sum >= 90)
    refuse(
      `edge angle ${angleDeg}° and friction ${friction} make a wedge that cannot be driven: angle and friction angle together must stay below 90°`,
    );
  return Math.tan(radians(sum));
}

/**
 * How many times as long a cuts as the baseline by its wedge alone: tan(θb + φ)/tan(θa + φ), from the statics of a
 * wedge with friction at equal spread force (that the spread force is equal is assumed).
 *
 * @param p.angleDeg per side, 4–45
 * @param p.friction coefficient µ as it acts, 0–2
 * @throws RangeError outside these ranges, or where angle and friction angle reach 90° together
 * @example wedgeFactor({ angleDeg: 10, baselineAngleDeg: 20, friction: 0 }) // → 2.06418
 */
export function wedgeFactor(p: { angleDeg: number; baselineAngleDeg: number; friction: number }): number {
  const angleDeg = edgeAngle('edge angle', p.angleDeg);
  const baselineAngleDeg = edgeAngle('baseline edge angle', p.baselineAngleDeg);
  return wedgeResistance(baselineAngleDeg, p.friction) / wedgeResistance(angleDeg, p.friction);
}

/**
 * The assumption of equal spread force, varied: on an elastic bed at equal depth F ∝ tan θ·tan(θ + φ); on a bevel
 * buried to equal thickness F ∝ tan(θ + φ)/tan θ. Factors for a against the baseline.
 *
 * @throws RangeError as `wedgeFactor`
 * @example wedgeFactorRange({ angleDeg: 10, baselineAngleDeg: 20, friction: 0.25 }).elasticBed // → 3.126
 */
export function wedgeFactorRange(p: { angleDeg: number; baselineAngleDeg: number; friction: number }): {
  elasticBed: number;
  equalSpread: number;
  buriedBevel: number;
} {
  const equalSpread = wedgeFactor(p);
  const tans = Math.tan(radians(p.baselineAngleDeg)) / Math.tan(radians(p.angleDeg));
  return { elasticBed: equalSpread * tans, equalSpread, buriedBevel: equalSpread / tans };
}

/** A primary grind flatter than this counts as this, degrees (assumed): with none at all a ratio would have no value. */
export const flattestGrindDeg = 0.5;

/** The radius of a curved face, refused where there is none. */
function radiusOf({ form, radiusMm, heightMm }: ExactGrind): number {
  if (radiusMm === undefined)
    return refuse(
      `grind radius is not given: a ${form} grind needs one of at least half its height, ${heightMm / 2} mm`,
    );
  return positive('grind radius', radiusMm, ' mm');
}

/**
 * What one flank of a curved primary grind lies inside its chord, mm: hollow above 0, convex below, flat 0.
 * The face is a circle through both ends of the chord.
 *
 * @param atMm distance above the shoulder, mm, 0 to the grind's height
 * @throws RangeError for a curved grind without a radius above 0
 * @example flankSagMm({ form: 'hollow', spineMm: 3, heightMm: 25, radiusMm: 127 }, 12.5) // → 0.6167
 */
export function flankSagMm(g: ExactGrind, atMm: number): number {
  if (g.form === 'flat') return 0;
  const half = g.heightMm / 2;
  const radiusMm = radiusOf(g);
  const sag =
    Math.sqrt(radiusMm * radiusMm - (atMm - half) ** 2) - Math.sqrt(radiusMm * radiusMm - half * half);
  return g.form === 'hollow' ? sag : -sag;
}

type Section = ExactGrind & { edgeMm: number };

/** Where the thickness of a curved section has its turning point, mm above the shoulder. */
function turningPointMm(g: Section): number {
  const slope = (g.spineMm - g.edgeMm) / g.heightMm;
  const offset = (slope * radiusOf(g)) / Math.sqrt(4 + slope * slope);
  return g.heightMm / 2 + (g.form === 'hollow' ? -offset : offset);
}

/**
 * Refuses a section that cannot be: edge thicker than the spine, a radius below half the height, ground through.
 *
 * @returns the least thickness of the primary grind, mm; below that at the shoulder where the section has a waist
 * @example checkSection({ form: 'flat', spineMm: 3, heightMm: 10, edgeMm: 0.5 }) // → 0.5
 */
export function checkSection(g: Section): number {
  positive('thickness behind the edge', g.edgeMm, ' mm');
  positive('spine thickness', g.spineMm, ' mm');
  positive('grind height', g.heightMm, ' mm');
  if (!['flat', 'hollow', 'convex'].includes(g.form))
    refuse(`grind form ${String(g.form)} is not one of flat, hollow, convex`);
  if (g.edgeMm > g.spineMm)
    refuse(`thickness behind the edge ${g.edgeMm} mm is not at most the spine thickness ${g.spineMm} mm`);
  if (g.form === 'flat') return g.edgeMm;
  const radiusMm = radiusOf(g);
  if (radiusMm < g.heightMm / 2)
    refuse(`grind radius ${radiusMm} mm is not at least half the grind height, ${g.heightMm / 2} mm`);
  const atMm = Math.min(g.heightMm, Math.max(0, turningPointMm(g)));
  // A convex face is nowhere thinner than at its shoulder.
  const least = Math.min(g.edgeMm, thickness(g, atMm));
  if (least <= 0)
    refuse(
      `grind radius ${radiusMm} mm with height ${g.heightMm} mm grinds the blade through: at ${atMm.toFixed(1)} mm above the shoulder the thickness would be ${least.toFixed(2)} mm`,
    );
  return least;
}

const thickness = (g: Section, atMm: number): number =>
  atMm >= g.heightMm
    ? g.spineMm
    : g.edgeMm + ((g.spineMm - g.edgeMm) * atMm) / g.heightMm - 2 * flankSagMm(g, atMm);

/**
 * Thickness of the primary grind at a distance above the shoulder; above the grind the full thickness.
 * Hollow and convex faces are exact circles on the chord, normal to the centre plane.
 *
 * @param g grind with the thickness at its shoulder, mm
 * @param atMm distance above the shoulder, mm, 0 or more
 * @throws RangeError where the section cannot be, or the distance is negative
 * @example grindThicknessMm({ form: 'flat', spineMm: 3, heightMm: 10, edgeMm: 0.5 }, 4) // → 1.5
 */
export function grindThicknessMm(g: ExactGrind & { edgeMm: number }, atMm: number): number {
  checkSection(g);
  return thickness(g, within('distance above the shoulder', atMm, 0, 1e4, ' mm'));
}

/**
 * The wedge half angle of the primary grind over the contact depth D: arctan((max t over 0…D − t at the shoulder)/(2 D)).
 *
 * @param g grind, thickness at its shoulder and contact depth, mm
 * @returns degrees, 0 where nothing within the depth is thicker than the shoulder
 * @throws RangeError where the section cannot be or the depth is not above 0
 * @example grindHalfAngleDeg({ form: 'flat', spineMm: 3, heightMm: 10, edgeMm: 0.5, contactDepthMm: 8 }) // → 7.12502
 */
export function grindHalfAngleDeg(g: ExactGrind & { edgeMm: number; contactDepthMm: number }): number {
  checkSection(g);
  const depthMm = positive('contact depth', g.contactDepthMm, ' mm');
  const fullestMm = g.form === 'convex' ? Math.min(depthMm, turningPointMm(g)) : depthMm;
  const thickest = Math.max(g.edgeMm, thickness(g, fullestMm));
  return degrees(Math.atan((thickest - g.edgeMm) / (2 * depthMm)));
}
