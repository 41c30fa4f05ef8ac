/** What every comparison of two series of runs needs: checked readings, their mean and their variance. */

import { studentQuantile } from '../statistics/distributions.ts';

/** A series boiled down: how many, their mean, and the variance with n − 1. */
export interface Summary {
  n: number;
  mean: number;
  variance: number;
}

/**
 * Mean and variance of a series.
 *
 * @param name what the series is called in the message of a refusal
 * @param positive refuse readings that are not above 0, as ratios and logarithms need
 * @throws RangeError for fewer than two readings or one that is not a finite number
 */
export function summarise(values: readonly number[], name: string, positive = false): Summary {
  if (values.length < 2) throw new RangeError(`${name} has ${values.length} readings, at least 2 are needed`);
  values.forEach((value, i) => {
    if (!Number.isFinite(value) || (positive && value <= 0)) {
      throw new RangeError(`${name}[${i}] ${value} is not a finite number${positive ? ' above 0' : ''}`);
    }
  });
  const n = values.length;
  const mean = values.reduce((sum, v) => sum + v, 0) / n;
  const variance = values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (n - 1);
  return { n, mean, variance };
}

/** Half width of an interval of the given confidence around a difference with squared standard error `va + vb`. */
export function halfWidth(df: number, squaredError: number, confidence: number): number {
  if (!(confidence > 0 && confidence < 1)) {
    throw new RangeError(`confidence ${confidence} is not between 0 and 1, both excluded`);
  }
  return studentQuantile((1 + confidence) / 2, df) * Math.sqrt(squaredError);
}

/** Welch–Satterthwaite degrees of freedom for two squared standard errors. */
export function satterthwaite(va: number, na: number, vb: number, nb: number): number {
  // Divided through by the larger, so that very small or large readings do not under- or overflow.
  const unit = Math.max(va, vb);
  const [a, b] = [va / unit, vb / unit];
  return (a + b) ** 2 / (a ** 2 / (na - 1) + b ** 2 / (nb - 1));
}
