/** The readings along the edges of one knife, as a log holds them. */
import { ownCurve } from './curves.ts';
import type { BluntingCurve } from './curves.ts';
import { notRecorded } from './log.ts';
import type { Run, SeriesReading } from './log.ts';

/** The readings of one sharpening, with the curve through them. */
export interface CurvedSeries {
  /** As the log names it, or its place among the series. */
  sharpening: string;
  readings: readonly SeriesReading[];
  curve: BluntingCurve;
}

export interface LogSeries {
  series: CurvedSeries[];
  /** Why a series has no part in it, one sentence a series. */
  leftOut: string[];
}

/**
 * One series a sharpening: a second one after the same sharpening on the same batch says nothing new about the next edge.
 *
 * @param knife the name as it stands in the log
 */
export function seriesOf(runs: readonly Run[], knife: string): LogSeries {
  const seen = new Set<string>();
  const series: CurvedSeries[] = [];
  const leftOut: string[] = [];
  for (const { knife: own, series: readings, sharpening, batch } of runs) {
    if (own !== knife || readings === undefined) continue;
    const name = sharpening === notRecorded ? `series ${seen.size + 1}` : sharpening;
    const key = sharpening === notRecorded ? name : JSON.stringify([sharpening, batch]);
    if (seen.has(key)) {
      leftOut.push(`A second series after sharpening ${name} of ${knife} is left out: one edge counts once.`);
      continue;
    }
    seen.add(key);
    try {
      series.push({ sharpening: name, readings, curve: ownCurve(readings) });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      leftOut.push(`The series of ${knife}, ${name}, is left out: ${error.message}.`);
    }
  }
  return { series, leftOut };
}
