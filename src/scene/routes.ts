import {
  apexExponent,
  apexFactors,
  effectiveFriction,
  frictionAngleDeg,
  nominal,
  parameters,
  wedgeFactorRange,
  wedgeResistance,
} from '../model/index.ts';
import type { Knife } from '../model/index.ts';
import { memoizeByScene } from './guessed.ts';
import type { Scene } from './scene.ts';

/** What one edge angle of the subject is worth against the baseline, by each route and by both. */
export interface Routes {
  /** Edge angle of the subject, degrees per side. */
  angleDeg: number;
  wedge: number;
  /** The apex by tooth depth, in full. */
  tooth: number;
  /** The apex by steel to wear away, in full. */
  wear: number;
  /** The apex as the careful estimate takes it: tooth depth, damped by its exponent. */
  apex: number;
  /** Wedge and tooth depth, both in full. */
  full: number;
  /** Wedge and damped apex: what the careful estimate makes of the angle. */
  careful: number;
}

/** Friction, speed ratio and exponent at the middle of what the comparison gives. */
const workOf = memoizeByScene(
  ({ entry, comparison }: Scene): { friction: number; slicePush: number; total: number } => ({
    friction: nominal(entry.friction),
    slicePush: entry.slicePush,
    total: nominal(comparison.assumptions?.angleExponent ?? parameters.angleExponent.default),
  }),
);

/** What is left of the friction coefficient for the push of a wedge of this angle. */
export function frictionLeft(scene: Scene, angleDeg: number): number {
  const { friction, slicePush } = workOf(scene);
  return effectiveFriction({ friction, slicePush, angleDeg });
}

/** The angle friction adds to an edge angle, degrees. */
export const frictionAngleAt = (scene: Scene, angleDeg: number): number =>
  frictionAngleDeg(frictionLeft(scene, angleDeg));

/** The angle at the apex: the microbevel's, unless the bevel itself is as steep. */
const apexAngleDeg = ({ microbevelAngleDeg }: Knife, angleDeg: number): number =>
  microbevelAngleDeg === undefined ? angleDeg : Math.max(angleDeg, nominal(microbevelAngleDeg));

/** Edge angle and angle at the apex of subject and baseline, degrees per side, at the middle of their ranges. */
export const anglesOf = memoizeByScene(
  ({
    subjectKnife,
    baselineKnife,
  }: Scene): Record<'subject' | 'baseline', { bevel: number; apex: number }> => {
    const of = (knife: Knife) => {
      const bevel = nominal(knife.angleDeg);
      return { bevel, apex: apexAngleDeg(knife, bevel) };
    };
    return { subject: of(subjectKnife), baseline: of(baselineKnife) };
  },
);

/** Whether a wedge of this angle can be driven against the comparison's friction. */
export const drivable = (scene: Scene, angleDeg: number): boolean =>
  angleDeg + frictionAngleAt(scene, angleDeg) < 90;

/**
 * The routes of the subject's edge angle if it were so many degrees, all else as it is.
 *
 * @throws RangeError as the model does, outside 4–45° or where such a wedge cannot be driven
 */
export function routesAt(scene: Scene, angleDeg: number): Routes {
  const { baseline } = anglesOf(scene);
  const push = (degrees: number) => wedgeResistance(degrees, frictionLeft(scene, degrees));
  const wedge = push(baseline.bevel) / push(angleDeg);
  const { tooth, wear } = apexFactors({
    angleDeg: apexAngleDeg(scene.subjectKnife, angleDeg),
    baselineAngleDeg: baseline.apex,
  });
  const apex = tooth ** exponentsOf(scene).apex;
  return { angleDeg, wedge, tooth, wear, apex, full: wedge * tooth, careful: wedge * apex };
}

/** The routes of the subject's edge angle as it is. */
export const routesOf = memoizeByScene((scene: Scene): Routes =>
  routesAt(scene, anglesOf(scene).subject.bevel),
);

/** The friction and the speed ratio at which the angle's exponent is read; see `apexExponent`. */
export const exponentReadAt = { friction: parameters.friction.default, slicePush: 3 } as const;

/**
 * The exponents at 15° per side, at the friction and draw they are read at: `total` is the angle's own, `wedge` that of
 * the wedge, `tooth` that of the tooth depth in full, and `apex` the power the tooth depth is raised to, so that
 * wedge + apex × tooth = total. Another friction or draw changes the wedge and leaves that power as it is.
 */
export const exponentsOf = memoizeByScene(
  (scene: Scene): Record<'total' | 'wedge' | 'tooth' | 'apex', number> => {
    const { total } = workOf(scene);
    const theta = Math.PI / 12;
    const tooth = theta / Math.tan(theta);
    return {
      total,
      tooth,
      apex: apexExponent(total),
      wedge: total - tooth * apexExponent(total),
    };
  },
);

/** The wedge where the spread force is not equal: on an elastic bed at equal depth, and with the bevel buried. */
export function wedgeSpan(scene: Scene): { elasticBed: number; buriedBevel: number } {
  const { subject, baseline } = anglesOf(scene);
  const { wedge } = routesOf(scene);
  // The friction is that of each angle; what the forms differ by does not depend on it.
  const { elasticBed, equalSpread, buriedBevel } = wedgeFactorRange({
    angleDeg: subject.bevel,
    baselineAngleDeg: baseline.bevel,
    friction: 0,
  });
  return {
    elasticBed: (wedge * elasticBed) / equalSpread,
    buriedBevel: (wedge * buriedBevel) / equalSpread,
  };
}
