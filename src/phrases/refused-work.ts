import { jobDone, jobOf } from './job.ts';
import type { Scene } from '../scene/scene.ts';

/** That there is no slicing estimate for the comparison’s work, and what is shown instead; nothing where there is one. */
export function refusedWork({
  entry,
  subject,
  baseline,
}: Pick<Scene, 'entry' | 'subject' | 'baseline'>): string {
  return jobOf(entry).slicingChain
    ? ''
    : `There’s no slicing estimate for ${jobDone(entry)}. What follows is how ${subject.name} and ${baseline.name} would slice.`;
}
