import { jobOf } from '../../phrases/job.ts';
import { headlineOf } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { short } from '../../scene/show.ts';
import { temptingSum } from '../../scene/terms.ts';
import type { PollOption } from './poll.ts';

const holds = ({ low, high }: PollOption, ratio: number): boolean => low <= ratio && ratio < high;

/**
 * What is said of the option that was chosen: where it lies beside the range as that is shown, and whether the tempting
 * sum lies in it.
 */
export function chosenInRange(option: PollOption, scene: Scene): string {
  const mine = `You chose ${option.letter}.`;
  if (!jobOf(scene.entry).slicingChain)
    return `${mine} It has no range beside it: this work has no slicing estimate.`;
  const { low, middle, high } = headlineOf(scene);
  const sum = temptingSum(scene.row.careful);
  if (holds(option, middle)) return `${mine} The middle, ${short(middle)}, lies in it.`;
  const where =
    option.high <= low
      ? 'It is below the range.'
      : option.low > high
        ? 'It is above the range.'
        : `Part of the range lies in it, but the middle, ${short(middle)}, is ${option.low > middle ? 'lower' : 'higher'}.`;
  return sum > 0 && holds(option, sum)
    ? `${mine} ${where} The sum lies in it, the answer most people give.`
    : `${mine} ${where}`;
}
