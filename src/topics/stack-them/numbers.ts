import { limitOf } from './limit.ts';
import { ordinaryShare, subjectPush } from './push.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, times } from '../../scene/show.ts';
import { ends, endsAdded } from '../../scene/stack.ts';

/** The numbers of the whole stack. */
export const stackNumbers: Record<string, (scene: Scene) => string> = {
  'stack.first': (scene) => ends(scene, 'multiplied').first.name,
  'stack.last': (scene) => ends(scene, 'multiplied').last.name,
  'stack.quick': (scene) => times(ends(scene, 'quick').ratio),
  'stack.multiplied': (scene) => times(ends(scene, 'multiplied').ratio),
  'stack.added': (scene) => times(ends(scene, 'added').ratio),
  'stack.limit': (scene) => times(ends(scene, 'toLimit').ratio),
  'stack.sum': (scene) => times(endsAdded(scene)),
  'push.added': (scene) => percent(subjectPush(scene).added),
  'push.multiplied': (scene) => percent(subjectPush(scene).multiplied),
  // What would be left of an ordinary blade's push if the wedge's own part were halved, and if it were nothing.
  'push.half': () => percent(1 - ordinaryShare / 2),
  'push.without': () => percent(1 - ordinaryShare),
  'limit.share': (scene) => percent(limitOf(scene).share),
};
