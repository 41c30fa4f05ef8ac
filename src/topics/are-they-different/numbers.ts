import { loftTruths } from '../../runs/invented.ts';
import { alikeText, alpha, extent, power, spread } from './values.ts';
import type { NumberOf } from '../base/numbers.ts';
import { percent, times } from '../../scene/show.ts';
import { trialOf } from './trial.ts';

/** The numbers of runs: of those cut, and of the plan. */
export const differentNumbers: Record<string, NumberOf> = {
  'runs.subject': (scene) => String(trialOf(scene).x.length),
  'runs.baseline': (scene) => String(trialOf(scene).y.length),
  'runs.ratio': (scene) => times(trialOf(scene).across.ratio),
  'runs.spread': (scene) => {
    const { least, most } = extent(trialOf(scene).x);
    return times(most / least);
  },
  'runs.cv': () => percent(spread.within),
  'runs.cv.mixed': () => percent(spread.mixed),
  'runs.lots': () => String(loftTruths.batches.length),
  'runs.bound.low': () => alikeText.low,
  'runs.bound.high': () => alikeText.high,
  'runs.power': () => percent(power),
  'runs.alpha': () => percent(alpha),
};
