import { edgeAngleRange } from '../../model/index.ts';
import { floorDeg, limitsAt, limitsOf } from '../../scene/limits.ts';
import { anglesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, times } from '../../scene/show.ts';

/** The stress that stands for a hard knock on these pages: assumed, for comparison only. */
export const knockMpa = 2000;

/** How the subject compares with itself at half its angle; null where half is less than the model takes. */
export function halved(scene: Scene): { slicing: number; rolling: number } | null {
  const half = anglesOf(scene).subject.bevel / 2;
  if (half < edgeAngleRange.low) return null;
  const [now, then] = [limitsOf(scene), limitsAt(scene, half)];
  return { slicing: then.slicing / now.slicing, rolling: then.rolling / now.rolling };
}

const halvedIn = (scene: Scene, trial: 'slicing' | 'rolling'): string => {
  const ratio = halved(scene)?.[trial];
  return ratio === undefined ? 'refused (half of it is below 4°)' : times(ratio);
};

/** The numbers of the three limits. */
export const limitsNumbers: Record<string, (scene: Scene) => string> = {
  'limits.slicing': (scene) => times(limitsOf(scene).slicing),
  'limits.rolling': (scene) => times(limitsOf(scene).rolling),
  'limits.chipping': (scene) => {
    const { chipping } = limitsOf(scene);
    return chipping === null ? 'not known' : times(chipping);
  },
  'limits.half.slicing': (scene) => halvedIn(scene, 'slicing'),
  'limits.half.rolling': (scene) => halvedIn(scene, 'rolling'),
  'limits.floor.subject': ({ subjectKnife }) => `${plain(floorDeg(subjectKnife))}°`,
  'limits.floor.baseline': ({ baselineKnife }) => `${plain(floorDeg(baselineKnife))}°`,
  'limits.stress': () => `${knockMpa} MPa`,
};
