/** The lives of a whole log, with what was left out of it and what was taken for granted. */
import type { BatchLife } from '../model/index.ts';
import { lifeOf, middle, reachOf } from './lives.ts';
import type { LifeUnit } from './lives.ts';
import { notRecorded } from './log.ts';
import type { Run } from './log.ts';

/** The life of one sharpening, with the rows of the log it comes from. */
export interface SharpeningLife extends BatchLife {
  knife: string;
  /** Places in the log, from 0. */
  rows: number[];
}

export interface LogLives {
  unit: LifeUnit;
  lives: SharpeningLife[];
  /** Rows that took no part, and why. */
  leftOut: { row: number; why: string }[];
  /** What was taken for granted. */
  notes: string[];
}

/** What `logLives` may be told. */
export interface LogLivesOptions {
  /** The unit most runs have, if left out. */
  unit?: LifeUnit;
  /** Starting sharpness a run must have had; one not recorded is let through, and said. */
  startWithin?: { low: number; high: number };
}

/**
 * The lives of a log, one a sharpening of a knife on a batch: runs after one sharpening count as one. Every row is either
 * in a life or in `leftOut`.
 */
export function logLives(runs: readonly Run[], options: LogLivesOptions = {}): LogLives {
  const unit = options.unit ?? mostCommonUnit(runs);
  const leftOut: LogLives['leftOut'] = [];
  const groups = new Map<string, SharpeningLife[]>();
  let [unknownSharpenings, unknownStarts] = [0, 0];
  runs.forEach((run, row) => {
    const why = reasonAgainst(run, unit, options.startWithin);
    if (why !== null) {
      leftOut.push({ row, why });
      return;
    }
    if (options.startWithin !== undefined && run.startSharpness === notRecorded) unknownStarts += 1;
    if (run.sharpening === notRecorded) unknownSharpenings += 1;
    const own = run.sharpening === notRecorded ? ['row', row] : ['sharpening', run.sharpening];
    const key = JSON.stringify([run.knife, run.batch, ...own]);
    groups.set(key, [...(groups.get(key) ?? []), { ...lifeOf(run), knife: run.knife, rows: [row] }]);
  });
  const lives = [...groups.values()].map(asOne);
  const repeated = runs.length - leftOut.length - lives.length;
  const notes = [
    [unknownSharpenings, 'do not say which sharpening they are; each is taken as one of its own'],
    [unknownStarts, 'do not say how sharp they started; they are let through'],
    [repeated, 'repeat a sharpening on the same lot; each sharpening counts once'],
  ] as const;
  return {
    unit,
    lives,
    leftOut,
    notes: notes.flatMap(([count, what]) => (count > 0 ? [`Runs that ${what}: ${count}.`] : [])),
  };
}

function mostCommonUnit(runs: readonly Run[]): LifeUnit {
  const inCuts = runs.filter((run) => reachOf(run).unit === 'cuts').length;
  return inCuts * 2 >= runs.length ? 'cuts' : 'mm';
}

function reasonAgainst(run: Run, unit: LifeUnit, startWithin: LogLivesOptions['startWithin']): string | null {
  if (run.cutMm === undefined && run.cuts === undefined && run.cycles === undefined)
    return 'it has a series only: how far it went to the stop is not said';
  const own = reachOf(run).unit;
  if (own !== unit) return `it is counted in ${own}, not in ${unit}`;
  const start = run.startSharpness;
  if (startWithin === undefined || start === notRecorded) return null;
  if (start >= startWithin.low && start <= startWithin.high) return null;
  return `it started at a sharpness of ${start}, not between ${startWithin.low} and ${startWithin.high}`;
}

/** The geometric means of the ends: one open end leaves the whole open. */
function asOne(lives: readonly SharpeningLife[]): SharpeningLife {
  const [first] = lives;
  if (first === undefined) throw new RangeError('lives has none, at least 1 is needed');
  return {
    ...first,
    low: middle(lives.map(({ low }) => low)),
    high: middle(lives.map(({ high }) => high)),
    rows: lives.flatMap(({ rows }) => rows),
  };
}
