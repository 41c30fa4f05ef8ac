/** The ratio of two knives whose runs all reached their end point: least squares within batches, each knife its own scatter. */

import { batchCount, designOf, freedom } from './judge-design.ts';
import type { Design } from './judge-design.ts';
import { edgeCount, ofKnife } from './judge-log.ts';
import type { Cell } from './judge-log.ts';
import { upperVarianceFactor } from './upper-scatter.ts';

/** The logarithm of a ratio with what its interval is made of. */
export interface Estimate {
  logRatio: number;
  /** Squared standard error of `logRatio`. */
  variance: number;
  df: number;
  /** The name of the method. */
  method: string;
}

/** Or the reason why there is no interval, with the ratio if there is one. */
export interface NoEstimate {
  logRatio: number | null;
  why: string;
}

/** No knife's variance may be less than this share of the common one: an estimate of nearly nothing is chance. */
const LEAST_SHARE = 0.02;
/** Below this share of what it could be, the determinant says that the two scatters can't be estimated one by one. */
const LEAST_DETERMINANT = 0.05;
/** Logarithms that differ by less than a billionth differ by rounding only. */
const ROUNDING = 1e-9;

/** With so many runs the upper limit of a variance is the variance itself, nearly. */
const MANY = 10_000;

const middle = ({ low, high }: Cell): number => (low + high) / 2;

/** Variance that a life known only to lie between two looks has from that alone: uniform between their logarithms. */
export const lookVariance = (cells: readonly Cell[]): number =>
  cells.reduce((sum, { low, high }) => sum + (high - low) ** 2 / 12, 0) / cells.length;

/**
 * What more runs do not average out: where lives vary less than the looks lie apart, all of them fall between the same
 * two looks, and the ratio is known no better than from one.
 */
export const lookExcess = (variance: number, look: number): number => Math.max(0, look - variance);

/**
 * Variances at their upper 80% limits, for degrees of freedom only. Where the knife with fewer runs seems to vary less
 * than it does, Welch's degrees of freedom are too many: for 3 against 9 runs equal knives are then called different in
 * 7 of 100 logs instead of 5. With equal numbers of runs nothing changes.
 */
export const cautious = (
  variances: readonly [number, number],
  runs: readonly [number, number],
): [number, number] => [
  variances[0] * upperVarianceFactor(Math.min(runs[0] - 1, MANY)),
  variances[1] * upperVarianceFactor(Math.min(runs[1] - 1, MANY)),
];

/** Squared residuals of each knife's edges, each the sum over its cells with their weights. */
function squaredResiduals(
  { edges, weights, contrast }: Design,
  cells: readonly Cell[],
  logRatio: number,
): [number, number] {
  const totals = Array.from({ length: batchCount(cells) }, () => ({ all: 0, sum: 0 }));
  for (const cell of cells) {
    const total = totals[cell.batch];
    if (!total) continue;
    total.all += 1;
    total.sum += middle(cell);
  }
  const residuals = cells.map((cell, i) => {
    const { all, sum } = totals[cell.batch] ?? { all: 1, sum: 0 };
    return middle(cell) - sum / all - (contrast[i] ?? 0) * logRatio;
  });
  const squares: [number, number] = [0, 0];
  for (const { knife, cells: of } of edges)
    squares[knife] += of.reduce((sum, i) => sum + (weights[i] ?? 0) * (residuals[i] ?? 0), 0) ** 2;
  return squares;
}

/** Variance of one run of each knife, and the shares with which squared residuals enter the variance of the estimate. */
function scatter(
  { columns, expected, ratioVariance }: Design,
  squares: readonly [number, number],
): { variances: [number, number]; shares: [number, number]; common: boolean } {
  const [[aa, ab], [ba, bb]] = expected;
  const share = (ratioVariance[0] + ratioVariance[1]) / (aa + ab + ba + bb);
  const pooled = (squares[0] + squares[1]) / (aa + ab + ba + bb);
  const determinant = aa * bb - ab * ba;
  if (!(determinant > LEAST_DETERMINANT * aa * bb))
    return { variances: [pooled, pooled], shares: [share, share], common: true };
  // In a single batch each knife shows its own scatter; over several the two are solved for and may come out below 0.
  const least = columns > 2 ? LEAST_SHARE * pooled : 0;
  return {
    variances: [
      Math.max(least, (bb * squares[0] - ab * squares[1]) / determinant),
      Math.max(least, (aa * squares[1] - ba * squares[0]) / determinant),
    ],
    shares: [
      (ratioVariance[0] * bb - ratioVariance[1] * ba) / determinant,
      (ratioVariance[1] * aa - ratioVariance[0] * ab) / determinant,
    ],
    common: false,
  };
}

interface How {
  blocked: boolean;
  common: boolean;
  looked: boolean;
  /** Both knives have as many edges. */
  even: boolean;
}

function methodOf({ blocked, common, looked, even }: How): string {
  const scatter = common ? 'one scatter for both knives' : 'each knife with its own scatter';
  const freedom = common || even ? '' : ', degrees of freedom on the safe side';
  const name = blocked
    ? `least squares within batches on the logs of the lives, ${scatter} (Satterthwaite)${freedom}`
    : `Welch’s t on the logs of the lives${freedom}, no batch recorded`;
  return looked ? `${name}; a life between two looks counts as their log midpoint` : name;
}

/**
 * Every batch takes its own mean; edges are independent, runs of one edge are not. The variances come from squared
 * residuals by their expectation (a bias-reduced, edge-robust sandwich), the degrees of freedom by Satterthwaite. With a
 * single batch and edge by edge it is Welch's t.
 *
 * @param cells of which every batch holds both knives, none open to a side
 */
export function estimateWithinBatches(cells: readonly Cell[], blocked: boolean): Estimate | NoEstimate {
  const design = designOf(cells);
  const logRatio = cells.reduce((sum, cell, i) => sum + (design.weights[i] ?? 0) * middle(cell), 0);
  const counts: [number, number] = [edgeCount(ofKnife(cells, 0)), edgeCount(ofKnife(cells, 1))];
  if (Math.min(...counts) < 2)
    return { logRatio, why: 'one sharpening of a knife does not show how much its lives vary' };
  const { variances, shares, common } = scatter(design, squaredResiduals(design, cells, logRatio));
  const looks: [number, number] = [lookVariance(ofKnife(cells, 0)), lookVariance(ofKnife(cells, 1))];
  const floored: [number, number] = [Math.max(variances[0], looks[0]), Math.max(variances[1], looks[1])];
  const variance =
    design.ratioVariance[0] * floored[0] +
    design.ratioVariance[1] * floored[1] +
    lookExcess(variances[0], looks[0]) +
    lookExcess(variances[1], looks[1]);
  if (!(variance > ROUNDING ** 2))
    return { logRatio, why: 'the lives do not vary at all, so they do not show by how much they could' };
  // One scatter for both is no better known for one knife than for the other.
  const assumed = common ? floored : cautious(floored, counts);
  const df = Math.min(Math.max(freedom(design, assumed, shares), 1), design.edges.length - 2);
  const looked = cells.some(({ low, high }) => high > low);
  const how = { blocked, common, looked, even: counts[0] === counts[1] };
  return { logRatio, variance, df, method: methodOf(how) };
}
