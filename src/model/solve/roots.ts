/** The root of a function that may jump, turn or stop: the model's ratio as one attribute runs through its range. */

import type { Search } from './attributes.ts';

interface EndPoint {
  value: number;
  /** ln of (ratio over target) there. */
  short: number;
}

/** Equal parts the range is cut into before anything is looked at closely. */
const PARTS = 24;

/** A ratio this close to the target, in the logarithm, has reached it. */
const REACHED = 1e-12;

/**
 * The value nearest to `from` at which the gap closes; null where there is none. The range is cut into the pieces the
 * model takes, on which the gap is continuous; on each, turning points that face the target are found first, so that two roots
 * within one step are not missed; every change of sign is then closed to the last digits.
 *
 * @param from the present value: where the gap is closed there already, it is the answer
 */
export function nearestRoot(
  gap: (value: number) => number | null,
  from: number,
  search: Search,
): number | null {
  const endPoint = (value: number): EndPoint | null => {
    const short = gap(value);
    return short === null ? null : { value, short };
  };
  const present = endPoint(from);
  if (present && reached(present)) return from;
  const distance = (value: number): number =>
    search.ratio ? Math.abs(Math.log(value / from)) : Math.abs(value - from);
  const roots = pieces(endPoint, from, search)
    .flatMap((piece) => rootsOf(endPoint, piece))
    .toSorted((a, b) => distance(a) - distance(b));
  return roots[0] ?? null;
}

const reached = ({ short }: EndPoint): boolean => Math.abs(short) <= REACHED;

/** The values looked at first, rising. */
function grid(from: number, { low, high, ratio }: Search): number[] {
  const step = (part: number): number => (ratio ? low * (high / low) ** part : low + (high - low) * part);
  const inner = Array.from({ length: PARTS - 1 }, (_, i) => step((i + 1) / PARTS));
  const all = [low, ...inner, from, high].filter((value) => value >= low && value <= high);
  return [...new Set(all)].sort((a, b) => a - b);
}

/** The stretches on which the model takes the value, each as the values looked at. */
function pieces(endPoint: (value: number) => EndPoint | null, from: number, search: Search): EndPoint[][] {
  const found: EndPoint[][] = [];
  let current: EndPoint[] = [];
  let before: EndPoint | null = null;
  let last: number | null = null;
  for (const value of grid(from, search)) {
    const here = endPoint(value);
    if (last !== null && (before === null) !== (here === null)) {
      const [left, right] = seam(endPoint, last, before, value, here);
      if (left) current.push(left);
      found.push(current);
      current = right ? [right] : [];
    }
    if (here) current.push(here);
    before = here;
    last = value;
  }
  return [...found, current];
}

/** The last value the model takes before it refuses, or the first after, by halving; null on the side it refuses. */
function seam(
  endPoint: (value: number) => EndPoint | null,
  from: number,
  atFrom: EndPoint | null,
  to: number,
  atTo: EndPoint | null,
): [EndPoint | null, EndPoint | null] {
  let [low, high, left, right] = [from, to, atFrom, atTo];
  while (high - low > 1e-14 * to) {
    const middle = (low + high) / 2;
    const here = endPoint(middle);
    if ((here === null) === (atFrom === null)) [low, left] = [middle, here];
    else [high, right] = [middle, here];
  }
  return [left, right];
}

function rootsOf(endPoint: (value: number) => EndPoint | null, piece: readonly EndPoint[]): number[] {
  const endPoints = withTurns(endPoint, withEnds(endPoint, piece));
  const roots = endPoints.filter(reached).map(({ value }) => value);
  endPoints.forEach((after, i) => {
    const before = endPoints[i - 1];
    if (before && !reached(before) && !reached(after) && before.short * after.short < 0)
      roots.push(close(endPoint, before, after));
  });
  return roots;
}

const inOrder = (endPoints: readonly (EndPoint | null)[]): EndPoint[] =>
  endPoints.filter((here) => here !== null).sort((a, b) => a.value - b.value);

/** The stops with one more just inside either end: a turn within the outermost step shows there. */
function withEnds(endPoint: (value: number) => EndPoint | null, piece: readonly EndPoint[]): EndPoint[] {
  const inside = (end?: EndPoint, next?: EndPoint): EndPoint | null =>
    end && next ? endPoint(end.value + 1e-4 * (next.value - end.value)) : null;
  return inOrder([...piece, inside(piece[0], piece[1]), inside(piece.at(-1), piece.at(-2))]);
}

/** The stops with the turning points between them that face the target. */
function withTurns(endPoint: (value: number) => EndPoint | null, endPoints: readonly EndPoint[]): EndPoint[] {
  const turns = endPoints.flatMap((here, i) => {
    const [before, after] = [endPoints[i - 1], endPoints[i + 1]];
    if (!before || !after) return [];
    const side = Math.sign(here.short);
    const [first, middle, last] = [before.short * side, here.short * side, after.short * side];
    // Level with both neighbours is a plateau, not a turn.
    const faces = middle <= first && middle <= last && middle < first + last - middle;
    return faces ? [turn(endPoint, before.value, after.value, side)] : [];
  });
  return inOrder([...endPoints, ...turns]);
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The point nearest the target between two values, by golden section; the first one past the target will do. */
function turn(
  endPoint: (value: number) => EndPoint | null,
  from: number,
  to: number,
  side: number,
): EndPoint | null {
  let [low, high] = [from, to];
  let left = endPoint(high - GOLDEN * (high - low));
  let right = endPoint(low + GOLDEN * (high - low));
  while (left && right && high - low > 1e-9 * to) {
    const best = left.short * side < right.short * side ? left : right;
    if (best.short * side <= 0) return best;
    if (best === left) {
      [high, right] = [right.value, left];
      left = endPoint(high - GOLDEN * (high - low));
    } else {
      [low, left] = [left.value, right];
      right = endPoint(low + GOLDEN * (high - low));
    }
  }
  return left;
}

/**
 * Closes a change of sign by the ITP method: as fast as the secant where the function is smooth, never slower than
 * halving by more than one step (Oliveira & Takahashi, ACM Transactions on Mathematical Software 47:5, 2020; memory).
 */
function close(endPoint: (value: number) => EndPoint | null, before: EndPoint, after: EndPoint): number {
  let [a, b] = [before, after];
  const tolerance = 1e-15 * Math.max(Math.abs(a.value), Math.abs(b.value));
  const flatter = 0.2 / (b.value - a.value);
  let slack = tolerance * 2 ** (Math.ceil(Math.log2((b.value - a.value) / (2 * tolerance))) + 1);
  for (;;) {
    const width = b.value - a.value;
    const middle = (a.value + b.value) / 2;
    if (width <= 2 * tolerance) return middle;
    const secant = (b.short * a.value - a.short * b.value) / (b.short - a.short);
    const towards = Math.sign(middle - secant);
    const nudge = Math.min(flatter * width ** 2, Math.abs(middle - secant));
    const truncated = secant + towards * nudge;
    const radius = Math.max(0, slack - width / 2);
    const value = Math.abs(truncated - middle) <= radius ? truncated : middle - towards * radius;
    const here = endPoint(value);
    // Where a step moves neither end any more, the root is closed as far as numbers go.
    if (here === null || here.short === 0 || value <= a.value || value >= b.value) return value;
    if (here.short * after.short > 0) b = here;
    else a = here;
    slack /= 2;
  }
}
