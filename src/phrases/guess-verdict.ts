import { plain } from '../scene/show.ts';

/** Within this, as a ratio, a guess counts as right. */
const called = 0.03;
/** Within this it is close: nobody tells a quarter apart in use. */
const careful = Math.log(1.25);

/**
 * What is said of a guess: kindly, and by how much it was off as a ratio, since these are ratios.
 *
 * @param guess above 0
 * @param held the answer, and the tempting sum where there is one
 */
export function guessVerdict(guess: number, { answer, sum }: { answer: number; sum: number | null }): string {
  const off = Math.log(guess / answer);
  if (Math.abs(off) < called) return 'You’re right.';
  if (sum !== null && Math.abs(Math.log(guess / sum)) < called)
    return 'That is the sum, the answer most people give. Read on to see what it misses.';
  const side = off < 0 ? 'low' : 'high';
  if (Math.abs(off) < careful) return `Close: a little ${side}, by less than a quarter.`;
  if (off * Math.log(answer) < 0 && Math.log(guess) * Math.log(answer) < 0)
    return 'You picked the other knife. Read on to see what this one has going for it.';
  return `Too ${side}: the answer is ${plain(answer / guess, 2)} times your guess.`;
}
