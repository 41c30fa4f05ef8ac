import type { Progress } from '../../teach/check/progress.ts';

const count = (many: number, what: string): string => `${many} ${what}${many === 1 ? '' : 's'}`;

/** What the list of lessons says of all that was done: nothing yet is ''. There is no progress where nothing can be kept. */
export function courseSaid(progress: Progress | null): string {
  if (!progress)
    return 'This browser lets the page keep nothing, so nothing is noted. The lessons work all the same.';
  const done = Object.values(progress.right);
  const total = done.reduce((sum, right) => sum + right, 0);
  return total === 0
    ? ''
    : `${count(total, 'problem')} answered rightly, in ${count(done.length, 'lesson')}.`;
}
