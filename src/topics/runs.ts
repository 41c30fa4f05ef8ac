import { runsNumbers } from '../lineup/runs-numbers.ts';
import { runsWords } from '../lineup/runs-words.ts';
import { planCurve } from '../plots/plan-curve.ts';
import { runDots } from '../plots/run-dots.ts';
import { squaredFigure } from '../plots/squared.ts';
import type { Topic } from './topic.ts';

/** What was cut: the log, its verdict, the square of prediction and measurement, and the plan of the next runs. */
export const topic: Topic = {
  numbers: runsNumbers,
  words: runsWords,
  figures: [runDots, squaredFigure, planCurve],
};
