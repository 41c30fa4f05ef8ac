/** What a log says of one knife's lives: one a sharpening, as the model compares them. */
import type { BatchLife } from '../model/index.ts';
import { notRecorded } from './log.ts';
import type { Run } from './log.ts';

/** Whether a run was counted in cuts or measured by what was cut, in mm. */
export type LifeUnit = 'cuts' | 'mm';

/** A life that knows which sharpening it was, where that is on record. */
export interface SharpenedLife extends BatchLife {
  sharpening?: string;
}

const whole = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** How far a run went and in which unit; the last reading of a series where nothing else says it. */
export function reachOf({ cutMm, cuts, cycles, series }: Run): { reach: number; unit: LifeUnit } {
  if (cuts !== undefined) return { reach: cuts, unit: 'cuts' };
  return { reach: cutMm ?? (cycles ? whole(cycles) : series?.at(-1)?.cut) ?? 0, unit: 'mm' };
}

/** A run's life: exact, within the last look, or open where it ended early. */
export function lifeOf(run: Run): BatchLife {
  const { reach, unit } = reachOf(run);
  const batch = run.batch === notRecorded ? {} : { batch: run.batch };
  if (run.censored) return { low: reach, high: Infinity, ...batch };
  // A stop looked for after every single cut is known to the cut.
  const every =
    run.checkedEvery === notRecorded || (unit === 'cuts' && run.checkedEvery <= 1) ? 0 : run.checkedEvery;
  return { low: Math.max(0, reach - every), high: reach, ...batch };
}

/** The geometric mean; a single value comes back to the digit. */
export function middle([first = 0, ...others]: readonly number[]): number {
  if (others.length === 0) return first;
  const logs = [first, ...others].map(Math.log);
  return Math.exp(whole(logs) / logs.length);
}

/**
 * The lives of one knife, one a sharpening: runs after one recorded sharpening count as one, by their geometric mean.
 * Runs that went nowhere are passed over.
 *
 * @param knife the name as it stands in the log
 * @param unit only runs in this unit count
 */
export function livesOf(runs: readonly Run[], knife: string, unit: LifeUnit): SharpenedLife[] {
  const sharpenings = new Map<string, SharpenedLife[]>();
  runs.forEach((run, place) => {
    const { reach, unit: own } = reachOf(run);
    if (run.knife !== knife || own !== unit || !(reach > 0)) return;
    const key =
      run.sharpening === notRecorded ? `run ${place}` : `sharpening ${run.sharpening} in ${run.batch}`;
    const named = run.sharpening === notRecorded ? {} : { sharpening: run.sharpening };
    sharpenings.set(key, [...(sharpenings.get(key) ?? []), { ...lifeOf(run), ...named }]);
  });
  return [...sharpenings.values()].map((lives) => ({
    ...lives[0],
    low: middle(lives.map(({ low }) => low)),
    high: middle(lives.map(({ high }) => high)),
  }));
}
