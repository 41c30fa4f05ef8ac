import { explanations, memoizeByObject } from '../../model/index.ts';
import type { Explanation } from '../../model/index.ts';
import { pairOf } from '../../scene/pair.ts';
import { runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';

/** Single changes that would make the model say what was measured; empty where nothing was. */
export const suspectsOf = memoizeByObject((scene: Scene): Explanation[] => {
  const { measured } = runsOf(scene);
  const { entry } = scene;
  const found =
    measured === null
      ? []
      : explanations(pairOf(scene), {
          knife: entry.subject,
          against: entry.baseline,
          ratio: measured.ratio,
        });
  return found;
});
