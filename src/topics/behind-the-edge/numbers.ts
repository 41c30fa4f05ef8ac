import { nominal, parameters } from '../../model/index.ts';
import { behindFactors, behindOf, contactDepthOf, slipMm } from './values.ts';
import type { Behind } from './values.ts';
import type { NumberOf } from '../base/numbers.ts';
import { brief, short, times } from '../../scene/show.ts';

const grindAngle = ({ grindAngleDeg }: Behind): string => `${short(grindAngleDeg)}°`;

const exponent = parameters.thicknessExponent;

/** The numbers of what lies behind an edge. */
export const behindNumbers: Record<string, NumberOf> = {
  'contact.depth': (scene) => `${brief(contactDepthOf(scene))} mm`,
  'subject.grind.angle': (scene) => grindAngle(behindOf(scene).subject),
  'baseline.grind.angle': (scene) => grindAngle(behindOf(scene).baseline),
  'slip.height': () => `${slipMm} mm`,
  'behind.careful': (scene) => times(behindFactors(scene).careful.both),
  'behind.quick': (scene) => times(behindFactors(scene).quick.both),
  'thickness.exponent': ({ comparison }) =>
    brief(nominal(comparison.assumptions?.thicknessExponent ?? exponent.default)),
  'thickness.exponent.range': () => `${brief(exponent.low)} to ${brief(exponent.high)}`,
};
