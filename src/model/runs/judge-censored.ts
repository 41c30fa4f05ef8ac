/** The ratio of two knives of which some runs were given up before their end point: normal maximum likelihood on logs. */

import { batchCount } from './judge-design.ts';
import { closed, edgeCount, ofKnife } from './judge-log.ts';
import type { Cell } from './judge-log.ts';
import { cautious, lookVariance, lookExcess } from './judge-variance.ts';
import type { Estimate, NoEstimate } from './judge-variance.ts';
import { lognormalFit } from './lognormal.ts';
import { satterthwaite } from './series.ts';

/** Estimates of a fit with their variances for the first column, or null where the lives do not show their scatter. */
function fit(
  cells: readonly Cell[],
  rows: readonly (readonly number[])[],
): { first: number; variance: number } | null {
  // Middles instead of looks: a likelihood of few looks often has no scatter at its top.
  const lives = cells.map((cell) => {
    const { low, high } = closed(cell)
      ? { low: (cell.low + cell.high) / 2, high: (cell.low + cell.high) / 2 }
      : cell;
    return { low: Math.exp(low), high: Math.exp(high) };
  });
  try {
    const { beta, covariance, sigma, df } = lognormalFit(lives, rows);
    const ended = cells.filter(closed);
    const look = lookVariance(ended);
    // The likelihood's scatter is too small by as many runs as there are parameters. Only those that reached their end
    // point count: made up for by all of them, equal knives were called different too often.
    const parameters = cells.length - df;
    const corrected = (df / cells.length) * (ended.length / (ended.length - parameters));
    return {
      first: beta[0] ?? 0,
      variance:
        (covariance[0]?.[0] ?? 0) * corrected * Math.max(1, look / sigma ** 2) + lookExcess(sigma ** 2, look),
    };
  } catch (error) {
    // Unreachable: anything else is a fault in the model itself, and goes on as it is.
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
}

const method = 'normal maximum likelihood on the logs of the lives';

/** Each knife by itself, with its own scatter; null where one of them does not show it. */
function knifeByKnife(cells: readonly Cell[]): Estimate | null {
  const [x, y] = [0, 1].map((knife) => {
    const own = ofKnife(cells, knife);
    const found = fit(
      own,
      own.map(() => [1]),
    );
    return found && { ...found, count: own.filter(closed).length };
  });
  if (!x || !y) return null;
  const [a, b] = cautious([x.variance, y.variance], [x.count, y.count]);
  return {
    logRatio: x.first - y.first,
    variance: x.variance + y.variance,
    df: satterthwaite(a, x.count, b, y.count),
    method: `${method}, each knife with its own scatter, no batch recorded`,
  };
}

/** Both knives with one scatter, and a mean for every batch. */
function together(cells: readonly Cell[], blocked: boolean): Estimate | NoEstimate {
  const batches = batchCount(cells);
  const rows = cells.map(({ knife, batch }) => [
    1 - knife,
    ...Array.from({ length: batches }, (_, b) => (b === batch ? 1 : 0)),
  ]);
  const found = fit(cells, rows);
  if (!found)
    return { logRatio: null, why: 'the runs that reached their end point do not show how much lives vary' };
  // Edges that were cut in several batches count as one run each: their runs may be as alike as one.
  const repeats = Math.max(
    ...[0, 1].map((knife) => ofKnife(cells, knife)).map((own) => own.length / edgeCount(own)),
  );
  const ended = cells.filter(closed);
  return {
    logRatio: found.first,
    variance: found.variance * repeats,
    df: Math.min(ended.length - batches - 1, edgeCount(ended) - 2),
    method: `${method}, ${blocked ? 'within batches' : 'no batch recorded'}, one scatter for both knives`,
  };
}

/** How runs enter that did not end at a look. */
function openEnds(cells: readonly Cell[]): string {
  const early = cells.some(({ high }) => high === Infinity)
    ? '; a run given up early lasts at least that long'
    : '';
  const late = cells.some(({ low }) => low === -Infinity)
    ? '; an edge blunt at the first look lasts at most that long'
    : '';
  return early + late;
}

/**
 * The estimate where some cells are open to one side. It asks for more runs that reached their end point than the
 * parameters alone would, since a scatter from fewer would be too small too often.
 *
 * @param cells of which every batch holds both knives and one that is closed
 */
export function estimateCensored(cells: readonly Cell[], blocked: boolean): Estimate | NoEstimate {
  const ended = cells.filter(closed);
  const batches = batchCount(cells);
  const counts = [0, 1].map((knife) => edgeCount(ofKnife(ended, knife)));
  const met = Array.from({ length: batches }, (_, b) =>
    [0, 1].every((knife) => ended.some((cell) => cell.batch === b && cell.knife === knife)),
  );
  if (Math.min(...counts) < 2)
    return { logRatio: null, why: 'fewer than two sharpenings of a knife were cut to their end point' };
  if (!met.includes(true))
    return { logRatio: null, why: 'no batch holds a run of both knives that reached its end point' };
  if (ended.length - batches - 1 < 2)
    return { logRatio: null, why: 'too few runs reached their end point to show how much lives vary' };
  const alone = (knife: number): boolean => (counts[knife] ?? 0) >= 3 || ofKnife(cells, knife).every(closed);
  const estimate =
    (!blocked && alone(0) && alone(1) ? knifeByKnife(cells) : null) ?? together(cells, blocked);
  return 'why' in estimate ? estimate : { ...estimate, method: `${estimate.method}${openEnds(cells)}` };
}
