import { compareBoth } from '../model/index.ts';
import { memoizeByObject } from '../model/memoize.ts';

/**
 * The rows of a comparison by both readings, computed once for one object.
 *
 * @throws RangeError where the model refuses the comparison; the message names knife, parameter and range.
 */
export const compared = memoizeByObject(compareBoth);
