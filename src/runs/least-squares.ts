/** Nonlinear least squares with the standard deviations of what is fitted. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';

/** A law with its derivatives by the parameters, in their order. */
export interface Law {
  value: (parameters: readonly number[], x: number) => number;
  slopes: (parameters: readonly number[], x: number) => number[];
}

export interface Fitted {
  parameters: number[];
  /** Standard deviations; with as many readings as parameters there is none to tell, null. */
  sds: number[] | null;
  /** Covariance of the parameters, null likewise. */
  covariance: number[][] | null;
  /** Reading less law, one a reading. */
  residuals: number[];
  rss: number;
  /** Readings less parameters. */
  df: number;
}

/**
 * The parameters that leave the least sum of squares, by Levenberg and Marquardt's steps with the law's own derivatives,
 * from each of the starts; the best counts.
 *
 * @param x finite numbers
 * @param y as many finite numbers
 * @param starts parameters to start from, at least one; near 1 in size, as the law should be scaled
 * @throws RangeError where the readings are fewer than the parameters, or no start leads to a least sum
 */
export function leastSquares(
  law: Law,
  x: readonly number[],
  y: readonly number[],
  starts: readonly (readonly number[])[],
): Fitted {
  const count = starts[0]?.length ?? 0;
  if (x.length < count) throw new RangeError(`there are ${x.length} readings, at least ${count} are needed`);
  let best: number[] | null = null;
  let least = Infinity;
  for (const start of starts) {
    const found = climb(law, x, y, start);
    if (found !== null && found.rss < least) [best, least] = [found.parameters, found.rss];
  }
  if (best === null) throw new RangeError('the readings follow no curve of this shape');
  const parameters = best;
  const jacobian = x.map((xi) => law.slopes(parameters, xi));
  const residuals = x.map((xi, i) => (y[i] ?? Number.NaN) - law.value(parameters, xi));
  const rss = residuals.reduce((sum, r) => sum + r * r, 0);
  const df = x.length - count;
  const inverse = inverted(
    parameters.map((_, i) =>
      parameters.map((__, j) => jacobian.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
    ),
  );
  if (inverse === null) throw new RangeError('the readings do not hold every parameter of the curve');
  const covariance = df > 0 ? inverse.map((row) => row.map((value) => (value * rss) / df)) : null;
  return {
    parameters,
    sds: covariance?.map((row, i) => Math.sqrt(row[i] ?? 0)) ?? null,
    covariance,
    residuals,
    rss,
    df,
  };
}

/** One climb by the library, started again where it stopped until the sum falls no further. */
function climb(
  law: Law,
  x: readonly number[],
  y: readonly number[],
  start: readonly number[],
): { parameters: number[]; rss: number } | null {
  let parameters = [...start];
  let rss = Infinity;
  for (let again = 0; again < 40; again += 1) {
    const result = levenbergMarquardt(
      { x: [...x], y: [...y] },
      (values: number[]) => (xi: number) => law.value(values, xi),
      {
        initialValues: parameters,
        jacobianFunction: (values: number[]) => (xi: number) => law.slopes(values, xi),
        damping: 1e-3,
        maxIterations: 25,
        errorTolerance: 0,
      },
    );
    if (!Number.isFinite(result.parameterError)) return null;
    if (!(result.parameterError < rss * (1 - 1e-14))) break;
    [parameters, rss] = [result.parameterValues, result.parameterError];
  }
  return rss < Infinity ? { parameters, rss } : null;
}

/** The inverse of a small symmetric matrix, scaled to ones on its diagonal first; null where it is singular. */
function inverted(matrix: readonly (readonly number[])[]): number[][] | null {
  const scale = matrix.map((row, i) => 1 / Math.sqrt(row[i] ?? 0));
  if (!scale.every((s) => Number.isFinite(s))) return null;
  const n = matrix.length;
  const work = matrix.map((row, i) => [
    ...row.map((value, j) => value * (scale[i] ?? 0) * (scale[j] ?? 0)),
    ...Array.from({ length: n }, (_, j) => (i === j ? 1 : 0)),
  ]);
  for (let column = 0; column < n; column += 1) {
    const from = work.slice(column);
    const top = from.reduce((best, row) =>
      Math.abs(row[column] ?? 0) > Math.abs(best[column] ?? 0) ? row : best,
    );
    const pivot = top[column] ?? 0;
    if (Math.abs(pivot) < 1e-13) return null;
    const place = work.indexOf(top);
    const here = work[column];
    if (here === undefined) return null;
    [work[column], work[place]] = [top, here];
    for (const row of work) {
      if (row === top) continue;
      const factor = (row[column] ?? 0) / pivot;
      for (let j = column; j < 2 * n; j += 1) row[j] = (row[j] ?? 0) - factor * (top[j] ?? 0);
    }
  }
  return work.map((row, i) =>
    row.slice(n).map((value, j) => (value / (row[i] ?? 1)) * (scale[i] ?? 0) * (scale[j] ?? 0)),
  );
}
