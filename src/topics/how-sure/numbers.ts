import type { NumberOf } from '../base/numbers.ts';
import { percent, thousands, times } from '../../scene/show.ts';
import { samples } from '../../comparison/predicted.ts';
import { sureOf } from '../../scene/sure.ts';

/** The numbers of the band. */
export const sureNumbers: Record<string, NumberOf> = {
  'band.low': (scene) => times(sureOf(scene).low),
  'band.median': (scene) => times(sureOf(scene).median),
  'band.high': (scene) => times(sureOf(scene).high),
  'band.beats': (scene) => percent(sureOf(scene).beats),
  'band.line.low': (scene) => times(sureOf(scene).line.low),
  'band.line.high': (scene) => times(sureOf(scene).line.high),
  'band.samples': () => thousands(samples),
};
