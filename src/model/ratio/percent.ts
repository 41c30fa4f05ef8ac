import { refuse, within } from '../check.ts';

const everyPercent = (percents: readonly number[]): readonly number[] => {
  for (const percent of percents) {
    if (!Number.isFinite(percent) || percent <= -100) {
      refuse(`percentage ${String(percent)}% is not a number above −100%`);
    }
  }
  return percents;
};

/**
 * The multiplier of several percentages taken one after another: Π(1 + p/100). Of none it is 1.
 *
 * @param percents each above −100
 * @throws RangeError naming the percentage that is not
 * @example compound([-20, -25]) // → 0.6
 * @example compound([40, 40]) // → 1.96
 */
export function compound(percents: readonly number[]): number {
  return Math.exp(everyPercent(percents).reduce((sum, percent) => sum + Math.log1p(percent / 100), 0));
}

/**
 * The tempting sum that stands beside the product: 1 + Σp/100. It can fall below 0, which shows that it is wrong.
 *
 * @param percents each above −100
 * @throws RangeError naming the percentage that is not
 * @example additiveGuess([40, 40]) // → 1.8
 */
export function additiveGuess(percents: readonly number[]): number {
  return 1 + everyPercent(percents).reduce((sum, percent) => sum + percent, 0) / 100;
}

/**
 * The percentage that undoes a change of p per cent: −p/(1 + p/100).
 *
 * @param percent above −100
 * @throws RangeError naming the percentage that is not
 * @example undoPercent(25) // → -20
 */
export function undoPercent(percent: number): number {
  everyPercent([percent]);
  return -percent / (1 + percent / 100);
}

/**
 * "p per cent less of something that hurts", in its three readings, each a factor.
 *
 * @param lessPercent 0 to below 100
 * @param exponent of the damped reading, 0–1
 * @throws RangeError outside these ranges
 * @example percentReadings(40, 0.5).inverse // → 1.66667
 */
export function percentReadings(
  lessPercent: number,
  exponent: number,
): { faceValue: number; inverse: number; damped: number } {
  const p = within('percentage', lessPercent, 0, 99.999999, '%') / 100;
  const inverse = 1 / (1 - p);
  return { faceValue: 1 + p, inverse, damped: inverse ** within('exponent', exponent, 0, 1) };
}
