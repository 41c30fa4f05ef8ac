/** What the runs say: the measured ratio of two knives' lives, its interval, and a verdict. */

import { studentCdf, studentQuantile } from '../statistics/distributions.ts';
import { equivalenceRunsNeeded } from './equivalence.ts';
import { estimateRatio } from './estimate.ts';
import type { BatchLife } from './estimate.ts';
import { runsNeeded } from './planning.ts';

/** Two ratios between which two knives count as alike in use, below and above 1. */
export interface AlikeBounds {
  low: number;
  high: number;
}

export interface RatioQuestion {
  /** Lives of the first knife, one a sharpening. */
  x: readonly BatchLife[];
  /** Lives of the second, same unit. */
  y: readonly BatchLife[];
  /** Compare within batches only, so that a shift between batches takes no part. */
  withinBatches?: boolean;
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
  /** Lots that hold only one of the knives and say nothing within batches. */
  unusedBatches: string[];
}

/**
 * The ratio of the lives of two knives with its interval and verdict: Welch's on the logarithms, with lognormal maximum
 * likelihood in place of mean and variance where runs ended early or were looked at only now and then; or, within batches,
 * the same with one shift a batch and one scatter for both knives.
 *
 * @throws RangeError for a knife without two runs that ended, a life of 0 or below, runs that do not scatter, a batch left
 * out where it is needed, batches that never hold both knives, or a confidence or bounds outside their limits
 * @example measuredRatio({ x: [120, 150, 180].map((v) => ({ low: v, high: v })), y: [60, 75, 90].map((v) => ({ low: v, high: v })) }).ratio // → 2.000000
 */
export function measuredRatio(question: RatioQuestion): Measured {
  const { x, y, withinBatches = false, confidence = 0.95, alikeWithin = { low: 0.8, high: 1.25 } } = question;
  if (!(confidence >= 0.5 && confidence < 1))
    throw new RangeError(`confidence ${confidence} is not from 0.5 to below 1`);
  if (!(alikeWithin.low > 0 && alikeWithin.low < 1 && alikeWithin.high > 1 && alikeWithin.high < Infinity))
    throw new RangeError(`alikeWithin ${alikeWithin.low} to ${alikeWithin.high} does not lie around 1`);
  const { logRatio: difference, error, df, sd, runs, unusedBatches } = estimateRatio(x, y, withinBatches);
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
    unusedBatches,
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
    // Unreachable: anything else is a fault in the model itself, and goes on as it is.
    if (error instanceof RangeError) return null;
    throw error;
  }
}
