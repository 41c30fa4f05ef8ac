/** Does the control knife still cut as it did at the start? */

import type { RunLife } from './judge-log.ts';
import { judgeRuns } from './judge.ts';
import type { RatioInterval } from './ratios.ts';

/**
 * Compares the last half of the control knife's runs with the first half; of an odd number the middle one is left out.
 * An interval without 1 says that something else than the knives changed on the way: material, setup or hand.
 *
 * @param lives of the control knife in the order of the log, each a sharpening of its own
 * @returns how many times as long its last runs lasted as its first, with the 95% interval; null where the runs are too
 * few to say (at least 4, and some scatter)
 * @throws RangeError for a life that is none
 * @example controlDrift([100, 104, 80, 83].map((cuts) => ({ cuts })))?.ratio // → 0.7990
 */
export function controlDrift(lives: readonly RunLife[]): RatioInterval | null {
  const half = Math.floor(lives.length / 2);
  const log = lives.map((life, i) => ({
    knife: i < half ? 'first' : i >= lives.length - half ? 'last' : 'middle',
    edge: `${i}`,
    life,
  }));
  const { ratio, low, high } = judgeRuns(log, { knife: 'last', against: 'first' });
  return ratio === null || low === null || high === null ? null : { ratio, low, high };
}
