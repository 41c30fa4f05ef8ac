/** Stands for Plot's `transforms/interval.js`. Most marks ask it about their interval, which ours do not have. */
import { refuse } from './refuse.mjs';

const no = refuse('intervals');
const unlessInterval = (options = {}) => (options.interval == null ? options : no());

export {
  unlessInterval as maybeIntervalMidX,
  unlessInterval as maybeIntervalMidY,
  unlessInterval as maybeIntervalX,
  unlessInterval as maybeIntervalY,
  unlessInterval as maybeTrivialIntervalX,
  unlessInterval as maybeTrivialIntervalY,
};
