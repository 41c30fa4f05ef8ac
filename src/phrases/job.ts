import { jobProfiles } from '../model/index.ts';
import type { JobProfile } from '../model/index.ts';
import { found } from '../comparison/found.ts';
import type { ComparisonEntry } from '../comparison/entry.ts';

/** The work of a comparison, as the model knows it. */
export const jobOf = ({ work }: Pick<ComparisonEntry, 'work'>): JobProfile =>
  found(jobProfiles, work, 'the work');
