import { compareBoth, memoizeByObject } from '../model/index.ts';

/**
 * The rows of a comparison by both readings, computed once for one object.
 *
 * @throws RangeError where the model refuses the comparison; the message names knife, parameter and range.
 */
export const compared = memoizeByObject(compareBoth);
