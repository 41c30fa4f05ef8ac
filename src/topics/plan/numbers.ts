import type { NumberOf } from '../base/numbers.ts';
import { neededOf, planOf } from './values.ts';
import { percent, thousands } from '../../scene/show.ts';

/** The numbers of a plan of runs. */
export const planNumbers: Record<string, NumberOf> = {
  'plan.cv': (scene) => percent(planOf(scene).total),
  'plan.needed': (scene) => thousands(neededOf(planOf(scene)).apart),
};
