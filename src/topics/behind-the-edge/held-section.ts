import type { Role } from '../../comparison/role.ts';
import type { Scene } from '../../scene/scene.ts';
import type { Handle, Place } from '../../figure-kit/figure.ts';

/** How near a shoulder or a tip is taken hold of, px of the drawing. */
export const nearPx = 14;

/** The angle per side of a straight flank from a tip through a point: across from the tip, and up from it, in one unit. */
export const flankDeg = (across: number, up: number): number => (Math.atan2(across, up) * 180) / Math.PI;

/** A section as it can be taken hold of in a drawing to scale. */
export interface HeldSection {
  role: Role;
  /** Thickness of a section that has its faces where the pointer is, mm. */
  acrossMm(at: Place): number;
  /** Thickness above the shoulder in a scene, mm. */
  thicknessMm(scene: Scene, upMm: number): number;
  /** How far from the shoulder it is still the shoulder, mm. */
  nearMm: number;
}

/** The shoulder of a section, which is its thickness behind the edge, or a face above it, which is its grind's height. */
export function holdSection(
  { role, acrossMm, thicknessMm, nearMm }: HeldSection,
  { y }: Place,
): Handle | undefined {
  if (Math.abs(y) <= nearMm) return { control: `${role}.edge`, value: acrossMm };
  return y < 0
    ? undefined
    : {
        control: `${role}.grindHeight`,
        aim: acrossMm,
        stands: (scene, at) => thicknessMm(scene, Math.max(0, at.y)),
      };
}
