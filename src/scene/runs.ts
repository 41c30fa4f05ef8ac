import { batchDrift, ended } from '../model/index.ts';
import type { Drift, Life } from '../model/index.ts';
import { judged } from '../comparison/judged.ts';
import { measuredOf } from '../runs/judge-log.ts';
import type { LogJudgement, Measured } from '../runs/judge-log.ts';
import { sharpeningsOf } from '../runs/lives.ts';
import type { SharpenedLife } from '../runs/lives.ts';
import type { Run } from '../runs/log.ts';
import { unlessRefused } from '../comparison/unless-refused.ts';
import { promisedOf } from './promise.ts';
import type { Promised } from './promise.ts';
import { memoizeByScene } from './guessed.ts';
import type { Scene } from './scene.ts';

/** What the log holds of one of the two knives. */
export interface KnifeRuns {
  /** As sentences name it. */
  name: string;
  /** Runs that have a life. */
  runs: number;
  /** One for every edge in every batch. */
  lives: readonly SharpenedLife[];
  /** How many sharpenings there are, and how many of them reached their end point. */
  edges: number;
  ended: number;
  /** Lives that lie far from the knife's others. */
  far: readonly SharpenedLife[];
}

/** What the runs of a comparison say of the two knives looked at. */
export interface RunsOfTwo {
  /** The judgement on the two, which every sentence and figure goes by. */
  log: LogJudgement;
  subject: KnifeRuns;
  baseline: KnifeRuns;
  /** Runs of the two that do not enter the ratio, and why. */
  leftOut: readonly { run: Run; why: string }[];
  /** Names in the log that no knife of the comparison bears. */
  strangers: readonly string[];
  /** How many runs the log has in all. */
  all: number;
  /** What was planned before the cutting, and how far it is kept. */
  promised: Promised;
  /** The ratio with its interval; null where there is none, or while the verdict waits for the number planned. */
  measured: Measured | null;
  /** Scatter of one knife's runs as a coefficient of variation, with its degrees of freedom; null where nothing shows it. */
  scatter: { cv: number; df: number } | null;
}

/** Where a life is shown: its upper end, or how far it went before it was ended early. */
export const placeOf = ({ low, high }: Life): number => (high < Infinity ? high : low);

const meanLog = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + Math.log(value), 0) / values.length;

/** Geometric mean, of what ended only. */
export const middleOf = ({ lives }: KnifeRuns): number | null => {
  const whole = lives.filter(ended);
  return whole.length === 0 ? null : Math.exp(meanLog(whole.map(placeOf)));
};

/** What the runs say, computed once for a scene. */
export const runsOf = memoizeByScene(read);

function read({ entry, subject, baseline }: Scene): RunsOfTwo {
  const runs = entry.runs ?? [];
  const log = judged(entry, entry.subject, entry.baseline);
  const [own, other] = [sharpeningsOf(log.lives, entry.subject), sharpeningsOf(log.lives, entry.baseline)];
  const shift = log.batches.length > 1 ? shiftOf([own, other]) : new Map<string, number>();
  const level = (life: SharpenedLife): number => Math.log(placeOf(life)) - (shift.get(life.batch ?? '') ?? 0);
  const knife = (name: string, id: string, lives: readonly SharpenedLife[]): KnifeRuns => ({
    name,
    runs: log.lives.filter((life) => life.knife === id).length,
    lives,
    edges: new Set(log.lives.filter((life) => life.knife === id).map(({ edge }) => edge)).size,
    ended: lives.filter(ended).length,
    far: farOff(lives, level),
  });
  const ofTwo = {
    subject: knife(subject.name, entry.subject, own),
    baseline: knife(baseline.name, entry.baseline, other),
  };
  const promised = promisedOf(entry.plan, [ofTwo.subject, ofTwo.baseline]);
  return {
    log,
    ...ofTwo,
    promised,
    leftOut: log.leftOut.flatMap(({ row, why }) => {
      const run = runs[row];
      if (!run) return [];
      const other = run.knife === entry.subject ? baseline : subject;
      // The judge knows the knives by their ids, and a batch has a name that says so.
      return [
        { run, why: why.replace(/^batch (.*) holds no run of .*$/, `$1 holds no run of ${other.name}`) },
      ];
    }),
    strangers: [...new Set(runs.flatMap(({ knife: of }) => (typeof of === 'string' ? [] : [of.called])))],
    all: runs.length,
    measured: promised.waiting ? null : measuredOf(log),
    scatter:
      shift.size > 0
        ? scatterOf([own, other], level, shift.size - 1)
        : scatterOf([own, other].flatMap(byBatch), level, 0),
  };
}

/** ln of what each batch does to a life, knives evened out. */
function shiftOf(series: readonly (readonly SharpenedLife[])[]): Map<string, number> {
  const drift = driftOf(series);
  return new Map(drift?.batches.map(({ batch, ratio }) => [batch, Math.log(ratio)]));
}

function driftOf(series: readonly (readonly SharpenedLife[])[]): Drift | null {
  const lives = series.flatMap((own, index) =>
    own.flatMap((life) =>
      life.batch === undefined || !ended(life)
        ? []
        : [{ knife: String(index), batch: life.batch, life: placeOf(life) }],
    ),
  );
  return unlessRefused(() => batchDrift(lives));
}

/** How far the batches lie apart, by the two knives; null where that cannot be told. */
export const batchesApart = ({ subject, baseline }: RunsOfTwo): Drift | null =>
  driftOf([subject.lives, baseline.lives]);

/** The value below which the share of the sorted values lies, between neighbours by a straight line. */
function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)] ?? 0, sorted[Math.ceil(at)] ?? 0];
  return low + (high - low) * (at - Math.floor(at));
}

/**
 * Lives that lie further outside the quartiles than three times what lies between them (J. W. Tukey, Exploratory Data
 * Analysis, 1977, from memory). Under five lives nothing can be called far.
 */
function farOff(lives: readonly SharpenedLife[], level: (life: SharpenedLife) => number): SharpenedLife[] {
  const whole = lives.filter(ended);
  if (whole.length < 5) return [];
  const levels = whole.map(level).sort((a, b) => a - b);
  const [low, high] = [quantile(levels, 0.25), quantile(levels, 0.75)];
  const fence = 3 * (high - low);
  if (fence === 0) return [];
  return whole.filter((life) => level(life) < low - fence || level(life) > high + fence);
}

/** Lives of one knife, batch by batch. */
const byBatch = (lives: readonly SharpenedLife[]): SharpenedLife[][] =>
  [...new Set(lives.map(({ batch }) => batch))].map((batch) => lives.filter((life) => life.batch === batch));

/** The scatter of lives about the middles of their series; every batch beyond the first takes a degree of freedom. */
function scatterOf(
  series: readonly (readonly SharpenedLife[])[],
  level: (life: SharpenedLife) => number,
  moreBatches: number,
): RunsOfTwo['scatter'] {
  let [squares, df] = [0, -moreBatches];
  for (const lives of series) {
    const levels = lives.filter(ended).map(level);
    if (levels.length < 2) continue;
    const mean = levels.reduce((sum, value) => sum + value, 0) / levels.length;
    squares += levels.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    df += levels.length - 1;
  }
  return df < 1 || squares === 0 ? null : { cv: Math.sqrt(Math.expm1(squares / df)), df };
}
