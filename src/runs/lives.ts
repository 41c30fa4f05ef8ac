/** What a log says of its knives' lives: one a run, as the model judges them, and every run that says nothing of one. */
import type { Life, RunLife } from '../model/index.ts';
import { crossing } from './crossing.ts';
import { curveKindOf } from './curve-kind.ts';
import { curvesAtHand } from './curves-at-hand.ts';
import { notRecorded } from './log.ts';
import type { KnifeRef, Run, SeriesReading } from './log.ts';

/** Whether a run was counted in cuts or measured by what was cut, in mm. */
export type LifeUnit = 'cuts' | 'mm';

export interface LivesQuestion {
  /** Ids of the knife looked at and of the one it is compared with. */
  knives: readonly [string, string];
  /** The reading that counts as blunt, chosen before anybody looks; without it readings say nothing of a life. */
  endPoint?: number | undefined;
  /** Whether the numbers of sharpenings begin again in each batch; one number is one edge where that is not said. */
  numbersRestart?: boolean | undefined;
}

/** The life of one run. */
export interface LoggedLife {
  /** Its place in the log, counted from 0. */
  row: number;
  knife: KnifeRef;
  batch: string | undefined;
  /** As the log names it; undefined where it was not recorded. */
  sharpening: string | undefined;
  /** Runs of one knife with the same name here were cut with the same edge. */
  edge: string;
  life: RunLife;
}

export interface LogLives {
  unit: LifeUnit;
  /** Lives are told by readings along the edge, or by what was counted until the end point; never by both. */
  by: 'readings' | 'counts';
  lives: LoggedLife[];
  /** Runs without a life that can be compared, by their place in the log. */
  leftOut: { row: number; why: string }[];
}

const whole = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** How far a run went and in which unit; the last reading of a series where nothing else says it. */
export function reachOf({ cutMm, cuts, cycles, series }: Run | Omit<Run, 'knife'>): {
  reach: number;
  unit: LifeUnit;
} {
  if (cuts !== undefined) return { reach: cuts, unit: 'cuts' };
  return { reach: cutMm ?? (cycles ? whole(cycles) : series?.at(-1)?.cut) ?? 0, unit: 'mm' };
}

/** A life as it was counted: exact, between two looks, or open where the run ended early. */
function countedLife(run: Run): RunLife {
  const { reach, unit } = reachOf(run);
  if (run.censored) return { atLeast: reach };
  // An end point looked for after every single cut is known to the cut.
  const every =
    run.checkedEvery === notRecorded || (unit === 'cuts' && run.checkedEvery <= 1) ? 0 : run.checkedEvery;
  return every === 0 ? { cuts: reach } : { from: Math.max(0, reach - every), to: reach };
}

/** A life by its readings: to where the curve through them crosses the end point, or why there is none. */
function lifeByReadings(readings: readonly SeriesReading[], endPoint: number): RunLife | string {
  const [first, last] = [readings[0], readings.at(-1)];
  const side = curveKindOf(readings) === 'rising' ? -1 : 1;
  if (!first || !last || !(last.cut > 0)) return 'it has a single reading, before the first cut';
  const curves = curvesAtHand();
  if (curves === null) return 'its curve is still being fitted';
  const byCurve = curves(readings, endPoint);
  if (byCurve === null && side * first.sharpness <= side * endPoint)
    return 'its first reading is already past the end point';
  // Too few readings, or such as follow no curve, cross it in straight lines.
  const cuts = byCurve ?? crossing(readings, endPoint);
  return cuts !== null && cuts > 0 ? { cuts } : { atLeast: last.cut };
}

/** Why a run has no life whatever it is compared by, or null. */
function barred({ cycles, leftOutBecause }: Run): string | null {
  if (leftOutBecause !== undefined) return `it was left out: ${leftOutBecause}`;
  return cycles === undefined ? null : 'a card test gives a score, not a life';
}

/** The name of a run's edge: runs of one knife with the same one were cut after the same sharpening. */
export function edgeOf({ sharpening, batch }: Run, row: number, numbersRestart = false): string {
  if (sharpening === notRecorded) return `row ${row}`;
  return `sharpening ${sharpening}${numbersRestart && batch !== notRecorded ? ` in batch ${batch}` : ''}`;
}

/** Whether how far the run went was counted, and not only read off its last reading. */
const isCounted = (run: Run): boolean =>
  run.series === undefined ||
  ((run.cuts ?? run.cutMm) !== undefined && (run.cuts ?? run.cutMm) !== run.series.at(-1)?.cut);

const mostCommon = <Value>(values: readonly Value[], first: Value): Value =>
  [...new Set([first, ...values])].reduce((best, value) =>
    values.filter((other) => other === value).length > values.filter((other) => other === best).length
      ? value
      : best,
  );

/**
 * The lives of a log. Every run is either among them or left out with a reason. Lives to a reading and lives to a sign are
 * two outcomes: where an end point is chosen and both knives have readings, only runs with readings count.
 */
export function livesOf(runs: readonly Run[], question: LivesQuestion): LogLives {
  const { knives, endPoint, numbersRestart = false } = question;
  const usable = (of: readonly string[]): Run[] =>
    runs.filter((run) => typeof run.knife === 'string' && of.includes(run.knife) && barred(run) === null);
  const read = (run: Run): boolean => run.series !== undefined;
  const by = endPoint !== undefined && knives.every((id) => usable([id]).some(read)) ? 'readings' : 'counts';
  const compared = usable(knives).filter(by === 'readings' ? read : isCounted);
  const unit = mostCommon(
    compared.map((run) => reachOf(run).unit),
    'cuts',
  );
  const kind = mostCommon(
    compared.map(({ series = [] }) => curveKindOf(series)),
    'falling',
  );
  const lifeOf = (run: Run): RunLife | string => {
    const why = barred(run);
    if (why !== null) return why;
    const own = reachOf(run);
    if (by === 'readings' && endPoint !== undefined) {
      if (!run.series) return 'it has no readings that lead to the end point';
      if (own.unit !== unit) return `it is counted in ${own.unit}, not in ${unit}`;
      if (run.series.length > 1 && curveKindOf(run.series) !== kind)
        return `its readings ${kind === 'falling' ? 'rise where the others fall' : 'fall where the others rise'}`;
      return lifeByReadings(run.series, endPoint);
    }
    if (!isCounted(run)) return 'it has readings, and no end point is chosen for them';
    if (own.unit !== unit) return `it is counted in ${own.unit}, not in ${unit}`;
    return own.reach > 0 ? countedLife(run) : 'it cut nothing';
  };
  const lives: LoggedLife[] = [];
  const leftOut: LogLives['leftOut'] = [];
  runs.forEach((run, row) => {
    const life = lifeOf(run);
    if (typeof life === 'string') {
      leftOut.push({ row, why: life });
      return;
    }
    const batch = run.batch === notRecorded ? undefined : run.batch;
    const sharpening = run.sharpening === notRecorded ? undefined : run.sharpening;
    lives.push({ row, knife: run.knife, batch, sharpening, edge: edgeOf(run, row, numbersRestart), life });
  });
  return { unit, by, lives, leftOut };
}

/** The lives of one edge in one batch, as one. */
export interface SharpenedLife extends Life {
  batch?: string;
  sharpening?: string;
  /** Places of its runs in the log. */
  rows: readonly number[];
}

/** Ends of a life, the upper one Infinity where the run was given up. */
function endsOf(life: RunLife): Life {
  if ('cuts' in life) return { low: life.cuts, high: life.cuts };
  return 'atLeast' in life ? { low: life.atLeast, high: Infinity } : { low: life.from, high: life.to };
}

/** The geometric mean; a single value comes back to the digit. */
export function middle([first = 0, ...others]: readonly number[]): number {
  if (others.length === 0) return first;
  const logs = [first, ...others].map(Math.log);
  return Math.exp(whole(logs) / logs.length);
}

/** One life for every edge of a knife in every batch, by geometric means. */
export function sharpeningsOf(lives: readonly LoggedLife[], knife: string): SharpenedLife[] {
  const groups = new Map<string, LoggedLife[]>();
  for (const life of lives) {
    if (life.knife !== knife) continue;
    const key = JSON.stringify([life.edge, life.batch]);
    groups.set(key, [...(groups.get(key) ?? []), life]);
  }
  return [...groups.values()].map((group) => {
    const ends = group.map(({ life }) => endsOf(life));
    const { batch, sharpening } = group[0] ?? {};
    return {
      low: middle(ends.map(({ low }) => low)),
      high: middle(ends.map(({ high }) => high)),
      rows: group.map(({ row }) => row),
      ...(batch === undefined ? {} : { batch }),
      ...(sharpening === undefined ? {} : { sharpening }),
    };
  });
}
