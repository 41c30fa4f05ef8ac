/** How many runs it takes to tell a ratio apart from the scatter. */

import { noncentralTCdf, studentQuantile } from '../statistics/distributions.ts';
import { memoize } from '../memoize.ts';

/** What is to be distinguished, and how surely. */
export interface Plan {
  /** Coefficient of variation of one knife's runs, above 0 and up to 5: 0.1 is 10%. */
  cv: number;
  /** The true ratio of the two lives that the test should notice, above 0 and not 1. */
  ratio: number;
  /** Chance of noticing it, above `alpha` and below 1; 0.8 if left out. */
  power?: number | undefined;
  /** Chance of calling equal knives different, 0.000001 to 0.5; 0.05 if left out. */
  alpha?: number | undefined;
  /** Batches of material that both knives are cut in, alike; none recorded if 0 or left out. */
  batches?: number | undefined;
}

/** Beyond this many runs the question is not answered by cutting. */
const MOST_RUNS = 1_000_000;

/**
 * Standard deviation of the logarithm of a lognormal variable with coefficient of variation `cv`.
 *
 * @param cv 0 or above; 0.1 is 10%
 * @example logSd(0.1) // → 0.099751
 */
export function logSd(cv: number): number {
  if (!(cv >= 0 && Number.isFinite(cv))) throw new RangeError(`cv ${cv} is not a number of 0 or above`);
  return Math.sqrt(Math.log1p(cv * cv));
}

/** Chance that a two-sided t test at level alpha notices a difference of `delta` standard errors; both tails count. */
const tTestPower = memoize(5000, (delta: number, df: number, alpha: number): number => {
  const limit = studentQuantile(1 - alpha / 2, df);
  return 1 - noncentralTCdf(limit, df, delta) + noncentralTCdf(-limit, df, delta);
});

/**
 * Chance that a pooled two-sample t test notices two means that lie `effect` standard deviations apart.
 *
 * @param effect difference over the standard deviation of one run, 0 or above
 * @param n runs a knife, whole, at least 2
 * @param alpha two-sided level, 0.000001 to 0.5
 * @throws RangeError for an effect, n or alpha outside those limits
 * @example twoSamplePower(0.5, 64, 0.05) // → 0.80146
 */
export function twoSamplePower(effect: number, n: number, alpha = 0.05): number {
  if (!(effect >= 0 && Number.isFinite(effect))) {
    throw new RangeError(`effect ${effect} is not a number of 0 or above`);
  }
  if (!Number.isInteger(n) || n < 2)
    throw new RangeError(`runs a knife ${n} is not a whole number of 2 or above`);
  checkAlpha(alpha);
  return tTestPower(effect * Math.sqrt(n / 2), 2 * n - 2, alpha);
}

function checkCv(cv: number): void {
  if (!(cv > 0 && cv <= 5)) throw new RangeError(`cv ${cv} is not above 0 and up to 5`);
}

function checkAlpha(alpha: number): void {
  if (!(alpha >= 1e-6 && alpha <= 0.5))
    throw new RangeError(`alpha ${alpha} is not between 0.000001 and 0.5`);
}

function check({ cv, ratio, power = 0.8, alpha = 0.05 }: Plan): { power: number; alpha: number } {
  checkCv(cv);
  if (!(ratio > 0 && Number.isFinite(ratio) && ratio !== 1)) {
    throw new RangeError(`ratio ${ratio} is not a number above 0 other than 1`);
  }
  checkAlpha(alpha);
  if (!(power > alpha && power < 1))
    throw new RangeError(`power ${power} is not between alpha ${alpha} and 1`);
  return { power, alpha };
}

const tooClose = (ratio: number): string => `ratio ${ratio} is too close to 1 for this scatter`;

/** The least n of `from` or above whose power is enough; power grows with n. */
export function leastRuns(powerAt: (n: number) => number, power: number, why: string, from = 2): number {
  let enough = from;
  let short = from - 1;
  while (powerAt(enough) < power) {
    short = enough;
    enough *= 2;
    if (enough > MOST_RUNS) {
      throw new RangeError(`${why}: more than ${MOST_RUNS} runs a knife`);
    }
  }
  while (enough - short > 1) {
    const middle = Math.floor((short + enough) / 2);
    if (powerAt(middle) < power) short = middle;
    else enough = middle;
  }
  return enough;
}

export function checkBatches(batches: number): void {
  if (!Number.isInteger(batches) || batches < 0 || batches > MOST_RUNS)
    throw new RangeError(`batches ${batches} is not a whole number from 0 to ${MOST_RUNS}`);
}

/** Power of the pooled t test within batches, each of which takes one degree of freedom beyond the first. */
const powerWithin = (effect: number, runs: number, batches: number, alpha: number): number =>
  tTestPower(effect * Math.sqrt(runs / 2), 2 * runs - 1 - Math.max(1, batches), alpha);

/**
 * Runs a knife, each a sharpening of its own, for a pooled t test on logarithms to notice a true ratio of lives:
 * exact power by the noncentral t, both tails counted, the same number for both knives. With the degrees of freedom the
 * analysis will have: 2n − 2 without batches, 2n − 1 − L within L batches, and at least one run a knife in each.
 *
 * Below 6 a knife a judge that does not assume equal scatter notices less often than this says: `simulatedPower`.
 *
 * @throws RangeError for a cv, ratio, power, alpha or batches outside the limits of `Plan`, or where over a million are
 * needed
 * @example runsNeeded({ cv: 0.2, ratio: 1.2 }) // → 20
 * @example runsNeeded({ cv: 0.1, ratio: 1.1 }) // → 19
 * @example runsNeeded({ cv: 0.1, ratio: 1.2, batches: 4 }) // → 7
 */
export function runsNeeded(plan: Plan): number {
  const { power, alpha } = check(plan);
  const { cv, ratio, batches = 0 } = plan;
  checkBatches(batches);
  const effect = Math.abs(Math.log(ratio)) / logSd(cv);
  const least = Math.max(2, batches);
  return leastRuns((n) => powerWithin(effect, n, batches, alpha), power, tooClose(ratio), least);
}

/**
 * Chance that a pooled t test on logarithms notices a true ratio of lives with so many runs a knife, by the same formula
 * as `runsNeeded`.
 *
 * @param p `cv` above 0 and up to 5; `ratio` above 0, with 1 the chance of a false alarm; `runs` a knife, whole, from 2
 * or the number of batches to a million; `alpha` and `batches` as for `Plan`
 * @throws RangeError for values outside those limits
 * @example powerOfRuns({ runs: 5, cv: 0.1, ratio: 1.25, batches: 3 }) // → 0.836
 */
export function powerOfRuns(p: {
  runs: number;
  cv: number;
  ratio: number;
  alpha?: number | undefined;
  batches?: number | undefined;
}): number {
  const { runs, cv, ratio, alpha = 0.05, batches = 0 } = p;
  checkRuns(p);
  checkAlpha(alpha);
  return powerWithin(Math.abs(Math.log(ratio)) / logSd(cv), runs, batches, alpha);
}

/** Refuses runs, cv, ratio and batches that cannot be planned with. */
export function checkRuns({
  runs,
  cv,
  ratio,
  batches = 0,
}: {
  runs: number;
  cv: number;
  ratio: number;
  batches?: number | undefined;
}): void {
  checkCv(cv);
  if (!(ratio > 0 && Number.isFinite(ratio)))
    throw new RangeError(`ratio ${ratio} is not a finite number above 0`);
  checkBatches(batches);
  const least = Math.max(2, batches);
  if (!Number.isInteger(runs) || runs < least || runs > MOST_RUNS)
    throw new RangeError(`runs a knife ${runs} is not a whole number from ${least} to ${MOST_RUNS}`);
}

/**
 * Chance that a paired t test notices two means that lie `effect` standard deviations of one run apart.
 *
 * @param effect difference over the standard deviation of one run, 0 or above
 * @param pairs whole, at least 2
 * @param correlation of the two values within a pair, −1 to below 1
 * @param alpha two-sided level, 0.000001 to 0.5
 * @throws RangeError for values outside those limits
 * @example pairedPower(0.92065, 12, 0.5) // → 0.82682
 */
export function pairedPower(effect: number, pairs: number, correlation: number, alpha = 0.05): number {
  if (!(effect >= 0 && Number.isFinite(effect)))
    throw new RangeError(`effect ${effect} is not a number of 0 or above`);
  if (!Number.isInteger(pairs) || pairs < 2)
    throw new RangeError(`pairs ${pairs} is not a whole number of 2 or above`);
  if (!(correlation >= -1 && correlation < 1))
    throw new RangeError(`correlation ${correlation} is not from -1 to below 1`);
  checkAlpha(alpha);
  return tTestPower(effect * Math.sqrt(pairs / (2 * (1 - correlation))), pairs - 1, alpha);
}

/**
 * Pairs of runs, each pair on the same stock, for a paired t test on logarithms to notice a true ratio of lives.
 *
 * @param plan as for `runsNeeded`, with `correlation`, that of the two logarithms within a pair: −1 to below 1
 * @throws RangeError as `runsNeeded`, and for a correlation outside its limits
 * @example pairsNeeded({ cv: 0.2, ratio: 1.2, correlation: 0.5 }) // → 12
 */
export function pairsNeeded(plan: Omit<Plan, 'batches'> & { correlation: number }): number {
  const { power, alpha } = check(plan);
  const effect = Math.abs(Math.log(plan.ratio)) / logSd(plan.cv);
  const chance = (n: number): number => pairedPower(effect, n, plan.correlation, alpha);
  return leastRuns(chance, power, tooClose(plan.ratio));
}
