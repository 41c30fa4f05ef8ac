/** How large a scatter may be that only a few runs have shown. */

import { chiSquareQuantile } from '../statistics/chi-square.ts';
import { logSd } from './planning.ts';

/** The chance that a limit lies above the true scatter. */
const SHARE = 0.8;

/**
 * The upper 80% limit of a variance over the variance seen, for normal values: ν/χ²(20%, ν).
 *
 * @param df degrees of freedom of the variance seen, above 0 and up to 10000
 * @example upperVarianceFactor(5) // → 2.1344
 */
export const upperVarianceFactor = (df: number): number => df / chiSquareQuantile(1 - SHARE, df);

/**
 * The coefficient of variation to plan with after a pilot: its upper 80% limit. A pilot of few runs shows too little
 * scatter in about half of all tries, and the plan would then be too short.
 *
 * @param of `cv` seen in the pilot, 0 or above (0.1 is 10%), and its degrees of freedom, above 0 and up to 10000: the
 * runs less one for every knife and, beyond the first, every batch
 * @throws RangeError for a cv or df outside those limits
 * @example upperCv({ cv: 0.1, df: 4 }) // → 0.1563
 */
export function upperCv({ cv, df }: { cv: number; df: number }): number {
  return cvOfLogSd(logSd(cv) * Math.sqrt(upperVarianceFactor(df)));
}

/**
 * The coefficient of variation of lives that are only read at a look: the spread between two looks, width²/12 in
 * logarithms, comes on top.
 *
 * @param of `cv` of the lives themselves, 0 or above; `lookEvery` so many cuts, 0 or above and below twice the life; `life`, the usual one, in cuts above 0
 * @throws RangeError for values outside those limits
 * @example cvWithLooks({ cv: 0.1, lookEvery: 25, life: 100 }) // → 0.1238
 */
export function cvWithLooks({
  cv,
  lookEvery,
  life,
}: {
  cv: number;
  lookEvery: number;
  life: number;
}): number {
  if (!(life > 0 && life < Infinity)) throw new RangeError(`life ${life} is not a finite number above 0`);
  if (!(lookEvery >= 0 && lookEvery < 2 * life))
    throw new RangeError(`lookEvery ${lookEvery} is not from 0 to below twice the life, ${2 * life}`);
  const width = Math.log((life + lookEvery / 2) / (life - lookEvery / 2));
  return cvOfLogSd(Math.sqrt(logSd(cv) ** 2 + width ** 2 / 12));
}

const cvOfLogSd = (sd: number): number => Math.sqrt(Math.expm1(sd * sd));
