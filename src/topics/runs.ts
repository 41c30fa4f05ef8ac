import { runsWords } from '../lineup/runs-words.ts';
import { runDots } from '../plots/run-dots.ts';
import type { Topic } from './topic.ts';

/** What was cut: the log and its verdict. */
export const topic: Topic = { words: runsWords, figures: [runDots] };
