import { judgeLog } from '../runs/judge-log.ts';
import type { LogJudgement } from '../runs/judge-log.ts';
import type { ComparisonEntry } from './entry.ts';

/** What the runs of a comparison say of two of its knives, by their ids. */
export const judged = (
  { runs = [], plan }: Pick<ComparisonEntry, 'runs' | 'plan'>,
  knife: string,
  against: string,
  ignoreBatches = false,
): LogJudgement =>
  judgeLog(runs, {
    knife,
    against,
    endPoint: plan?.endPoint,
    numbersRestart: plan?.numbersRestart,
    ignoreBatches,
  });
