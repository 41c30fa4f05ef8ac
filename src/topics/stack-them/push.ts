import { factorOf, found, ofKnife } from '../../comparison/found.ts';
import type { Scene } from '../../scene/scene.ts';
import { forceIds } from '../../scene/factors.ts';
import type { ForceId } from '../../scene/factors.ts';

/** The push of one knife, in parts of an ordinary blade's push, which is 1. */
export interface Push {
  id: string;
  name: string;
  parts: Record<ForceId, number>;
  /** The parts together: the push if the forces add. */
  added: number;
  /** The push if it went with the product of the three factors instead. */
  multiplied: number;
}

/** What each force has of an ordinary blade's push: a third (assumed). */
export const ordinaryShare = 1 / forceIds.length;

/** A value of each factor that resists the cut. */
const byForce = (value: (id: ForceId) => number): Record<ForceId, number> =>
  Object.fromEntries(forceIds.map((id) => [id, value(id)])) as Record<ForceId, number>;

const sumOf = (parts: Record<ForceId, number>): number =>
  forceIds.reduce((total, force) => total + parts[force], 0);

/** The push of every knife by the careful estimate, in the order of the comparison. */
export function pushes(scene: Scene): Push[] {
  const partsOf = (id: string) => {
    const { forces } = ofKnife(scene.rows.careful, id);
    return byForce((force) => ordinaryShare * (forces[force] ?? 1));
  };
  const baseline = sumOf(partsOf(scene.entry.baseline));
  return scene.knives.map(({ id, name }) => {
    const row = ofKnife(scene.rows.careful, id);
    const parts = partsOf(id);
    return {
      id,
      name,
      parts,
      added: sumOf(parts),
      multiplied: forceIds.reduce((push, force) => push / factorOf(row, force), baseline),
    };
  });
}

const pushOf = (scene: Scene, id: string): Push => found(pushes(scene), id, 'knife');

/** The push of the knife looked at. */
export const subjectPush = (scene: Scene): Push => pushOf(scene, scene.entry.subject);

/** The push of the baseline. */
export const baselinePush = (scene: Scene): Push => pushOf(scene, scene.entry.baseline);
