/** How many runs it takes to show that two knives are alike. */

import { normalCdf, studentQuantile } from '../statistics/distributions.ts';
import { memoize } from '../memoize.ts';
import { checkBatches, leastRuns, logSd } from './planning.ts';

/** What is to be shown alike, and how surely. */
export interface EquivalencePlan {
  /** Coefficient of variation of one knife's runs, above 0 and up to 5. */
  cv: number;
  /** Ratios that count as alike, below and above 1; 0.8 and 1.25 if left out. */
  alikeWithin?: { low: number; high: number };
  /** The true ratio, between the two; 1 if left out. */
  ratio?: number;
  /** Chance of showing it, above 0 and below 1; 0.8 if left out. */
  power?: number;
  /** Level of each of the two one-sided tests, 0.000001 to 0.5; 0.05 if left out. */
  alpha?: number;
  /** Batches of material that both knives are cut in, alike; none recorded if 0 or left out. */
  batches?: number;
}

/**
 * Chance that two one-sided t tests (D. J. Schuirmann, Journal of Pharmacokinetics and Biopharmaceutics 15, 1987) both
 * reject: the exact one, by integrating over the scatter as it may be estimated.
 *
 * @param below how many standard errors the true difference lies above the lower bound
 * @param above how many it lies below the upper bound
 * @param df degrees of freedom of the estimated scatter, 1 or above
 * @param alpha level of each test
 * @example equivalencePower(40, 40, 20, 0.05) // → 1.000000
 */
export function equivalencePower(below: number, above: number, df: number, alpha: number): number {
  if (!(df >= 1 && Number.isFinite(df))) throw new RangeError(`df ${df} is not a number of 1 or above`);
  return chanceOfBoth(below, above, df, alpha);
}

const chanceOfBoth = memoize(5000, (below: number, above: number, df: number, alpha: number): number => {
  const limit = studentQuantile(1 - alpha, df);
  // s, the estimated scatter over the true one, has the density s^(df−1)·exp(−df·s²/2) up to a factor, near 1.
  const width = 12 / Math.sqrt(2 * df);
  const from = Math.max(0, 1 - width);
  const to = 1 + width;
  const density = (s: number): number =>
    Math.exp((df === 1 ? 0 : (df - 1) * Math.log(s)) - (df * (s * s - 1)) / 2);
  const both = (s: number): number => normalCdf(above - limit * s) - normalCdf(limit * s - below);
  const turn = Math.min(to, (below + above) / (2 * limit));
  if (turn <= from) return 0;
  return integral((s) => both(s) * density(s), from, turn) / integral(density, from, to);
});

/** Nodes and weights of Gauss and Legendre's rule of five points on −1 to 1. */
const gauss: readonly (readonly [node: number, weight: number])[] = [
  [0, 128 / 225],
  ...[-1, 1].flatMap((side) =>
    [-1, 1].map((inner): [number, number] => {
      const root = 2 * Math.sqrt(10 / 7);
      return [(side * Math.sqrt(5 + inner * root)) / 3, (322 - inner * 13 * Math.sqrt(70)) / 900];
    }),
  ),
];

/** The integral of a smooth function, by Gauss and Legendre's rule panel by panel. */
function integral(f: (s: number) => number, from: number, to: number): number {
  const panels = 24;
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1)
    for (const [node, weight] of gauss) sum += weight * f(from + half * (2 * panel + 1 + node));
  return sum * half;
}

/**
 * Runs a knife for two one-sided tests on logarithms to show two knives as good as equal, the same number for both, with
 * the degrees of freedom the analysis will have: 2n − 2 without batches, 2n − 1 − L within L batches.
 *
 * @throws RangeError for a cv, bounds, ratio, power, alpha or batches outside the limits of `EquivalencePlan`, or where over a
 * million are needed
 * @example equivalenceRunsNeeded({ cv: 0.2 }) // → 15
 * @example equivalenceRunsNeeded({ cv: 0.1, batches: 3 }) // → 5
 */
export function equivalenceRunsNeeded(plan: EquivalencePlan): number {
  const { below, above, power, alpha } = check(plan);
  const { batches = 0 } = plan;
  const error = (n: number): number => logSd(plan.cv) * Math.sqrt(2 / n);
  return leastRuns(
    (n) => equivalencePower(below / error(n), above / error(n), 2 * n - 1 - Math.max(1, batches), alpha),
    power,
    `ratio ${plan.ratio ?? 1} is too close to a bound for this scatter`,
    Math.max(2, batches),
  );
}

function check(plan: EquivalencePlan): { below: number; above: number; power: number; alpha: number } {
  const { cv, alikeWithin = { low: 0.8, high: 1.25 }, ratio = 1, power = 0.8, alpha = 0.05 } = plan;
  const { low, high } = alikeWithin;
  if (!(cv > 0 && cv <= 5)) throw new RangeError(`cv ${cv} is not above 0 and up to 5`);
  if (!(low > 0 && low < 1 && high > 1 && high < Infinity))
    throw new RangeError(`alikeWithin ${low} to ${high} does not lie around 1`);
  if (!(ratio > low && ratio < high))
    throw new RangeError(`ratio ${ratio} is not between ${low} and ${high}, both excluded`);
  checkBatches(plan.batches ?? 0);
  if (!(power > 0 && power < 1)) throw new RangeError(`power ${power} is not between 0 and 1, both excluded`);
  if (!(alpha >= 1e-6 && alpha <= 0.5))
    throw new RangeError(`alpha ${alpha} is not between 0.000001 and 0.5`);
  return { below: Math.log(ratio / low), above: Math.log(high / ratio), power, alpha };
}
