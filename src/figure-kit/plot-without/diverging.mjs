/** Stands for Plot's `scales/diverging.js`. */
import { refuse } from './refuse.mjs';

const no = refuse('diverging scales');

export {
  no as createScaleDiverging,
  no as createScaleDivergingLog,
  no as createScaleDivergingPow,
  no as createScaleDivergingSqrt,
  no as createScaleDivergingSymlog,
};
