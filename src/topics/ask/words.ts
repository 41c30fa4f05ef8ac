import { jobOf } from '../../phrases/job.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

export const askWords: Record<string, WordsOf> = {
  /** The question as a poll, without its answer. */
  'ask-question': ({ entry, subject, baseline }) => [
    `In ${jobOf(entry).name}, how many times as long should ${subject.name} cut as ${baseline.name} until both are equally blunt?`,
  ],

  /** The work of the two knives, beside their names. */
  'ask-work': ({ entry }) => [jobOf(entry).name],
};
