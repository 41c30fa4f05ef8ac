/** The one function that judges a log: is one knife's life a real multiple of the other's? */

import { studentCdf, studentQuantile } from '../statistics/distributions.ts';
import { estimateCensored } from './judge-censored.ts';
import { closed, edgeCount, ofKnife, readLog } from './judge-log.ts';
import type { LeftOut, LoggedRun, ReadLog } from './judge-log.ts';
import { estimateWithinBatches } from './judge-variance.ts';
import type { Estimate, NoEstimate } from './judge-variance.ts';

export interface JudgeQuestion {
  /** The knife looked at, as named in the log. */
  knife: string;
  /** The one it is compared with. */
  against: string;
  /** Chance of calling equal knives different, 0.000001 to 0.5; 0.05 if left out. */
  alpha?: number | undefined;
  /** Ratios from 1/alike to alike count as good as equal; above 1 and up to 10, 1.25 if left out. */
  alike?: number | undefined;
  /** How many pairs of knives are judged at once, 1 to 1000; 1 if left out. */
  family?: number | undefined;
}

export type RunsVerdict =
  'longer' | 'shorter' | 'as good as equal' | 'not distinguished' | 'cannot be separated' | 'too few runs';

export interface Judgement {
  verdict: RunsVerdict;
  /** How many times as long `knife` lasts as `against`, by geometric means; null where the log has none. */
  ratio: number | null;
  /** Ends of the interval of confidence 1 − alpha/family; null where there is none. */
  low: number | null;
  high: number | null;
  /** Ends of the 90% interval that is looked at for "as good as equal"; 1 − 0.1/family of a family. */
  low90: number | null;
  high90: number | null;
  /** Sharpenings of each of the two knives that enter the ratio. */
  runs: Record<string, number>;
  /** Batches that enter, in the order of the log; empty where none is recorded. */
  batches: string[];
  /** Runs of the two knives that do not enter, by their place in the log, counted from 0. */
  leftOut: LeftOut[];
  /** The name of the method, or why there is no interval. */
  method: string;
  /** Degrees of freedom of the interval; null where there is none. */
  df: number | null;
}

/** The chance on each side that "as good as equal" is said wrongly, as usual since Schuirmann (1987). */
const ALIKE_LEVEL = 0.05;
/** A larger power of e is no longer a finite number, so an interval stops there. */
const LARGEST_LOG = 709;

const asRatio = (log: number): number => Math.exp(Math.min(LARGEST_LOG, Math.max(-LARGEST_LOG, log)));

type Settings = Required<{ [K in keyof JudgeQuestion]: NonNullable<JudgeQuestion[K]> }>;

function check({ knife, against, alpha = 0.05, alike = 1.25, family = 1 }: JudgeQuestion): Settings {
  if (knife === against)
    throw new RangeError(`against ${against} is the knife itself: two different knives are needed`);
  if (!(alpha >= 1e-6 && alpha <= 0.5))
    throw new RangeError(`alpha ${alpha} is not between 0.000001 and 0.5`);
  if (!(alike > 1 && alike <= 10)) throw new RangeError(`alike ${alike} is not above 1 and up to 10`);
  if (!Number.isInteger(family) || family < 1 || family > 1000)
    throw new RangeError(`family ${family} is not a whole number from 1 to 1000`);
  return { knife, against, alpha, alike, family };
}

function estimate({ cells, batches }: ReadLog): Estimate | NoEstimate {
  if ([0, 1].some((knife) => ofKnife(cells, knife).length === 0))
    return { logRatio: null, why: 'a knife has no run that can be compared' };
  const blocked = batches.length > 0;
  return cells.every(closed) ? estimateWithinBatches(cells, blocked) : estimateCensored(cells, blocked);
}

/** What can be said of an estimate, a real difference before "as good as equal". */
function decide(
  { logRatio, variance, df }: Estimate,
  { alpha, alike, family }: Settings,
): 'longer' | 'shorter' | 'as good as equal' | 'not distinguished' {
  const error = Math.sqrt(variance);
  // Each pair of a family gets an equal part of the chance of an error (Bonferroni): valid even though pairs share knives.
  if (2 * studentCdf(-Math.abs(logRatio) / error, df) < alpha / family)
    return logRatio > 0 ? 'longer' : 'shorter';
  const room = Math.log(alike) - Math.abs(logRatio);
  return studentCdf(-room / error, df) < ALIKE_LEVEL / family ? 'as good as equal' : 'not distinguished';
}

/** Only the verdict, without the intervals, which take ten times as long. */
export function verdictOf(runs: readonly LoggedRun[], question: JudgeQuestion): RunsVerdict {
  const settings = check(question);
  const log = readLog(runs, [settings.knife, settings.against]);
  if (log.apart) return 'cannot be separated';
  const found = estimate(log);
  return 'why' in found ? 'too few runs' : decide(found, settings);
}

/**
 * Judges two knives of a log. Their lives are compared as logarithms, within the batches that both share; an edge counts
 * once however often it was cut, and each knife may scatter in its own way. Two one-sided tests say "as good as equal"
 * (D. J. Schuirmann, Journal of Pharmacokinetics and Biopharmaceutics 15, 1987). Of a family of pairs every statement
 * holds at once, by Bonferroni's inequality.
 *
 * In simulated logs of equal knives it says "longer" or "shorter" in at most 6.5 of 100, at the usual 5%.
 *
 * @param runs lives in any unit, the same for all; runs of other knives are ignored
 * @throws RangeError for a life that is none, a knife against itself, or an alpha, alike or family outside its limits;
 * a log that is too short, or without a shared batch, gets a verdict that says so
 * @example judgeRuns([100, 110, 120, 200, 220, 240].map((cuts, i) => ({ knife: i < 3 ? 'plover' : 'dunlin', edge: `${i}`, life: { cuts } })), { knife: 'dunlin', against: 'plover' }).verdict // → 'longer'
 * @example judgeRuns([100, 110, 120, 200, 220, 240].map((cuts, i) => ({ knife: i < 3 ? 'plover' : 'dunlin', edge: `${i}`, life: { cuts } })), { knife: 'dunlin', against: 'plover' }).ratio // → 2.000000
 */
export function judgeRuns(runs: readonly LoggedRun[], question: JudgeQuestion): Judgement {
  const settings = check(question);
  const { knife, against, alpha, family } = settings;
  const log = readLog(runs, [knife, against]);
  const shown = {
    ratio: null,
    low: null,
    high: null,
    low90: null,
    high90: null,
    runs: { [knife]: edgeCount(ofKnife(log.cells, 0)), [against]: edgeCount(ofKnife(log.cells, 1)) },
    batches: log.batches,
    leftOut: log.leftOut,
    df: null,
  };
  if (log.apart) {
    const method = 'none: no batch holds both knives, so knife and batch cannot be separated';
    return { verdict: 'cannot be separated', ...shown, method };
  }
  const found = estimate(log);
  if ('why' in found) {
    const ratio = found.logRatio === null ? null : asRatio(found.logRatio);
    return { verdict: 'too few runs', ...shown, ratio, method: `none: ${found.why}` };
  }
  const { logRatio, variance, df } = found;
  const half = studentQuantile(1 - alpha / family / 2, df) * Math.sqrt(variance);
  const half90 = studentQuantile(1 - ALIKE_LEVEL / family, df) * Math.sqrt(variance);
  return {
    ...shown,
    verdict: decide(found, settings),
    ratio: asRatio(logRatio),
    low: asRatio(logRatio - half),
    high: asRatio(logRatio + half),
    low90: asRatio(logRatio - half90),
    high90: asRatio(logRatio + half90),
    method: family > 1 ? `${found.method}; Bonferroni for ${family} pairs` : found.method,
    df,
  };
}
