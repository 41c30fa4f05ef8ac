/** Stands for Plot's `transforms/stack.js`: a bar that does not name both of its ends begins at 0, and none stands on another. */
import { refuse } from './refuse.mjs';

const no = refuse('stacks');

const from0 = (one, first, second) => {
  if (first === undefined && second === undefined) return [0, one];
  return [first ?? one ?? 0, second ?? one ?? 0];
};

export function maybeStackX({ x, x1, x2, ...options } = {}) {
  const [from, to] = from0(x, x1, x2);
  return { ...options, x1: from, x2: to };
}

export function maybeStackY({ y, y1, y2, ...options } = {}) {
  const [from, to] = from0(y, y1, y2);
  return { ...options, y1: from, y2: to };
}

export { no as stackX, no as stackX1, no as stackX2, no as stackY, no as stackY1, no as stackY2 };
