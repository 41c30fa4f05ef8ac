import { compareBoth } from '../model/index.ts';
import type { LineUp, Reading, Row } from '../model/index.ts';

const known = new WeakMap<LineUp, Record<Reading, Row[]>>();

/**
 * The rows of a line-up by both readings, computed once for one object.
 *
 * @throws RangeError where the model refuses the line-up; the message names knife, parameter and range.
 */
export function compared(lineUp: LineUp): Record<Reading, Row[]> {
  const before = known.get(lineUp);
  if (before) return before;
  const rows = compareBoth(lineUp);
  known.set(lineUp, rows);
  return rows;
}
