import { jobOf } from '../../phrases/job.ts';
import { optionSaid, pollOf } from './poll.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

export const askWords: Record<string, WordsOf> = {
  /** The question as a poll, without its answer. */
  'ask-question': ({ entry, subject, baseline }) => {
    const work = jobOf(entry).name;
    return [
      `In ${work}, how many times as long does ${subject.name} cut as ${baseline.name} until both are equally blunt?`,
    ];
  },
  'ask-options': (scene) => pollOf(scene).map(optionSaid),
};
