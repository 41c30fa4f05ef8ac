import { jobOf } from './job.ts';
import type { Scene } from '../scene/scene.ts';

/** That the slicing chain is refused for the comparison's work, and why; nothing where it is not. */
export function refusedWork({ entry, subject, baseline }: Scene): string {
  const job = jobOf(entry);
  return job.slicingChain
    ? ''
    : `${place(job.name)}, ${job.reason}: for this work the slicing chain is refused, and what follows speaks of ${subject.name} and ${baseline.name} as they would slice.`;
}

/** A work is a thing done, or the place where it is done: prying, on a board. */
const place = (name: string): string => (name.startsWith('on ') ? `O${name.slice(1)}` : `In ${name}`);
