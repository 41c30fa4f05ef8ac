/** Lives that are only known to lie within limits: a lognormal regression by maximum likelihood. */

import { normalCdf } from '../statistics/distributions.ts';

/**
 * The life of one sharpening, in any unit: `low` = `high` where it was read exactly, a range where it was looked at
 * only now and then, `high` Infinity where the run ended before the stop, `low` 0 where the first look came too late.
 */
export interface Life {
  low: number;
  high: number;
}

/** Whether the run reached its stop, at a look or between two. */
export const ended = ({ high }: Life): boolean => high < Infinity;

/** ln life = row · beta + scatter: the maximum of the likelihood, with covariance corrected for the parameters. */
export interface LognormalFit {
  beta: number[];
  /** Standard deviation of the logarithm of one life, as the likelihood has it: divided by n. */
  sigma: number;
  /** Covariance of beta, times n/(n − p), which makes it the ordinary one where every life was read exactly. */
  covariance: number[][];
  /** n − p. */
  df: number;
}

/**
 * Lognormal regression by maximum likelihood on lives read exactly, within ranges, or not to their end.
 *
 * @param lives at least one more that ended than there are columns
 * @param rows one a life, of equal length: 1 for every group the life belongs to
 * @throws RangeError where lives are out of order, too few ended, or they do not hold the scatter between limits
 * @example lognormalFit([{ low: 100, high: 100 }, { low: 120, high: 120 }, { low: 150, high: 150 }, { low: 160, high: Infinity }], [[1], [1], [1], [1]]).sigma // → 0.2361
 */
export function lognormalFit(lives: readonly Life[], rows: readonly (readonly number[])[]): LognormalFit {
  lives.forEach(({ low, high }, i) => {
    if (!(low >= 0 && Number.isFinite(low) && high >= low && high > 0))
      throw new RangeError(`life ${i} from ${low} to ${high} is not in order from 0 upwards`);
  });
  const p = rows[0]?.length ?? 0;
  const df = lives.length - p;
  const count = lives.filter(ended).length;
  if (count <= p) {
    throw new RangeError(`${count} of ${lives.length} runs ended, at least ${p + 1} must reach their stop`);
  }

  // In β/σ and 1/σ the logarithm of the likelihood is concave (R. J. Olsen, Econometrica 46, 1978): Newton's steps,
  // halved where they go too far, find its one top.
  let theta = start(lives, rows, p);
  let here = likelihood(lives, rows, theta);
  for (let step = 0; step < 200; step += 1) {
    const move = solve(here.curvature, here.slope);
    if (move === null) break;
    const gain = here.slope.reduce((sum, s, i) => sum + s * at(move, i), 0);
    if (gain < 1e-12) {
      // So near the top one more whole step squares what is still missing.
      theta = theta.map((value, k) => value + at(move, k));
      here = likelihood(lives, rows, theta);
      break;
    }
    const tried = halved((share) => {
      const moved = theta.map((value, k) => value + share * at(move, k));
      const next = at(moved, p) > 0 ? likelihood(lives, rows, moved) : null;
      return next !== null && next.value >= here.value ? { moved, next } : null;
    });
    if (tried === null) break;
    [theta, here] = [tried.moved, tried.next];
  }
  const tau = at(theta, p);
  const inverse = invert(here.curvature);
  // Lives that show their scatter at all show it to within as much again; where they do not, it may be off without end.
  const shown = (of: number[][]): boolean => Math.sqrt(at(at2(of, p), p)) < 100 * tau;
  if (inverse === null || !shown(inverse) || !here.slope.every((s) => Math.abs(s) < 1e-4)) {
    throw new RangeError(
      'the lives do not show how much they scatter: all fit one value, or the stop was looked at too rarely',
    );
  }
  // β = α/τ: the covariance of α and τ carried over.
  const beta = theta.slice(0, p).map((alpha) => alpha / tau);
  const carry = beta.map((b, i) => theta.map((_, k) => (k === i ? 1 / tau : k === p ? -b / tau : 0)));
  const correction = lives.length / df;
  const covariance = carry.map((left) =>
    carry.map(
      (right) =>
        left.reduce(
          (sum, l, i) => sum + right.reduce((inner, r, j) => inner + l * at(at2(inverse, i), j) * r, 0),
          0,
        ) * correction,
    ),
  );
  return { beta, sigma: 1 / tau, covariance, df };
}

/** What `attempt` gives for the whole of a step, or the half, or the half of that… */
function halved<T>(attempt: (share: number) => T | null): T | null {
  for (let share = 1; share > 1e-12; share /= 2) {
    const result = attempt(share);
    if (result !== null) return result;
  }
  return null;
}

const at = (values: readonly number[], i: number): number => values[i] ?? 0;
const at2 = (values: readonly (readonly number[])[], i: number): readonly number[] => values[i] ?? [];

/** Least squares through the middles of the lives, the open ends taken a little further. */
function start(lives: readonly Life[], rows: readonly (readonly number[])[], p: number): number[] {
  const y = lives.map(({ low, high }) =>
    Math.log(high === Infinity ? low * 1.2 : low === 0 ? high / 1.2 : Math.sqrt(low) * Math.sqrt(high)),
  );
  const normal = Array.from({ length: p }, (_, i) =>
    Array.from({ length: p }, (__, j) => rows.reduce((sum, row) => sum + at(row, i) * at(row, j), 0)),
  );
  const right = Array.from({ length: p }, (_, i) =>
    rows.reduce((sum, row, k) => sum + at(row, i) * at(y, k), 0),
  );
  const beta = solve(normal, right);
  if (beta === null) throw new RangeError('the groups of the lives cannot be told apart from each other');
  const rss = rows.reduce(
    (sum, row, k) => sum + (at(y, k) - row.reduce((inner, x, i) => inner + x * at(beta, i), 0)) ** 2,
    0,
  );
  const sigma = Math.max(Math.sqrt(rss / rows.length), 1e-7);
  return [...beta, 1].map((value) => value / sigma);
}

/** Value, slope and negative curvature of the logarithm of the likelihood in α = β/σ and τ = 1/σ. */
function likelihood(
  lives: readonly Life[],
  rows: readonly (readonly number[])[],
  theta: readonly number[],
): { value: number; slope: number[]; curvature: number[][] } {
  const p = theta.length - 1;
  const tau = at(theta, p);
  const slope = theta.map(() => 0);
  const curvature = theta.map(() => theta.map(() => 0));
  let value = 0;
  /** Adds a part whose derivatives by z are first and second, z = τ·y − x·α. */
  const add = (x: readonly number[], y: number, first: number): void => {
    for (let i = 0; i <= p; i += 1) slope[i] = at(slope, i) + first * (i === p ? y : -at(x, i));
  };
  const bend = (a: readonly number[], b: readonly number[], by: number): void => {
    curvature.forEach((line, i) => {
      for (let j = 0; j <= p; j += 1) line[j] = at(line, j) + by * at(a, i) * at(b, j);
    });
  };
  lives.forEach(({ low, high }, k) => {
    const x = at2(rows, k);
    const xa = x.reduce((sum, xi, i) => sum + xi * at(theta, i), 0);
    const direction = (y: number): number[] => [...x.map((xi) => -xi), y];
    if (low === high) {
      const y = Math.log(low);
      const z = tau * y - xa;
      value += Math.log(tau) - (z * z) / 2;
      add(x, y, -z);
      const d = direction(y);
      bend(d, d, 1);
      slope[p] = at(slope, p) + 1 / tau;
      const unit = theta.map((_, i) => (i === p ? 1 : 0));
      bend(unit, unit, 1 / (tau * tau));
      return;
    }
    const [yl, yh] = [Math.log(low), Math.log(high)];
    const zl = low === 0 ? -Infinity : tau * yl - xa;
    const zh = high === Infinity ? Infinity : tau * yh - xa;
    // Both limits in the same tail: the lower one keeps its digits.
    const chance = zl > 0 ? normalCdf(-zl) - normalCdf(-zh) : normalCdf(zh) - normalCdf(zl);
    value += Math.log(chance);
    const density = (z: number): number =>
      Number.isFinite(z) ? Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / chance : 0;
    const [fl, fh] = [density(zl), density(zh)];
    // d ln P = fh·dzh − fl·dzl; the second derivative follows with f′ = −z·f.
    const dl = direction(low === 0 ? 0 : yl);
    const dh = direction(high === Infinity ? 0 : yh);
    if (fh > 0) add(x, yh, fh);
    if (fl > 0) add(x, yl, -fl);
    const [gl, gh] = [fl === 0 ? 0 : zl * fl, fh === 0 ? 0 : zh * fh];
    bend(dh, dh, gh + fh * fh);
    bend(dl, dl, -gl + fl * fl);
    bend(dh, dl, -fh * fl);
    bend(dl, dh, -fh * fl);
  });
  return { value, slope, curvature };
}

/** Gauss's elimination of a matrix with no direction below 0, which needs no pivots; null where it is singular. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const work = matrix.map((row, i) => [...row, at(right, i)]);
  const scale = Math.max(...matrix.flat().map(Math.abs));
  for (const [column, top] of work.entries()) {
    if (!(at(top, column) > 1e-14 * scale)) return null;
    for (const [i, row] of work.entries()) {
      if (i === column) continue;
      const factor = at(row, column) / at(top, column);
      for (let j = column; j < row.length; j += 1) row[j] = at(row, j) - factor * at(top, j);
    }
  }
  return work.map((row, i) => at(row, right.length) / at(row, i));
}

function invert(matrix: readonly (readonly number[])[]): number[][] | null {
  const columns = matrix.map((_, i) =>
    solve(
      matrix,
      matrix.map((__, k) => (k === i ? 1 : 0)),
    ),
  );
  const whole = columns.filter((column) => column !== null);
  return whole.length === matrix.length ? whole : null;
}
