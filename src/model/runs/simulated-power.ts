/** How often the judge of logs itself says "a real difference", by simulation. */

import { normalScore } from '../statistics/normal-score.ts';
import { uniformStream } from '../statistics/random.ts';
import { verdictOf } from './judge.ts';
import type { LoggedRun } from './judge-log.ts';
import { checkRuns, logSd } from './planning.ts';

/** Simulated logs: a chance of a half is then good to 0.8 points (one standard error), of longer logs to 1.6. */
const logsOf = (runs: number): number => (runs > 10 ? 1000 : 4000);
/** More runs than this are left to the formula, which is then as good and takes no time. */
const MOST_RUNS = 50;

interface Plan {
  /** Runs a knife, each a sharpening of its own; whole, from 2 or the number of batches to 50. */
  runs: number;
  /** Coefficient of variation of one knife's runs, above 0 and up to 5. */
  cv: number;
  /** The true ratio of the two lives, above 0. */
  ratio: number;
  /** Batches of material, each with runs of both knives; none recorded if 0 or left out. */
  batches?: number | undefined;
  /** How many pairs of knives are judged at once, 1 to 1000; 1 if left out. */
  family?: number | undefined;
  /** A whole number from 0 to 4294967295; the same seed gives the same answer. */
  seed: number;
}

const isDifference = (runs: readonly LoggedRun[], family: number | undefined): boolean =>
  ['longer', 'shorter'].includes(verdictOf(runs, { knife: 'x', against: 'y', family }));

/** A log of so many runs a knife, without lives yet. Batches shift both knives alike, which the judge takes off again. */
function emptyLog(runs: number, batches = 0): Omit<LoggedRun, 'life'>[] {
  return Array.from({ length: runs }, (_, i) => i).flatMap((i) =>
    ['x', 'y'].map((knife) => ({
      knife,
      edge: `${i}`,
      batch: batches === 0 ? undefined : `${i % batches}`,
    })),
  );
}

function check({ runs, ...plan }: Plan, most: number): void {
  checkRuns({ runs, ...plan });
  if (most > MOST_RUNS)
    throw new RangeError(`runs a knife ${most} are more than ${MOST_RUNS}: too many to simulate`);
}

/** Draws lives one after the other: lognormal, those of knife x `ratio` times as long. */
function drawing({ cv, ratio, seed }: Plan): (run: Omit<LoggedRun, 'life'>) => LoggedRun {
  const next = uniformStream(seed);
  const sd = logSd(cv);
  return (run) => ({
    ...run,
    life: { cuts: Math.exp(sd * normalScore(next())) * (run.knife === 'x' ? ratio : 1) },
  });
}

/**
 * The power of `judgeRuns`: in what share of simulated logs it says "longer" or "shorter". Below 6 runs a knife it
 * notices less than `powerOfRuns` says, since it does not assume that both knives scatter alike.
 *
 * @returns a share of 4000 logs, of 1000 beyond 10 runs a knife; 0 to 1
 * @throws RangeError for values outside the limits given, or a seed that is none
 * @example simulatedPower({ runs: 6, cv: 0.1, ratio: 2, seed: 1 }) // → 1
 */
export function simulatedPower(plan: Plan): number {
  check(plan, plan.runs);
  const draw = drawing(plan);
  const log = emptyLog(plan.runs, plan.batches);
  let noticed = 0;
  const logs = logsOf(plan.runs);
  for (let i = 0; i < logs; i += 1) if (isDifference(log.map(draw), plan.family)) noticed += 1;
  return noticed / logs;
}

/**
 * How often equal knives are called different where the log is looked at before it is finished, and runs are added as
 * long as there is no difference to be seen: every look is another chance to be wrong.
 *
 * @param plan runs at the first look; `topUps`, the runs a knife added after each look, whole and 1 or above, up to 10
 * @returns a share of 4000 logs, of 1000 beyond 10 runs a knife; 0 to 1
 * @throws RangeError for values outside the limits given, or more than 50 runs a knife in the end
 * @example toppedUpFalseAlarms({ runs: 4, topUps: [2, 2], cv: 0.1, seed: 1 }) > toppedUpFalseAlarms({ runs: 4, topUps: [], cv: 0.1, seed: 1 }) // → true
 */
export function toppedUpFalseAlarms(plan: Omit<Plan, 'ratio'> & { topUps: readonly number[] }): number {
  const { runs, topUps, batches } = plan;
  if (topUps.length > 10) throw new RangeError(`topUps are ${topUps.length}, at most 10 are allowed`);
  for (const more of topUps)
    if (!Number.isInteger(more) || more < 1)
      throw new RangeError(`topUps ${more} is not a whole number of 1 or above`);
  const looks = topUps.reduce<number[]>((all, more) => [...all, (all.at(-1) ?? runs) + more], [runs]);
  const most = Math.max(...looks);
  check({ ...plan, ratio: 1 }, most);
  const draw = drawing({ ...plan, ratio: 1 });
  const log = emptyLog(most, batches);
  let alarms = 0;
  const logs = logsOf(most);
  for (let i = 0; i < logs; i += 1) {
    const drawn = log.map(draw);
    // Two runs of every number: one a knife.
    if (looks.some((n) => isDifference(drawn.slice(0, 2 * n), plan.family))) alarms += 1;
  }
  return alarms / logs;
}
