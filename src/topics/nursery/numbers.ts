import { lessOf } from '../less-of-a-bad-thing/values.ts';
import type { NumberOf } from '../base/numbers.ts';
import { short } from '../../scene/show.ts';

/** Room on a bench and for one seedling, cm²: invented, so that less room can be counted out. */
const compare = { roomCm2: 4800, seedlingCm2: 40 } as const;

/** A harmful thing that becomes less, in a nursery: the room each seedling takes. */
export const nurseryNumbers: Record<string, NumberOf> = {
  'nursery.bench': () => `${compare.roomCm2} cm²`,
  'nursery.room.before': () => `${compare.seedlingCm2} cm²`,
  'nursery.room.after': (scene) => `${short((compare.seedlingCm2 * lessOf(scene).leftPercent) / 100)} cm²`,
  'nursery.seedlings.before': () => `${compare.roomCm2 / compare.seedlingCm2} seedlings`,
  'nursery.seedlings.after': (scene) =>
    `${short((compare.roomCm2 / compare.seedlingCm2) * lessOf(scene).inverse)} seedlings`,
};
