import { carbideCardMm, carbideKinds, cardLineMm, regression } from '../steel/carbide.ts';
import { refuse } from '../check.ts';
import { finishUm } from '../finish/finish.ts';
import {
  edgeAngle,
  effectiveFriction,
  frictionAngleDeg,
  grindHalfAngleDeg,
  wedgeResistance,
} from '../geometry/geometry.ts';
import { vickersFromRockwellC } from '../steel/hardness.ts';
import { contactDepthMmOf, exactGrind, nominal, parameters, rangeOf } from '../quantities.ts';
import type { CarbideKind, Family, Knife, Comparison, Quantity, TermId } from '../types.ts';

/** What a term reads of the whole comparison: its parameters' middle values and ranges, and what reaches where. */
export interface Work {
  friction: number;
  frictionRange: Range;
  slicePush: number;
  contactDepthMm: number;
  angleExponent: number;
  angleExponentRange: Range;
  thicknessExponent: number;
  thicknessExponentRange: Range;
  finishExponent: number;
  finishExponentRange: Range;
  hardnessExponent: number;
  hardnessExponentRange: Range;
  residualCv: number;
  /** Why the published regression does not cover this comparison, or null where it does. */
  regressionRefused: string | null;
}

interface Range {
  low: number;
  high: number;
}

/** A knife with every quantity at its middle: what the terms compute with. */
export interface Point {
  name: string;
  angleDeg: number;
  /** The angle at the very apex: the microbevel's where there is one. */
  apexAngleDeg: number;
  edgeMm: number;
  finishUm: number;
  grindHalfAngleDeg: number;
  hrc: number;
  vickers: number;
  carbides: Partial<Record<CarbideKind, number>>;
  /** What its carbide adds in the published regression, mm of card. */
  carbideMm: number;
  carbideVolPercent: number;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

export const nameOf = ({ name, id }: Knife): string => name ?? id;

export function pointOf(knife: Knife, contactDepthMm: number): Point {
  const angleDeg = edgeAngle('edge angle', nominal(knife.angleDeg));
  const carbides = Object.fromEntries(
    Object.entries(knife.carbideVolPercent).map(([kind, volume]) => [kind, nominal(volume)]),
  ) as Partial<Record<CarbideKind, number>>;
  const edgeMm = nominal(knife.edgeMm);
  const hrc = nominal(knife.hrc);
  return {
    name: nameOf(knife),
    angleDeg,
    apexAngleDeg:
      knife.microbevelAngleDeg === undefined
        ? angleDeg
        : edgeAngle('microbevel angle', nominal(knife.microbevelAngleDeg)),
    edgeMm,
    finishUm: finishUm(knife.finish),
    grindHalfAngleDeg: grindHalfAngleDeg({ ...exactGrind(knife.grind), edgeMm, contactDepthMm }),
    hrc,
    vickers: vickersFromRockwellC(hrc),
    carbides,
    carbideMm: carbideCardMm(carbides),
    carbideVolPercent: Object.values(carbides).reduce((sum, volume) => sum + volume, 0),
  };
}

const parameter = (
  value: Quantity | undefined,
  id: keyof typeof parameters,
): { middle: number; range: Range } => {
  const { default: middle, low, high, accepts } = parameters[id];
  if (value !== undefined) {
    const ends = rangeOf(value);
    return {
      middle: nominal(value),
      range: { low: Math.max(accepts.low, ends.low), high: Math.min(accepts.high, ends.high) },
    };
  }
  return { middle, range: { low, high } };
};

export function workOf(comparison: Comparison, points: readonly Point[]): Work {
  const friction = parameter(comparison.friction, 'friction');
  const angle = parameter(comparison.assumptions?.angleExponent, 'angleExponent');
  const thickness = parameter(comparison.assumptions?.thicknessExponent, 'thicknessExponent');
  const finish = parameter(comparison.assumptions?.finishExponent, 'finishExponent');
  const hardness = parameter(comparison.assumptions?.hardnessExponent, 'hardnessExponent');
  const residual = parameter(comparison.assumptions?.residualCv, 'residualCv');
  return {
    friction: friction.middle,
    frictionRange: friction.range,
    slicePush: comparison.slicePush ?? 0,
    contactDepthMm: contactDepthMmOf(comparison),
    angleExponent: angle.middle,
    angleExponentRange: angle.range,
    thicknessExponent: thickness.middle,
    thicknessExponentRange: thickness.range,
    finishExponent: finish.middle,
    finishExponentRange: finish.range,
    hardnessExponent: hardness.middle,
    hardnessExponentRange: hardness.range,
    residualCv: residual.middle,
    regressionRefused: regressionRefusal(points),
  };
}

/**
 * Decided once for the whole comparison, so that the ratios within it stay consistent: the regression covers every
 * pair of its knives, hardness and carbide exchanged too, or of none.
 */
function regressionRefusal(points: readonly Point[]): string | null {
  const { low, high } = regression.hrc;
  const softest = lowest(points, 'hrc').hrc;
  const hardest = Math.max(...points.map(({ hrc }) => hrc));
  const least = cardLineMm(softest, 30, lowest(points, 'carbideMm').carbideMm);
  if (softest >= low && hardest <= high && least >= regression.leastMm) return null;

  // Sorted, so that the reason given does not depend on the order of the knives.
  const byName = points.toSorted((a, b) => (a.name < b.name ? -1 : 1));
  const outside = byName.find(({ hrc }) => hrc < low || hrc > high);
  if (outside)
    return `${outside.name} has ${outside.hrc} HRC, and the published regression is used for ${low}–${high} HRC`;
  return `the hardness of ${lowest(byName, 'hrc').name} with the carbide of ${lowest(byName, 'carbideMm').name} would cut ${least.toFixed(0)} mm of card, below the ${regression.leastMm} mm the published regression is used from`;
}

/** The first of the knives with the least of a value. */
const lowest = (points: readonly Point[], value: 'hrc' | 'carbideMm'): Point =>
  points.reduce((least, point) => (point[value] < least[value] ? point : least));

/** The regression at 30° included with the hardness of one knife and the carbide of another. */
const cardMm = (hardness: Point, carbide: Point): number => cardLineMm(hardness.hrc, 30, carbide.carbideMm);

export interface Valued {
  factor: number | null;
  low: number | null;
  high: number | null;
  status: string;
}

type TermOf = (a: Point, b: Point, work: Work) => Valued;

/** A factor and what it becomes at the ends of its own parameter's range. */
function ranged(
  at: (parameter: number) => number,
  middle: number,
  { low, high }: Range,
  status: string,
): Valued {
  const ends = [at(low), at(high)];
  const factor = at(middle);
  return { factor, low: Math.min(factor, ...ends), high: Math.max(factor, ...ends), status };
}

const single = (factor: number, status: string): Valued => ({ factor, low: factor, high: factor, status });

const wedgeAt = (angleDeg: number, friction: number, slicePush: number): number =>
  wedgeResistance(angleDeg, effectiveFriction({ friction, slicePush, angleDeg }));

/** Friction no nearer to none than this is looked at where a primary grind is no wedge of its own (assumed). */
const slightestFriction = 0.01;

/** Whether the primary grind of either knife is no wedge: without friction it would meet no resistance at all. */
const noWedge = (a: Point, b: Point): boolean => a.grindHalfAngleDeg === 0 || b.grindHalfAngleDeg === 0;

/** The grind as a wedge; refused where nothing resists, for then a ratio of two resistances has no value. */
function grindAt({ name, grindHalfAngleDeg: angleDeg }: Point, friction: number, slicePush: number): number {
  if (angleDeg === 0 && friction === 0)
    refuse(
      `friction 0 is not above 0, as the primary grind of ${name} needs it: within the depth of contact that grind gets no thicker than its shoulder, so that only friction resists there`,
    );
  return wedgeAt(angleDeg, friction, slicePush);
}

/**
 * The exponent of the apex factor, chosen so that wedge and apex together have the local exponent E at 15°:
 * e = (E − w)/(θ/tan θ), w = 2θ/sin 2(θ + φ), θ = 15°. It is not held above 0: an E below the wedge's own exponent means
 * that the apex takes some of the wedge's worth back, and over E's stated range a lower angle still cuts longer in all.
 *
 * @param totalExponent E
 * @param friction µ₀, 0–2
 * @param slicePush ξ, 0 or more
 * @source thomas-2018-card
 * @example apexExponent(1.3, 0.25, 0) // → 0.69912
 */
export function apexExponent(totalExponent: number, friction: number, slicePush: number): number {
  const theta = radians(15);
  const phi = radians(frictionAngleDeg(effectiveFriction({ friction, slicePush, angleDeg: 15 })));
  const wedge = (2 * theta) / Math.sin(2 * (theta + phi));
  return (totalExponent - wedge) / (theta / Math.tan(theta));
}

/** The residual of the regression, one coefficient of variation to either side; none where the two steels are one. */
const withResidual = (factor: number, residualCv: number, same: boolean): Valued => {
  const spread = same ? 1 : 1 + residualCv;
  return {
    factor,
    low: factor / spread,
    high: factor * spread,
    status: 'published regression, halves exchanged',
  };
};

/** The mean, in the logarithm, of exchanging one property first and second: no order is preferred. */
const exchanged = (first: number, second: number): number =>
  Math.exp((Math.log(first) + Math.log(second)) / 2);

/** A grind flatter than this counts as this in the quick sum, degrees. */
const flattestDeg = 0.5;

/** Whether two knives hold the same carbide, kind by kind. */
const sameCarbides = (a: Point, b: Point): boolean =>
  carbideKinds.every((kind) => (a.carbides[kind] ?? 0) === (b.carbides[kind] ?? 0));

const leftOut = (status: string): Valued => ({ factor: null, low: null, high: null, status });

/**
 * The seven terms, each a written function by reading. To add a factor, add an entry here and its id to `TermId`.
 *
 * Hardness and carbide share the regression, which adds them, so each takes the mean of being exchanged first and second.
 * Their product is T(Ha,Ca)/T(Hb,Cb) and consistent through any third knife; each alone is so only nearly.
 *
 * The pocket grind is continuous, (αb/αa)^(log₂ 1.1): each halving of the grind's wedge half angle counts a tenth.
 * A step ("a tenth if clearly slimmer") could not satisfy a/b · b/c = a/c. Below 0.5° it counts as 0.5°, so that a grind
 * with parallel faces still has a ratio.
 */
export const terms: readonly { id: TermId; family: Family; quick: TermOf; careful: TermOf }[] = [
  {
    id: 'wedge',
    family: 'geometry',
    quick: (a, b) => single(b.angleDeg / a.angleDeg, 'angle against angle'),
    careful: (a, b, { friction, frictionRange, slicePush }) =>
      ranged(
        (µ) => wedgeAt(b.angleDeg, µ, slicePush) / wedgeAt(a.angleDeg, µ, slicePush),
        friction,
        frictionRange,
        'derived; equal spread force and friction assumed',
      ),
  },
  {
    id: 'apex',
    family: 'geometry',
    quick: (a, b) => single(b.apexAngleDeg / a.apexAngleDeg, 'angle against angle'),
    careful: (a, b, { angleExponent, angleExponentRange, friction, slicePush }) =>
      ranged(
        (total) =>
          (Math.sin(radians(b.apexAngleDeg)) / Math.sin(radians(a.apexAngleDeg))) **
          apexExponent(total, friction, slicePush),
        angleExponent,
        angleExponentRange,
        'calibrated on the published regression',
      ),
  },
  {
    id: 'thickness',
    family: 'geometry',
    quick: (a, b) => single(b.edgeMm / a.edgeMm, 'thickness against thickness'),
    careful: (a, b, { thicknessExponent, thicknessExponentRange }) =>
      ranged(
        (e) => (b.edgeMm / a.edgeMm) ** e,
        thicknessExponent,
        thicknessExponentRange,
        'exponent assumed',
      ),
  },
  {
    id: 'grind',
    family: 'geometry',
    quick: (a, b) =>
      single(
        (Math.max(b.grindHalfAngleDeg, flattestDeg) / Math.max(a.grindHalfAngleDeg, flattestDeg)) **
          Math.log2(1.1),
        'a tenth for each halving; common practice, no source',
      ),
    careful: (a, b, { friction, frictionRange, slicePush }) =>
      ranged(
        (µ) => grindAt(b, µ, slicePush) / grindAt(a, µ, slicePush),
        friction,
        noWedge(a, b)
          ? { ...frictionRange, low: Math.max(slightestFriction, frictionRange.low) }
          : frictionRange,
        'derived; contact depth and friction assumed',
      ),
  },
  {
    id: 'finish',
    family: 'finish',
    quick: (a, b) => single(a.finishUm / b.finishUm, 'grain size against grain size; slicing only'),
    careful: (a, b, { finishExponent, finishExponentRange }) =>
      ranged(
        (e) => (a.finishUm / b.finishUm) ** e,
        finishExponent,
        finishExponentRange,
        'exponent assumed; slicing only',
      ),
  },
  {
    id: 'hardness',
    family: 'steel',
    quick: (a, b) => single((a.hrc / b.hrc) ** 2, 'hardness squared'),
    careful: (a, b, { regressionRefused, residualCv, hardnessExponent, hardnessExponentRange }) =>
      regressionRefused === null
        ? withResidual(
            exchanged(cardMm(a, a) / cardMm(b, a), cardMm(a, b) / cardMm(b, b)),
            residualCv,
            a.hrc === b.hrc,
          )
        : ranged(
            (e) => (a.vickers / b.vickers) ** e,
            hardnessExponent,
            hardnessExponentRange,
            'exponent on HV assumed: outside the published regression',
          ),
  },
  {
    id: 'carbide',
    family: 'steel',
    quick: (a, b) =>
      single(
        2 ** ((a.carbideVolPercent - b.carbideVolPercent) / 20),
        'twenty volume per cent doubles; assumed',
      ),
    careful: (a, b, { regressionRefused, residualCv }) => {
      // Alike by whatever law: this 1 is known, not taken for want of better.
      if (sameCarbides(a, b)) return single(1, 'the same carbide in both');
      return regressionRefused === null
        ? withResidual(
            exchanged(cardMm(a, a) / cardMm(a, b), cardMm(b, a) / cardMm(b, b)),
            residualCv,
            a.carbideMm === b.carbideMm,
          )
        : leftOut(`left out: ${regressionRefused}`);
    },
  },
];
