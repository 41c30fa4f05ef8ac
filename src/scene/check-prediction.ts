import { checkPrediction } from '../model/index.ts';
import type { PredictionCheck } from '../model/index.ts';
import { runsOf } from './runs.ts';
import type { Scene } from './scene.ts';
import { isExact, sureOf } from './sure.ts';

/** Prediction and measurement squared; null where one of them has no band. */
export function predictionCheckOf(scene: Scene): PredictionCheck | null {
  const { measured, log } = runsOf(scene);
  const sure = sureOf(scene);
  if (measured === null || isExact(sure)) return null;
  return checkPrediction({ predicted: sure, measured, measuredConfidence: log.confidence });
}
