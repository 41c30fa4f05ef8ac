import { undoPercent } from '../../model/index.ts';
import { lessOf, shortPercent, signedShortPercent } from './values.ts';
import type { NumberOf } from '../base/numbers.ts';
import { plain, short, times } from '../../scene/show.ts';

/** Minutes one splice takes before and hours of a shift: invented, so that less time can be counted out. */
const splice = { minutes: 10, shiftMinutes: 300 } as const;

/** The numbers of something harmful that becomes less. */
export const lessNumbers: Record<string, NumberOf> = {
  'less.percent': (scene) => shortPercent(lessOf(scene).percent),
  'less.left': (scene) => shortPercent(lessOf(scene).leftPercent),
  'less.face': (scene) => times(lessOf(scene).faceValue),
  'less.inverse': (scene) => times(lessOf(scene).inverse),
  'less.damped': (scene) => times(lessOf(scene).damped),
  'less.exponent': (scene) => plain(lessOf(scene).exponent, 2),
  'less.splice.before': () => `${splice.minutes} minutes`,
  'less.splice.after': (scene) => `${short((splice.minutes * lessOf(scene).leftPercent) / 100)} minutes`,
  'less.shift': () => `${splice.shiftMinutes} minutes`,
  'less.splices.before': () => `${splice.shiftMinutes / splice.minutes} splices`,
  'less.splices.after': (scene) =>
    `${short((splice.shiftMinutes / splice.minutes) * lessOf(scene).inverse)} splices`,
  'less.back': (scene) => times(1 - (lessOf(scene).percent / 100) ** 2),
  'less.back.percent': (scene) => signedShortPercent(-(lessOf(scene).percent ** 2) / 100),
  'less.undo': (scene) => signedShortPercent(undoPercent(lessOf(scene).percent)),
  'less.undo.fall': (scene) => signedShortPercent(undoPercent(-lessOf(scene).percent)),
};
