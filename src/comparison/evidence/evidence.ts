/** What a comparison and its runs come to, computed from nothing but themselves: the results an evidence bundle states. */
import { compare, predict, checkPrediction } from '../../model/index.ts';
import type { Prediction, Row, PredictionCheck } from '../../model/index.ts';
import { toModel } from '../to-model.ts';
import type { ComparisonEntry } from '../entry.ts';
import { bringCurves } from '../../runs/bring-curves.ts';
import { judged } from '../judged.ts';
import type { LogJudgement } from '../../runs/judge-log.ts';
import { measuredOf } from '../../runs/judge-log.ts';

/** What was asked of the comparison. */
export interface EvidenceQuestion {
  /** Ids of the two knives. */
  knife: string;
  against: string;
  /** Samples of the prediction, and their seed. */
  samples: number;
  seed: number;
}

export interface Evidence {
  /** Every knife against `against`, by the careful estimate. */
  rows: Pick<Row, 'knife' | 'terms' | 'multiplied' | 'added' | 'toLimit'>[];
  predicted: Omit<Prediction, 'variance'>;
  /** What the runs say of the two, and by which method. */
  judged: Omit<LogJudgement, 'lives'>;
  /** Null where nothing was measured. */
  predictionCheck: PredictionCheck | null;
}

/**
 * @throws RangeError for a knife that is not in the comparison, or what `predict` and `compare` refuse
 */
export function evidenceOf(entry: ComparisonEntry, question: EvidenceQuestion): Evidence {
  const { knife, against, samples, seed } = question;
  for (const id of [knife, against])
    if (!entry.knives.some((candidate) => candidate.id === id))
      throw new RangeError(`knife ${id} is not one of the comparison's`);
  const comparison = { ...toModel(entry), baseline: against };
  const predicted = predict(comparison, { samples, seed }).find((prediction) => prediction.knife === knife);
  if (predicted === undefined) throw new RangeError(`knife ${knife} is not among the predicted`);
  const { variance: _variance, ...band } = predicted;
  bringCurves();
  const { lives: _lives, ...log } = judged(entry, knife, against);
  const measured = measuredOf(log);
  return {
    rows: compare(comparison).rows.map(({ knife: id, terms, multiplied, added, toLimit }) => ({
      knife: id,
      terms,
      multiplied,
      added,
      toLimit,
    })),
    predicted: band,
    judged: log,
    predictionCheck:
      measured && band.low < band.high
        ? checkPrediction({ predicted: band, measured, measuredConfidence: log.confidence })
        : null,
  };
}
