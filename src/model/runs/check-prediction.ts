/** Prediction and measurement on one axis: what is left over between them, and what both say together. */

import { normalQuantile } from '../statistics/distributions.ts';
import type { RatioInterval } from './ratios.ts';

export interface PredictionCheckQuestion {
  /** The model's prediction of the ratio: middle and ends of its central band. */
  predicted: { median: number; low: number; high: number };
  /** Share of the band's samples; 0.9, that of the model, if left out. */
  predictedShare?: number;
  measured: RatioInterval;
  /** Confidence of the measured interval; 0.95 if left out. */
  measuredConfidence?: number;
}

export interface PredictionCheck {
  /** Measured over predicted, with its central 90%. */
  leftover: RatioInterval;
  /** Both weighted by their inverse variance in logarithms, with the central 90%; `logSd` its standard deviation. */
  combined: RatioInterval & { logSd: number };
  /** Whether 1 lies outside the 90% of the leftover. */
  needsExplaining: boolean;
  /** Standard deviations of the logarithms that the two bands stand for. */
  predictedLogSd: number;
  measuredLogSd: number;
}

/**
 * Squares a predicted ratio with a measured one. Both bands are taken as lognormal with the width they have; the
 * combination believes that neither is off by more than it says, so where `needsExplaining` it is not to be relied on.
 *
 * @throws RangeError for ratios that are not finite, above 0 and in order, bands without width, or shares outside 0–1
 * @example checkPrediction({ predicted: { median: 8.58, low: 8.58 * Math.exp(-1.6449 * 0.208), high: 8.58 * Math.exp(1.6449 * 0.208) }, measured: { ratio: 5, low: 5 * Math.exp(-1.96 * 0.15), high: 5 * Math.exp(1.96 * 0.15) } }).leftover.ratio // → 0.583
 */
export function checkPrediction({
  predicted,
  predictedShare = 0.9,
  measured,
  measuredConfidence = 0.95,
}: PredictionCheckQuestion): PredictionCheck {
  const predictedLogSd = logSdOf(
    'predicted',
    predicted.median,
    predicted.low,
    predicted.high,
    predictedShare,
  );
  const measuredLogSd = logSdOf('measured', measured.ratio, measured.low, measured.high, measuredConfidence);
  const [vp, vm] = [predictedLogSd ** 2, measuredLogSd ** 2];
  const [lp, lm] = [Math.log(predicted.median), Math.log(measured.ratio)];
  const leftover = around(lm - lp, Math.sqrt(vp + vm));
  const logSd = 1 / Math.sqrt(1 / vp + 1 / vm);
  return {
    leftover,
    combined: { ...around((lp / vp + lm / vm) * logSd ** 2, logSd), logSd },
    needsExplaining: leftover.low > 1 || leftover.high < 1,
    predictedLogSd,
    measuredLogSd,
  };
}

function logSdOf(name: string, middle: number, low: number, high: number, share: number): number {
  if (!(low > 0 && middle >= low && high >= middle && high < Infinity))
    throw new RangeError(`${name} ${low}, ${middle}, ${high} are not ratios above 0 in order`);
  if (low === high)
    throw new RangeError(`${name} ${low} to ${high} has no width: without a band it cannot be weighed`);
  if (!(share > 0 && share < 1))
    throw new RangeError(`share ${share} of ${name} is not between 0 and 1, both excluded`);
  return Math.log(high / low) / (2 * normalQuantile((1 + share) / 2));
}

function around(log: number, sd: number): RatioInterval {
  const half = normalQuantile(0.95) * sd;
  return { ratio: Math.exp(log), low: Math.exp(log - half), high: Math.exp(log + half) };
}
