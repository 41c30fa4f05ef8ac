/** The readings along the edges of one knife, as a log holds them. */
import { ownCurve } from './curves.ts';
import type { BluntingCurve } from './curves.ts';
import type { EdgeReadings } from './equal-sharpness.ts';
import { edgeOf } from './lives.ts';
import { notRecorded } from './log.ts';
import type { Run } from './log.ts';

/** The readings of one sharpening, with the curve through them. */
export interface CurvedSeries extends EdgeReadings {
  /** As the log names it, or its place among the series. */
  sharpening: string;
  curve: BluntingCurve;
}

export interface LogSeries {
  series: CurvedSeries[];
  /** Why a series has no part in it, one sentence a series. */
  leftOut: string[];
}

/**
 * One series for every edge in every batch: a second one of the same edge on the same batch says nothing new.
 *
 * @param knife its id
 * @param called what sentences call it
 * @param numbersRestart whether the numbers of sharpenings begin again in each batch
 */
export function seriesOf(
  runs: readonly Run[],
  knife: string,
  called: string,
  numbersRestart?: boolean,
): LogSeries {
  const seen = new Set<string>();
  const series: CurvedSeries[] = [];
  const leftOut: string[] = [];
  for (const [row, run] of runs.entries()) {
    const { series: readings, sharpening, batch } = run;
    if (run.knife !== knife || readings === undefined) continue;
    const name = sharpening === notRecorded ? `series ${seen.size + 1}` : sharpening;
    const edge = edgeOf(run, row, numbersRestart);
    const key = JSON.stringify([edge, batch]);
    if (seen.has(key)) {
      leftOut.push(
        `A second series after sharpening ${name} of ${called} is left out: one edge counts once.`,
      );
      continue;
    }
    seen.add(key);
    try {
      const curve = ownCurve(readings);
      series.push({
        sharpening: name,
        readings,
        curve,
        edge,
        batch: batch === notRecorded ? undefined : batch,
      });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      leftOut.push(`The series of ${called}, ${name}, is left out: ${error.message}.`);
    }
  }
  return { series, leftOut };
}
