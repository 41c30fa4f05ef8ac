/** Stands for Plot's `transforms/bin.js`. Areas and rectangles ask it about their interval, which ours do not have. */
import { refuse } from './refuse.mjs';

const no = refuse('bins');
const unlessInterval = (options) => (options?.interval == null ? options : no());

export { unlessInterval as maybeDenseIntervalX, unlessInterval as maybeDenseIntervalY };
export { no as bin, no as binX, no as binY, no as maybeThresholds };
