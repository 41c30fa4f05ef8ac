import { jobProfiles } from '../model/index.ts';
import type { JobProfile } from '../model/index.ts';
import { found } from '../comparison/found.ts';
import type { ComparisonEntry } from '../comparison/entry.ts';

/** The work of a comparison, as the model knows it. */
export const jobOf = ({ work }: Pick<ComparisonEntry, 'work'>): JobProfile =>
  found(jobProfiles, work, 'the work');

/** What is done in each work, in words that follow “for”. */
const doing: Readonly<Record<JobProfile['id'], string>> = {
  card: 'cutting card and paper board',
  rope: 'cutting natural-fibre rope',
  wood: 'carving wood',
  boards: 'cutting bone or frozen food on a board',
  prying: 'prying and scraping',
};

/** What is done in the work of a comparison: “cutting natural-fibre rope”. */
export const jobDone = (entry: Pick<ComparisonEntry, 'work'>): string => doing[jobOf(entry).id];
