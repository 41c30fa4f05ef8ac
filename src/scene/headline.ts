/** The one answer a page gives first: a range with its middle, in numbers a listener keeps. */

import { shownRatio } from './show.ts';
import { sureOf } from './sure.ts';
import type { Scene } from './scene.ts';

/** The range of the subject over the baseline and its middle, as they are shown. */
export interface Headline {
  low: number;
  middle: number;
  high: number;
}

/** The band of all samples with its middle, each rounded to the numbers headlines take. */
export function headlineOf(scene: Scene): Headline {
  const { low, median, high } = sureOf(scene);
  return { low: shownRatio(low), middle: shownRatio(median), high: shownRatio(high) };
}
