import { finishUm } from '../finish/finish.ts';
import { edgeAngle, flattestGrindDeg, grindHalfAngleDeg } from '../geometry/geometry.ts';
import { vickersFromRockwellC } from '../steel/hardness.ts';
import { exactGrind, nominal } from '../quantities.ts';
import type { Knife } from '../types.ts';

/** A knife with every quantity at its middle: what the quick sum, the notes and the side loads are made of. */
export interface Point {
  name: string;
  angleDeg: number;
  /** The angle at the very apex: the microbevel's where there is one. */
  apexAngleDeg: number;
  edgeMm: number;
  finishUm: number;
  /** Wedge half angle of the primary grind, degrees; 0.5 for a flatter one. */
  grindHalfAngleDeg: number;
  /** Whether the grind itself is flatter than that. */
  flatter: boolean;
  hrc: number;
  vickers: number;
  carbideVolPercent: number;
}

export const nameOf = ({ name, id }: Knife): string => name ?? id;

export function pointOf(knife: Knife, contactDepthMm: number): Point {
  const angleDeg = edgeAngle('edge angle', nominal(knife.angleDeg));
  const edgeMm = nominal(knife.edgeMm);
  const hrc = nominal(knife.hrc);
  const halfAngleDeg = grindHalfAngleDeg({ ...exactGrind(knife.grind), edgeMm, contactDepthMm });
  return {
    name: nameOf(knife),
    angleDeg,
    apexAngleDeg:
      knife.microbevelAngleDeg === undefined
        ? angleDeg
        : edgeAngle('microbevel angle', nominal(knife.microbevelAngleDeg)),
    edgeMm,
    finishUm: finishUm(knife.finish),
    grindHalfAngleDeg: Math.max(halfAngleDeg, flattestGrindDeg),
    flatter: halfAngleDeg < flattestGrindDeg,
    hrc,
    vickers: vickersFromRockwellC(hrc),
    carbideVolPercent: Object.values(knife.carbideVolPercent).reduce<number>(
      (sum, volume) => sum + nominal(volume),
      0,
    ),
  };
}
