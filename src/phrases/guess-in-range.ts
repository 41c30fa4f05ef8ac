import { headlineOf } from '../scene/headline.ts';
import type { Scene } from '../scene/scene.ts';
import { inFigures, short } from '../scene/show.ts';
import { temptingSum } from '../scene/terms.ts';
import { jobOf } from './job.ts';

/** Whether a guess is the sum of the gains, to the two figures that it is shown with. */
const isSum = (guess: number, sum: number): boolean => sum > 0 && inFigures(guess, 2) === inFigures(sum, 2);

/**
 * What is said of a guess: where it lies beside the range as that is shown, and whether it is the tempting sum.
 *
 * @param guess times as long, above 0
 */
export function guessInRange(guess: number, scene: Scene): string {
  const mine = `Your guess, ${short(guess)},`;
  if (!jobOf(scene.entry).slicingChain)
    return `${mine} has no range beside it: this work has no slicing estimate.`;
  const { low, high } = headlineOf(scene);
  const side = guess < low ? 'below' : guess > high ? 'above' : 'inside';
  const said = `${mine} is ${side} the range.`;
  return isSum(guess, temptingSum(scene.row.careful))
    ? `${said} That is the sum, the answer most people give.`
    : said;
}

/** Within this, as a ratio, a guess counts as right. */
const right = 0.03;
/** Within this it is close. */
const close = 0.1;

/**
 * What is said of a guess at one number: whether it is right, the tempting sum, too low or too high.
 *
 * @param guess above 0
 * @param held the answer, and the tempting sum where there is one
 */
export function guessOfSum(guess: number, { answer, sum }: { answer: number; sum: number | null }): string {
  const mine = `Your guess, ${short(guess)},`;
  if (Math.abs(Math.log(guess / answer)) < right) return `${mine} is right.`;
  if (sum !== null && isSum(guess, sum)) return `${mine} is the sum, the answer most people give.`;
  const side = `too ${guess < answer ? 'low' : 'high'}`;
  return Math.abs(Math.log(guess / answer)) < close
    ? `${mine} is close, a little ${side}.`
    : `${mine} is ${side}.`;
}
