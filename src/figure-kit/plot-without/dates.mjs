/** Stands for Plot's `time.js` and `scales/temporal.js`, and for `d3-time-format`. */
import { refuse } from './refuse.mjs';

const no = refuse('dates');

/** Plot marks its intervals of time with this; no tick of ours has it. */
export const intervalDuration = Symbol('intervalDuration');
export {
  no as createScaleTime,
  no as createScaleUtc,
  no as generalizeTimeInterval,
  no as inferTimeFormat,
  no as parseTimeInterval,
  no as timeFormat,
  no as timeInterval,
  no as utcFormat,
  no as utcInterval,
};
