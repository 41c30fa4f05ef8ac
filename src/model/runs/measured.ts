/** What the runs say: the measured ratio of two knives' lives, its interval, and a verdict. */

import { studentCdf, studentQuantile } from '../distributions.ts';
import { equivalenceRunsNeeded } from './equivalence.ts';
import { ended, lognormalFit } from './lognormal.ts';
import type { Life } from './lognormal.ts';
import { runsNeeded } from './planning.ts';
import { satterthwaite, summarise } from './series.ts';

/** The life of one sharpening within one lot of stock. */
export interface LotLife extends Life {
  /** The lot of stock; needed where runs are compared within lots. */
  lot?: string;
}

/** Two ratios between which two knives count as alike in use, below and above 1. */
export interface AlikeBounds {
  low: number;
  high: number;
}

export interface Comparison {
  /** Lives of the first knife, one a sharpening. */
  x: readonly LotLife[];
  /** Lives of the second, same unit. */
  y: readonly LotLife[];
  /** Compare within lots only, so that a shift between lots takes no part. */
  withinLots?: boolean;
  /** Of the interval, 0.5 to below 1; 0.95 if left out. */
  confidence?: number;
  /** 0.8 and 1.25 if left out. */
  alikeWithin?: AlikeBounds;
}

export type Verdict = 'apart' | 'alike' | 'not told apart';

export interface Measured {
  /** How many times as long x lasts as y: the ratio of the geometric means. */
  ratio: number;
  low: number;
  high: number;
  /** Two-sided chance of a ratio this far from 1 if the knives were equal. */
  p: number;
  /** Chance of runs this close to 1 if the true ratio lay at the nearer bound of `alikeWithin` (Schuirmann's two tests). */
  pAlike: number;
  df: number;
  /** `apart` goes before `alike`: two knives can be both, surely different and hardly so. */
  verdict: Verdict;
  /** Whether the ratio was shown to lie within `alikeWithin`. */
  alike: boolean;
  longer: 'x' | 'y' | null;
  /**
   * Runs a knife still to be cut, at the scatter seen, so that a true ratio at the bound of `alikeWithin` would be told
   * apart and equal knives be shown alike, each in four of five tries; 0 after a verdict, null where it is over a million.
   */
  runsMore: number | null;
  /** Lots that hold only one of the knives and say nothing within lots. */
  unusedLots: string[];
}

/** The logarithm of the ratio as estimated, and the scatter of one run. */
interface Estimate {
  difference: number;
  squaredError: number;
  df: number;
  sd: number;
  runs: number;
}

/**
 * The ratio of the lives of two knives with its interval and verdict: Welch's on the logarithms, with lognormal maximum
 * likelihood in place of mean and variance where runs ended early or were looked at only now and then; or, within lots,
 * the same with one shift a lot and one scatter for both knives.
 *
 * @throws RangeError for a knife without two runs that ended, a life of 0 or below, runs that do not scatter, a lot left
 * out where it is needed, lots that never hold both knives, or a confidence or bounds outside their limits
 * @example measuredRatio({ x: [120, 150, 180].map((v) => ({ low: v, high: v })), y: [60, 75, 90].map((v) => ({ low: v, high: v })) }).ratio // → 2.000000
 */
export function measuredRatio(comparison: Comparison): Measured {
  const { x, y, withinLots = false, confidence = 0.95, alikeWithin = { low: 0.8, high: 1.25 } } = comparison;
  if (!(confidence >= 0.5 && confidence < 1))
    throw new RangeError(`confidence ${confidence} is not from 0.5 to below 1`);
  if (!(alikeWithin.low > 0 && alikeWithin.low < 1 && alikeWithin.high > 1 && alikeWithin.high < Infinity))
    throw new RangeError(`alikeWithin ${alikeWithin.low} to ${alikeWithin.high} does not lie around 1`);
  check(x, 'x');
  check(y, 'y');
  const unusedLots = withinLots ? lotsOfOne(x, y) : [];
  const estimate = withinLots ? byLots(x, y, unusedLots) : bySeries(x, y);
  const { difference, squaredError, df, sd, runs } = estimate;
  const error = Math.sqrt(squaredError);
  const half = studentQuantile((1 + confidence) / 2, df) * error;
  const p = 2 * studentCdf(-Math.abs(difference) / error, df);
  const pAlike = Math.max(
    studentCdf((Math.log(alikeWithin.low) - difference) / error, df),
    studentCdf((difference - Math.log(alikeWithin.high)) / error, df),
  );
  const alike = pAlike < 1 - confidence;
  const verdict = p < 1 - confidence ? 'apart' : alike ? 'alike' : 'not told apart';
  return {
    ratio: Math.exp(difference),
    low: Math.exp(difference - half),
    high: Math.exp(difference + half),
    p,
    pAlike,
    df,
    verdict,
    alike,
    longer: verdict === 'apart' ? (difference > 0 ? 'x' : 'y') : null,
    runsMore: verdict === 'not told apart' ? more(sd, runs, alikeWithin, 1 - confidence) : 0,
    unusedLots,
  };
}

function check(lives: readonly LotLife[], name: string): void {
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

function bySeries(x: readonly Life[], y: readonly Life[]): Estimate {
  const [a, b] = [moments(x, 'x'), moments(y, 'y')];
  const squaredError = a.squaredError + b.squaredError;
  if (squaredError === 0)
    throw new RangeError('the scatter of x and y is 0, at least one series must scatter for an interval');
  const variance = (a.squaredError * (a.df + 1) + b.squaredError * (b.df + 1)) / 2;
  return {
    difference: a.mean - b.mean,
    squaredError,
    df: satterthwaite(a.squaredError, a.df + 1, b.squaredError, b.df + 1),
    sd: Math.sqrt(variance),
    runs: Math.min(x.length, y.length),
  };
}

function lotOf({ lot }: LotLife, name: string, i: number): string {
  if (lot === undefined) throw new RangeError(`${name}[${i}] has no lot, which comparing within lots needs`);
  return lot;
}

function lotsOfOne(x: readonly LotLife[], y: readonly LotLife[]): string[] {
  const [a, b] = [x.map((life, i) => lotOf(life, 'x', i)), y.map((life, i) => lotOf(life, 'y', i))];
  return [...new Set([...a, ...b])].filter((lot) => !(a.includes(lot) && b.includes(lot)));
}

function byLots(x: readonly LotLife[], y: readonly LotLife[], unused: readonly string[]): Estimate {
  const within = ({ lot }: LotLife): boolean => lot !== undefined && !unused.includes(lot);
  const [a, b] = [x.filter(within), y.filter(within)];
  const lots = [...new Set(a.map(({ lot }) => lot))];
  if (lots.length === 0) throw new RangeError('no lot holds runs of both x and y, at least one must');
  const row = (life: LotLife, first: number): number[] => [
    first,
    ...lots.map((lot) => (lot === life.lot ? 1 : 0)),
  ];
  const fit = lognormalFit(
    [...a, ...b],
    [...a.map((life) => row(life, 1)), ...b.map((life) => row(life, 0))],
  );
  const count = fit.df + lots.length + 1;
  return {
    difference: fit.beta[0] ?? Number.NaN,
    squaredError: fit.covariance[0]?.[0] ?? Number.NaN,
    df: fit.df,
    sd: fit.sigma * Math.sqrt(count / fit.df),
    runs: Math.min(a.length, b.length),
  };
}

function more(sd: number, runs: number, bounds: AlikeBounds, alpha: number): number | null {
  // Of the two bounds the one nearer to 1 is the harder to tell.
  const ratio = Math.min(bounds.high, 1 / bounds.low);
  const cv = Math.sqrt(Math.expm1(sd * sd));
  try {
    const needed = Math.max(
      runsNeeded({ cv, ratio, alpha }),
      equivalenceRunsNeeded({ cv, alikeWithin: bounds, alpha }),
    );
    return Math.max(1, needed - runs);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
