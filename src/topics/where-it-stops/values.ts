import { edgeAngleRange, nominal, sideLoadRatios } from '../../model/index.ts';
import type { Ends } from '../../model/index.ts';
import { anglesOf, routesAt, routesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';

/** How the subject compares with itself at half its angle. */
export interface Halved {
  halfDeg: number;
  /** How many times as long it slices, if the factors multiply. */
  slicing: number;
  /** How many times the side load it bears before it rolls, both ends. */
  rolling: Ends;
}

/** The subject at half its angle against itself as it is; null where half is less than the model takes. */
export function halved(scene: Scene): Halved | null {
  const { subjectKnife } = scene;
  const { bevel, apex } = anglesOf(scene).subject;
  const halfDeg = bevel / 2;
  if (halfDeg < edgeAngleRange.low) return null;
  const hrc = nominal(subjectKnife.hrc);
  // A microbevel stays as it is.
  const halfApex = subjectKnife.microbevelAngleDeg === undefined ? halfDeg : apex;
  return {
    halfDeg,
    slicing: routesAt(scene, halfDeg).careful / routesOf(scene).careful,
    rolling: sideLoadRatios({ apexAngleDeg: halfApex, hrc }, { apexAngleDeg: apex, hrc }).rolling,
  };
}
