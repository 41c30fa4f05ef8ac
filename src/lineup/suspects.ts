import { explanations } from '../model/index.ts';
import type { Explanation } from '../model/index.ts';
import { pairOf } from './pair.ts';
import { runsOf } from './runs.ts';
import type { Scene } from './scene.ts';

const explained = new WeakMap<Scene, Explanation[]>();

/** Single changes that would make the model say what was measured; empty where nothing was. */
export function suspectsOf(scene: Scene): Explanation[] {
  const before = explained.get(scene);
  if (before) return before;
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
  explained.set(scene, found);
  return found;
}
