/** The ratio of two knives' lives as a logarithm with its error: across batches by Welch, or within batches. */

import { ended, lognormalFit } from './lognormal.ts';
import type { Life } from './lognormal.ts';
import { satterthwaite, summarise } from './series.ts';

/** The life of one sharpening within one batch of material. */
export interface BatchLife extends Life {
  /** The batch of material; needed where runs are compared within batches. */
  batch?: string;
}

/** ln(x/y) as estimated, and what its interval is made of. */
export interface RatioEstimate {
  logRatio: number;
  /** Standard error of `logRatio`. */
  error: number;
  df: number;
  /** Standard deviation of the logarithm of one life. */
  sd: number;
  /** Runs a knife that counted, of the knife that has fewer. */
  runs: number;
  /** Lots that hold only one of the knives and say nothing within batches. */
  unusedBatches: string[];
}

/**
 * Mean logarithms compared as by Welch, with lognormal maximum likelihood in place of mean and variance where runs ended
 * early or were looked at only now and then; or, within batches, the same with one shift a batch and one scatter for both.
 *
 * Where a third of the runs ended early the error is stated larger than it is (simulated: 95 % intervals hold the truth
 * in 97 of 100).
 *
 * @throws RangeError for a knife without two runs that ended, a life of 0 or below, runs that do not scatter, a batch left
 * out where it is needed, or batches that never hold both knives
 * @example Math.exp(estimateRatio([120, 150, 180].map((v) => ({ low: v, high: v })), [60, 75, 90].map((v) => ({ low: v, high: v })), false).logRatio) // → 2.000000
 */
export function estimateRatio(
  x: readonly BatchLife[],
  y: readonly BatchLife[],
  withinBatches: boolean,
): RatioEstimate {
  check(x, 'x');
  check(y, 'y');
  return withinBatches ? byBatches(x, y) : bySeries(x, y);
}

function check(lives: readonly BatchLife[], name: string): void {
  if (lives.length === 0) throw new RangeError(`${name} has no run, at least 2 are needed`);
  lives.forEach(({ low, high }, i) => {
    if (!(low >= 0 && Number.isFinite(low) && high >= low && high > 0)) {
      const life = low === high ? `${low}` : `from ${low} to ${high}`;
      throw new RangeError(`${name}[${i}] ${life} is not a life above 0`);
    }
  });
  if (lives.length === 1)
    throw new RangeError(
      `${name} has 1 run, at least 2 are needed: one run does not show how much runs scatter`,
    );
  const count = lives.filter(ended).length;
  if (count === 0)
    throw new RangeError(
      `none of the ${lives.length} runs of ${name} reached its stop: how long it lasts is open`,
    );
  if (count === 1)
    throw new RangeError(`${name} has 1 run that reached its stop, of ${lives.length}; at least 2 must`);
}

const exact = ({ low, high }: Life): boolean => low === high;

/** Mean of the logarithms of one knife's lives, its squared error and the variance of one. */
function moments(lives: readonly Life[], name: string): { mean: number; squaredError: number; df: number } {
  if (lives.every(exact)) {
    const { mean, variance, n } = summarise(
      lives.map(({ low }) => Math.log(low)),
      name,
    );
    return { mean, squaredError: variance / n, df: n - 1 };
  }
  const { beta, covariance, df } = lognormalFit(
    lives,
    lives.map(() => [1]),
  );
  return { mean: beta[0] ?? Number.NaN, squaredError: covariance[0]?.[0] ?? Number.NaN, df };
}

function bySeries(x: readonly Life[], y: readonly Life[]): RatioEstimate {
  const [a, b] = [moments(x, 'x'), moments(y, 'y')];
  const squaredError = a.squaredError + b.squaredError;
  if (squaredError === 0)
    throw new RangeError('the scatter of x and y is 0, at least one series must scatter for an interval');
  const variance = (a.squaredError * (a.df + 1) + b.squaredError * (b.df + 1)) / 2;
  return {
    logRatio: a.mean - b.mean,
    error: Math.sqrt(squaredError),
    df: satterthwaite(a.squaredError, a.df + 1, b.squaredError, b.df + 1),
    sd: Math.sqrt(variance),
    runs: Math.min(x.length, y.length),
    unusedBatches: [],
  };
}

function batchOf({ batch }: BatchLife, name: string, i: number): string {
  if (batch === undefined)
    throw new RangeError(`${name}[${i}] has no lot, which comparing within lots needs`);
  return batch;
}

function batchesOfOne(x: readonly BatchLife[], y: readonly BatchLife[]): string[] {
  const [a, b] = [x.map((life, i) => batchOf(life, 'x', i)), y.map((life, i) => batchOf(life, 'y', i))];
  return [...new Set([...a, ...b])].filter((batch) => !(a.includes(batch) && b.includes(batch)));
}

function byBatches(x: readonly BatchLife[], y: readonly BatchLife[]): RatioEstimate {
  const unused = batchesOfOne(x, y);
  const within = ({ batch }: BatchLife): boolean => batch !== undefined && !unused.includes(batch);
  const [a, b] = [x.filter(within), y.filter(within)];
  const batches = [...new Set(a.map(({ batch }) => batch))];
  if (batches.length === 0) throw new RangeError('no lot holds runs of both x and y, at least one must');
  const row = (life: BatchLife, first: number): number[] => [
    first,
    ...batches.map((batch) => (batch === life.batch ? 1 : 0)),
  ];
  const fit = lognormalFit(
    [...a, ...b],
    [...a.map((life) => row(life, 1)), ...b.map((life) => row(life, 0))],
  );
  const count = fit.df + batches.length + 1;
  return {
    logRatio: fit.beta[0] ?? Number.NaN,
    error: Math.sqrt(fit.covariance[0]?.[0] ?? Number.NaN),
    df: fit.df,
    sd: fit.sigma * Math.sqrt(count / fit.df),
    runs: Math.min(a.length, b.length),
    unusedBatches: unused,
  };
}
