import {
  checkSection,
  compare,
  edgeAngleDeg,
  exactGrind,
  flankSagMm,
  flattestGrindDeg,
  grindHalfAngleDeg,
  grindThicknessMm,
  memoizeByObject,
  nominal,
  steelRemovedMm2,
  wedgeResistance,
} from '../../model/index.ts';
import type { ExactGrind, GrindForm, Knife, Row } from '../../model/index.ts';
import { factorOf, ofKnife } from '../../comparison/found.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';
import { frictionLeft } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The measures of a blade just behind its apex, every quantity at its middle. */
export interface Behind {
  name: string;
  angleDeg: number;
  /** Thickness across the shoulder, mm. */
  edgeMm: number;
  /** Width along one bevel, from shoulder to apex, mm. */
  bevelWidthMm: number;
  /** Height of the bevel along the centre plane, mm. */
  bevelHeightMm: number;
  grind: ExactGrind;
  /** Wedge half angle of the primary grind over the contact depth, degrees. */
  grindAngleDeg: number;
}

export const contactDepthOf = ({ entry }: Scene): number => nominal(entry.contactDepthMm);

function measured(knife: Knife, name: string, contactDepthMm: number): Behind {
  const angleDeg = nominal(knife.angleDeg);
  const edgeMm = nominal(knife.edgeMm);
  const grind = exactGrind(knife.grind);
  return {
    name,
    angleDeg,
    edgeMm,
    bevelWidthMm: edgeMm / (2 * Math.sin(radians(angleDeg))),
    bevelHeightMm: edgeMm / (2 * Math.tan(radians(angleDeg))),
    grind,
    grindAngleDeg: grindHalfAngleDeg({ ...grind, edgeMm, contactDepthMm }),
  };
}

/** What lies behind the edges of subject and baseline. */
export function behindOf(scene: Scene): Record<'subject' | 'baseline', Behind> {
  const depth = contactDepthOf(scene);
  return {
    subject: measured(scene.subjectKnife, scene.subject.name, depth),
    baseline: measured(scene.baselineKnife, scene.baseline.name, depth),
  };
}

/** Thickness at a distance above the shoulder, mm; below it, down to the apex, that of the bevel. */
export function thicknessAtMm({ grind, edgeMm, bevelHeightMm }: Behind, aboveMm: number): number {
  if (aboveMm >= 0) return grindThicknessMm({ ...grind, edgeMm }, aboveMm);
  return Math.max(0, edgeMm * (1 + aboveMm / bevelHeightMm));
}

/** What a grind counts as: one that is flatter than the model takes counts as the flattest it takes, degrees. */
export const countedAngleDeg = (grindAngleDeg: number): number => Math.max(grindAngleDeg, flattestGrindDeg);

/** The push of a grind's wedge, against that of another: tan(α + φ), friction as the slice leaves it. */
export function grindPush(scene: Scene, grindAngleDeg: number): number {
  const angleDeg = countedAngleDeg(grindAngleDeg);
  return wedgeResistance(angleDeg, frictionLeft(scene, angleDeg));
}

/** Thickness and grind together, by reading: what everything behind the bevel is worth. */
export function behindFactors({
  row,
}: Scene): Record<'quick' | 'careful', { thickness: number; grind: number; both: number }> {
  const of = (reading: 'quick' | 'careful') => {
    const [thickness, grind] = [factorOf(row[reading], 'thickness'), factorOf(row[reading], 'grind')];
    return { thickness, grind, both: thickness * grind };
  };
  return { quick: of('quick'), careful: of('careful') };
}

/** The subject against the baseline if only what lies behind their edges set them apart, by all three structures. */
export const behindAlone = memoizeByObject(({ comparison, subjectKnife, baselineKnife }: Scene): Row => {
  const { edgeMm, grind } = subjectKnife;
  const knives = [
    { ...baselineKnife, id: 'baseline' },
    { ...baselineKnife, id: 'behind', edgeMm, grind },
  ];
  return ofKnife(compare({ ...comparison, knives, baseline: 'baseline' }).rows, 'behind');
});

/** Whether, with all factors multiplied, a hair more thickness behind its edge would have a knife cut longer. */
export function thickerIsLonger({ comparison }: Scene, knife: Knife): boolean {
  const thicker = { ...knife, id: 'thicker', edgeMm: nominal(knife.edgeMm) * 1.001 };
  const knives = [{ ...knife, id: 'as it is', edgeMm: nominal(knife.edgeMm) }, thicker];
  return (
    thicker.edgeMm <= nominal(knife.grind.spineMm) &&
    unlessRefused(
      () => ofKnife(compare({ ...comparison, knives, baseline: 'as it is' }).rows, 'thicker').multiplied > 1,
    ) === true
  );
}

/** Whether a section with these measures can be ground at all. */
function stands(section: ExactGrind & { edgeMm: number }): boolean {
  try {
    checkSection(section);
    return true;
  } catch {
    return false;
  }
}

/** The radius a grind of no radius is given here, mm: assumed. */
const assumedRadiusMm = 150;

/** A grind between the same two thicknesses, in another form. */
export interface Form {
  form: GrindForm;
  radiusMm: number;
  grindAngleDeg: number;
  /** How far a face lies inside its chord at mid height, mm; outside it, below 0. */
  sagMm: number;
  own: boolean;
}

/**
 * The subject's primary grind in all three forms: same shoulder, same spine, same height. Of its own radius, or the
 * assumed one, made larger until a hollow of it does not go through the blade.
 */
export function formsOf(scene: Scene): [hollow: Form, flat: Form, convex: Form] {
  const { subject } = behindOf(scene);
  const { edgeMm, grind } = subject;
  const contactDepthMm = contactDepthOf(scene);
  const inForm = (form: GrindForm): Form => {
    const own = form === grind.form;
    const section = (radiusMm: number) => ({ ...grind, form, radiusMm, edgeMm });
    let radiusMm = Math.max(grind.radiusMm ?? assumedRadiusMm, grind.heightMm / 2);
    while (!stands(section(radiusMm))) radiusMm *= 1.25;
    return {
      form,
      radiusMm,
      own,
      sagMm: flankSagMm(section(radiusMm), grind.heightMm / 2),
      grindAngleDeg: grindHalfAngleDeg({ ...section(radiusMm), contactDepthMm }),
    };
  };
  return [inForm('hollow'), inForm('flat'), inForm('convex')];
}

/** What the caliper reads when its jaws stand this far above the shoulder, mm. */
export const slipMm = 1;

/** The edge angle per side that such a reading would make of the bevel's true width; null where it makes none. */
export function slippedAngleDeg(blade: Behind): number | null {
  const thicknessMm = thicknessAtMm(blade, slipMm);
  return thicknessMm < 2 * blade.bevelWidthMm
    ? edgeAngleDeg({ thicknessMm, slantWidthMm: blade.bevelWidthMm })
    : null;
}

/** A bevel ground from one angle to a lower one. */
export interface Regrind {
  fromDeg: number;
  toDeg: number;
  /** The two knives have one angle, so the lower one is made up: three quarters of it. */
  madeUp: boolean;
}

/** From the stouter angle of the two knives to the slimmer; where they are equal, to three quarters of it. */
export function regrindOf(scene: Scene): Regrind {
  const { subject, baseline } = behindOf(scene);
  const [low, high] = [
    Math.min(subject.angleDeg, baseline.angleDeg),
    Math.max(subject.angleDeg, baseline.angleDeg),
  ];
  if (high - low >= 0.05) return { fromDeg: high, toDeg: low, madeUp: false };
  const toDeg = Math.max(4, 0.75 * high);
  return { fromDeg: Math.max(high, toDeg / 0.75), toDeg, madeUp: true };
}

/** Steel to take off the section for that regrind at a thickness behind the edge, mm². */
export const removedMm2 = (edgeMm: number, { fromDeg, toDeg }: Regrind): number =>
  steelRemovedMm2({ edgeMm, fromAngleDeg: fromDeg, toAngleDeg: toDeg });
