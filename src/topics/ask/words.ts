import { jobOf } from '../../phrases/job.ts';
import { questionOf } from '../../phrases/question.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

export const askWords: Record<string, WordsOf> = {
  question: questionOf,

  /** The work of the two knives, beside their names. */
  'short-asked-work': ({ entry }) => [jobOf(entry).name],
};
