import { factorOf, found, ofKnife } from '../../comparison/found.ts';
import type { Scene } from '../../scene/scene.ts';

/** The resistances that stand side by side in one push. */
export type Resistance = 'wedge' | 'thickness' | 'grind';

export const resistances: readonly Resistance[] = ['wedge', 'thickness', 'grind'];

/** The push of one knife if the forces add, in parts of the baseline's push, which is 1. */
export interface Push {
  id: string;
  name: string;
  parts: Record<Resistance, number>;
  /** The parts together: the push if the forces add. */
  added: number;
  /** The push if the three factors multiply instead. */
  multiplied: number;
}

/** The baseline's shares of its push: as entered, or a third each; together 1. */
export function pushShares({ comparison }: Scene): Record<Resistance, number> {
  const given = comparison.assumptions?.rivalShares ?? { wedge: 1, thickness: 1, grind: 1 };
  const sum = given.wedge + given.thickness + given.grind;
  return { wedge: given.wedge / sum, thickness: given.thickness / sum, grind: given.grind / sum };
}

/** The push of every knife by the careful estimate, in the order of the comparison. */
export function pushes(scene: Scene): Push[] {
  const shares = pushShares(scene);
  return scene.knives.map(({ id, name }) => {
    const row = ofKnife(scene.rows.careful, id);
    const f = {
      wedge: factorOf(row, 'wedge'),
      thickness: factorOf(row, 'thickness'),
      grind: factorOf(row, 'grind'),
    };
    const parts = {
      wedge: shares.wedge / f.wedge,
      thickness: shares.thickness / f.thickness,
      grind: shares.grind / f.grind,
    };
    return {
      id,
      name,
      parts,
      added: parts.wedge + parts.thickness + parts.grind,
      multiplied: 1 / (f.wedge * f.thickness * f.grind),
    };
  });
}

/** The push of the knife looked at. */
export const subjectPush = (scene: Scene): Push => found(pushes(scene), scene.entry.subject, 'knife');
