import { factorOf, found, ofKnife } from '../../comparison/found.ts';
import type { Scene } from '../../scene/scene.ts';
import { forceIds } from '../../scene/factors.ts';
import type { ForceId } from '../../scene/factors.ts';

/** The push of one knife if the forces add, in parts of the baseline's push, which is 1. */
export interface Push {
  id: string;
  name: string;
  parts: Record<ForceId, number>;
  /** The parts together: the push if the forces add. */
  added: number;
  /** The push if the three factors multiply instead. */
  multiplied: number;
}

/** A value of each factor that resists the cut. */
const byForce = (value: (id: ForceId) => number): Record<ForceId, number> =>
  Object.fromEntries(forceIds.map((id) => [id, value(id)])) as Record<ForceId, number>;

/** The shares of a push where none are given: a third each. */
export const evenShares = byForce(() => 1);

/** The baseline's shares of its push: as entered, or a third each; together 1. */
export function pushShares({ comparison }: Scene): Record<ForceId, number> {
  const given = comparison.assumptions?.rivalShares ?? evenShares;
  const sum = forceIds.reduce((total, id) => total + given[id], 0);
  return byForce((id) => given[id] / sum);
}

/** The push of every knife by the careful estimate, in the order of the comparison. */
export function pushes(scene: Scene): Push[] {
  const shares = pushShares(scene);
  return scene.knives.map(({ id, name }) => {
    const row = ofKnife(scene.rows.careful, id);
    const parts = byForce((force) => shares[force] / factorOf(row, force));
    return {
      id,
      name,
      parts,
      added: forceIds.reduce((total, force) => total + parts[force], 0),
      multiplied: forceIds.reduce((push, force) => push / factorOf(row, force), 1),
    };
  });
}

/** The push of the knife looked at. */
export const subjectPush = (scene: Scene): Push => found(pushes(scene), scene.entry.subject, 'knife');
