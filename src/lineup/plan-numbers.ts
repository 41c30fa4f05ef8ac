import type { NumberOf } from './numbers.ts';
import { neededOf, planOf } from './plan.ts';
import { percent, thousands } from './show.ts';

/** The numbers of a plan of runs. */
export const planNumbers: Record<string, NumberOf> = {
  'plan.cv': (scene) => percent(planOf(scene).cv),
  'plan.needed': (scene) => thousands(neededOf(planOf(scene)).apart),
};
