import { pushShares, subjectPush } from './push.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, times } from '../../scene/show.ts';
import { ends, endsAdded } from '../../scene/stack.ts';

/** The numbers of the whole stack. */
export const stackNumbers: Record<string, (scene: Scene) => string> = {
  'stack.first': (scene) => ends(scene, 'careful').first.name,
  'stack.last': (scene) => ends(scene, 'careful').last.name,
  'stack.quick': (scene) => times(ends(scene, 'quick').ratio),
  'stack.careful': (scene) => times(ends(scene, 'careful').ratio),
  'stack.rival': (scene) => times(ends(scene, 'rival').ratio),
  'stack.added': (scene) => times(endsAdded(scene)),
  'push.share.wedge': (scene) => percent(pushShares(scene).wedge),
  'push.added': (scene) => percent(subjectPush(scene).added),
  'push.multiplied': (scene) => percent(subjectPush(scene).multiplied),
  // What would be left of the push if the wedge's own part were halved, and if it were nothing.
  'push.half': (scene) => percent(1 - pushShares(scene).wedge / 2),
  'push.without': (scene) => percent(1 - pushShares(scene).wedge),
};
