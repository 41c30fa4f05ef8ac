import { batchDrift, ended, measuredRatio, memoizeByObject } from '../model/index.ts';
import type { BatchLife, Drift, Measured } from '../model/index.ts';
import { livesOf, reachOf } from '../runs/lives.ts';
import type { LifeUnit, SharpenedLife } from '../runs/lives.ts';
import { loggedName } from './logged-name.ts';
import type { Scene } from './scene.ts';
import { unlessRefused } from '../comparison/unless-refused.ts';

/** What the log holds of one of the two knives. */
export interface KnifeRuns {
  /** As sentences name it. */
  name: string;
  /** Runs in the unit that is compared. */
  runs: number;
  /** One a sharpening. */
  lives: readonly SharpenedLife[];
  /** How many sharpenings reached their stop. */
  ended: number;
  /** Lives that lie far from the knife's others. */
  far: readonly BatchLife[];
}

/** What the runs of a comparison say of the two knives looked at. */
export interface RunsOfTwo {
  unit: LifeUnit;
  subject: KnifeRuns;
  baseline: KnifeRuns;
  /** Runs of the two in the other unit, which are not compared. */
  otherUnit: number;
  /** Names in the log that no knife of the comparison bears. */
  strangers: readonly string[];
  /** How many runs the log has in all. */
  all: number;
  /** Compared within batches, so that a shift between batches takes no part. */
  within: boolean;
  /** Ratio of the geometric means of what ended, where both knives have such; without a claim to how sure it is. */
  bare: number | null;
  /** The ratio with its interval; null where there is none. */
  measured: Measured | null;
  /** Scatter of one knife's runs as a coefficient of variation; null where nothing shows it. */
  cv: number | null;
}

/** Where a life is shown: its upper end, or how far it went before it was ended early. */
export const placeOf = ({ low, high }: BatchLife): number => (high < Infinity ? high : low);

const meanLog = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + Math.log(value), 0) / values.length;

/** Geometric mean, of what ended only. */
export const middleOf = ({ lives }: KnifeRuns): number | null => {
  const whole = lives.filter(ended);
  return whole.length === 0 ? null : Math.exp(meanLog(whole.map(placeOf)));
};

/** What the runs say, computed once for a scene. */
export const runsOf = memoizeByObject(read);

function read({ entry, subject, baseline }: Scene): RunsOfTwo {
  const runs = entry.runs ?? [];
  const [own, other] = [loggedName(entry, entry.subject), loggedName(entry, entry.baseline)];
  const ofTwo = runs.filter(({ knife }) => knife === own || knife === other);
  const inMm = ofTwo.filter((run) => reachOf(run).unit === 'mm').length;
  const unit: LifeUnit = inMm > ofTwo.length - inMm ? 'mm' : 'cuts';
  const names = entry.knives.map(({ id }) => loggedName(entry, id));

  const livesBy = { subject: livesOf(runs, own, unit), baseline: livesOf(runs, other, unit) };
  const shared = sharedBatches(livesBy.subject, livesBy.baseline);
  const whole = [...livesBy.subject, ...livesBy.baseline].every(({ batch }) => batch !== undefined);
  const inBatches = whole && shared.length > 1;
  const withinBatches = inBatches ? attempt(livesBy.subject, livesBy.baseline, true) : null;
  const measured = withinBatches ?? attempt(livesBy.subject, livesBy.baseline, false);
  const within = withinBatches !== null;

  const shift = within ? shiftOf([livesBy.subject, livesBy.baseline]) : new Map<string, number>();
  const level = (life: BatchLife): number => Math.log(placeOf(life)) - (shift.get(life.batch ?? '') ?? 0);
  const knife = (name: string, inTheLog: string, lives: readonly SharpenedLife[]): KnifeRuns => ({
    name,
    runs: ofTwo.filter((run) => run.knife === inTheLog && reachOf(run).unit === unit).length,
    lives,
    ended: lives.filter(ended).length,
    far: farOff(lives, level),
  });
  const ofTwoKnives = {
    subject: knife(subject.name, own, livesBy.subject),
    baseline: knife(baseline.name, other, livesBy.baseline),
  };
  const [a, b] = [middleOf(ofTwoKnives.subject), middleOf(ofTwoKnives.baseline)];
  return {
    unit,
    ...ofTwoKnives,
    otherUnit: unit === 'mm' ? ofTwo.length - inMm : inMm,
    strangers: [...new Set(runs.map(({ knife: name }) => name))].filter((name) => !names.includes(name)),
    all: runs.length,
    within,
    bare: a === null || b === null ? null : a / b,
    measured,
    cv: scatter([livesBy.subject, livesBy.baseline], level),
  };
}

/** The comparison, or null where the runs do not give one. */
function attempt(x: readonly BatchLife[], y: readonly BatchLife[], withinBatches: boolean): Measured | null {
  const measured = unlessRefused(() => measuredRatio({ x, y, withinBatches }));
  // Runs that are all alike leave no more scatter than the last digit of their logarithms.
  return measured && measured.high / measured.low > 1 + 1e-9 ? measured : null;
}

const batchesOf = (lives: readonly BatchLife[]): string[] => [
  ...new Set(lives.map(({ batch }) => batch).filter((batch) => batch !== undefined)),
];

const sharedBatches = (x: readonly BatchLife[], y: readonly BatchLife[]): string[] => {
  const others = batchesOf(y);
  return batchesOf(x).filter((batch) => others.includes(batch));
};

/** ln of what each batch does to a life, knives evened out. */
function shiftOf(series: readonly (readonly BatchLife[])[]): Map<string, number> {
  const drift = driftOf(series);
  return new Map(drift?.batches.map(({ batch, ratio }) => [batch, Math.log(ratio)]));
}

function driftOf(series: readonly (readonly BatchLife[])[]): Drift | null {
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
function farOff(lives: readonly BatchLife[], level: (life: BatchLife) => number): BatchLife[] {
  const whole = lives.filter(ended);
  if (whole.length < 5) return [];
  const levels = whole.map(level).sort((a, b) => a - b);
  const [low, high] = [quantile(levels, 0.25), quantile(levels, 0.75)];
  const fence = 3 * (high - low);
  if (fence === 0) return [];
  return whole.filter((life) => level(life) < low - fence || level(life) > high + fence);
}

/** The scatter of both knives' runs about their own middles. */
function scatter(
  series: readonly (readonly BatchLife[])[],
  level: (life: BatchLife) => number,
): number | null {
  let [squares, df] = [0, 0];
  for (const lives of series) {
    const levels = lives.filter(ended).map(level);
    if (levels.length < 2) continue;
    const mean = levels.reduce((sum, value) => sum + value, 0) / levels.length;
    squares += levels.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    df += levels.length - 1;
  }
  return df === 0 || squares === 0 ? null : Math.sqrt(Math.expm1(squares / df));
}
