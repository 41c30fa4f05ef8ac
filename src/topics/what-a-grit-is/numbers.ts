import { grainSizeUm, nominal, parameters, scratchDepthUm } from '../../model/index.ts';
import { finishesOf, gritName, scales, umOf } from './values.ts';
import type { NumberOf } from '../base/numbers.ts';
import { brief, percent, times } from '../../scene/show.ts';

/** The number the four scales are compared by before anything else is said; each of them has it. */
const common = 400;
const commonUm = scales.map((scale) => grainSizeUm({ scale, grit: common }));

const { low, high } = parameters.finishExponent;
const share = scratchDepthUm(1);

/** The numbers of the grits. */
export const gritsNumbers: Record<string, NumberOf> = {
  'subject.grit': (scene) => finishesOf(scene).subject.name,
  'baseline.grit': (scene) => finishesOf(scene).baseline.name,
  'subject.grain': (scene) => umOf(finishesOf(scene).subject.um),
  'baseline.grain': (scene) => umOf(finishesOf(scene).baseline.um),
  'grits.ratio': (scene) => {
    const { subject, baseline } = finishesOf(scene);
    return times(Math.max(subject.um, baseline.um) / Math.min(subject.um, baseline.um));
  },
  ...Object.fromEntries(
    scales.map((scale): [string, NumberOf] => [
      `common.${scale}`,
      () => `${gritName(scale, common)} is ${umOf(grainSizeUm({ scale, grit: common }))}`,
    ]),
  ),
  'common.number': () => String(common),
  'common.spread': () => times(Math.max(...commonUm) / Math.min(...commonUm)),
  'scratch.share': () => `${percent(share.low)} to ${percent(share.high)}`,
  'finish.exponent': ({ comparison }) =>
    brief(nominal(comparison.assumptions?.finishExponent ?? parameters.finishExponent.default)),
  'finish.exponent.range': () => `${brief(low)} to ${brief(high)}`,
};
