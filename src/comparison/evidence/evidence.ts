/** What a comparison and its runs come to, computed from nothing but themselves: the results an evidence bundle states. */
import { compare, predict, checkPrediction } from '../../model/index.ts';
import type { AlikeBounds, Measured, Prediction, Row, PredictionCheck } from '../../model/index.ts';
import { toModel } from '../to-model.ts';
import type { ComparisonEntry } from '../entry.ts';
import { measureLog } from '../../runs/measure.ts';

/** What was asked of the comparison. */
export interface EvidenceQuestion {
  /** Ids of the two knives. */
  knife: string;
  against: string;
  /** Samples of the prediction, and their seed. */
  samples: number;
  seed: number;
  withinBatches: boolean;
  confidence: number;
  alikeWithin: AlikeBounds;
}

export interface Evidence {
  /** Every knife against `against`, by the careful estimate. */
  rows: Pick<Row, 'knife' | 'terms' | 'product' | 'rival' | 'complete'>[];
  predicted: Omit<Prediction, 'variance'>;
  /** The measured ratio, or why there is none. */
  measured: Measured | { why: string };
  /** Null where nothing was measured. */
  predictionCheck: PredictionCheck | null;
}

/**
 * @throws RangeError for a knife that is not in the comparison, or what `predict` and `compare` refuse
 */
export function evidenceOf(entry: ComparisonEntry, question: EvidenceQuestion): Evidence {
  const { knife, against, samples, seed, withinBatches, confidence, alikeWithin } = question;
  const nameOf = (id: string): string => {
    const found = entry.knives.find((candidate) => candidate.id === id);
    if (found === undefined) throw new RangeError(`knife ${id} is not one of the line-up's`);
    return found.name;
  };
  const names = { knife: nameOf(knife), against: nameOf(against) };
  const comparison = { ...toModel(entry), baseline: against };
  const predicted = predict(comparison, { samples, seed }).find((prediction) => prediction.knife === knife);
  if (predicted === undefined) throw new RangeError(`knife ${knife} is not among the predicted`);
  const { variance: _variance, ...band } = predicted;
  const log = measureLog(entry.runs ?? [], { ...names, withinBatches, confidence, alikeWithin });
  return {
    rows: compare(comparison).rows.map(({ knife: id, terms, product, rival, complete }) => ({
      knife: id,
      terms,
      product,
      rival,
      complete,
    })),
    predicted: band,
    measured: log.ok ? log.measured : { why: log.why },
    predictionCheck:
      log.ok && band.low < band.high
        ? checkPrediction({ predicted: band, measured: log.measured, measuredConfidence: confidence })
        : null,
  };
}
