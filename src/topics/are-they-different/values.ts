/** When two knives have been distinguished, and when shown alike: what the runs of a scene and a plan of runs say. */
import {
  equivalencePower,
  logSd,
  memoizeByObject,
  normalCdf,
  normalScore,
  powerOfRuns,
} from '../../model/index.ts';
import type { Life } from '../../model/index.ts';
import { equalBounds } from '../../phrases/judged-runs.ts';
import { loftTruths } from '../../runs/invented.ts';
import type { SharpenedLife } from '../../runs/lives.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, inFigures, plain, readsAsOne, thousands, whole } from '../../scene/show.ts';
import type { Trial } from './trial.ts';

/** Between these ratios two knives count as alike in use. */
export const alikeWithin = equalBounds;
export const alikeText = { low: `×${brief(alikeWithin.low)}`, high: `×${brief(alikeWithin.high)}` };
/** How often a true difference should be noticed, and how often equal knives may be called different. */
export const power = 0.8;
export const alpha = 0.05;

/** What a life counts as where one number must stand for it: the middle of its limits, or as far as it went. */
export const reached = ({ low, high }: Life): number =>
  high === Infinity ? low : low > 0 ? Math.sqrt(low * high) : high;

/** A life as readers see it: cuts are whole. */
export const amount = (life: number, { unit }: Trial): string =>
  unit === 'cuts' ? thousands(whole(life)) : plain(life, 4);

/** Least and greatest of a knife's runs. */
export function extent(lives: readonly Life[]): { least: number; most: number } {
  const all = lives.map(reached);
  return { least: Math.min(...all), most: Math.max(...all) };
}

export const geometricMean = (lives: readonly Life[]): number =>
  Math.exp(lives.reduce((sum, life) => sum + Math.log(reached(life)), 0) / lives.length);

/** The batches in the order of the log; runs without one stand last. */
export function batchesOf({ x, y }: Trial): (string | undefined)[] {
  const batches = [...new Set([...x, ...y].map(({ batch }) => batch))];
  return [
    ...batches.filter((batch) => batch !== undefined),
    ...batches.filter((batch) => batch === undefined),
  ];
}

const inBatch = (lives: readonly SharpenedLife[], batch: string | undefined): SharpenedLife[] =>
  lives.filter((life) => life.batch === batch);

/** The ratio of the geometric means in each batch that holds both knives. */
export function ratioByBatch(trial: Trial): { batch: string; ratio: number }[] {
  return batchesOf(trial).flatMap((batch) => {
    const [x, y] = [inBatch(trial.x, batch), inBatch(trial.y, batch)];
    if (batch === undefined || x.length === 0 || y.length === 0) return [];
    return [{ batch, ratio: geometricMean(x) / geometricMean(y) }];
  });
}

/** Geometric mean and number of a knife's runs in one batch; null where there is none. */
export function meanIn(
  lives: readonly SharpenedLife[],
  batch: string | undefined,
): { mean: number; runs: number } | null {
  const all = inBatch(lives, batch);
  return all.length === 0 ? null : { mean: geometricMean(all), runs: all.length };
}

/** Scatter of one run of the loft within a batch, and where every run comes from another batch and batches are ignored. */
export const spread = { within: loftTruths.spreadCv, mixed: mixedCv() };

function mixedCv(): number {
  const logs = loftTruths.batches.map(({ factor }) => Math.log(factor));
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const between = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / (logs.length - 1);
  return Math.sqrt(Math.expm1(logSd(loftTruths.spreadCv) ** 2 + between));
}

/** Runs a knife that a plan asks for; null where no number is enough. */
export interface Needed {
  within: number | null;
  mixed: number | null;
  /** To show them alike, within batches; null where the predicted ratio is not alike. */
  alike: number | null;
}

/** Up to here runs are counted exactly; beyond, nobody cuts so many, and a round number says as much. */
export const countedExactly = 150;

/** The least number of runs, 2 or above, whose chance is enough, sought from a near guess: a slider waits for it. */
function leastFrom(guess: number, chance: (runs: number) => number): number {
  let runs = Math.max(2, Math.round(guess));
  while (chance(runs) < power) runs += 1;
  while (runs > 2 && chance(runs - 1) >= power) runs -= 1;
  return runs;
}

/** Standard errors and the correction for a scatter that is estimated, as in any handbook of sample sizes. */
const guessed = (effect: number, chanceOfMiss: number): number =>
  (2 * (normalScore(1 - chanceOfMiss) + normalScore(power)) ** 2) / effect ** 2 +
  normalScore(1 - chanceOfMiss) ** 2 / 4;

/** So many batches as the loft has, where the runs are enough for them. */
const inBatches = (runs: number): number => Math.min(runs, loftTruths.batches.length);

const apart = (ratio: number, cv: number, runs: number, batches = 0): number =>
  powerOfRuns({ runs, cv, ratio, alpha, batches });

function alike(ratio: number, runs: number): number {
  const error = logSd(spread.within) * Math.sqrt(2 / runs);
  return equivalencePower(
    Math.log(ratio / alikeWithin.low) / error,
    Math.log(alikeWithin.high / ratio) / error,
    2 * runs - 1 - inBatches(runs),
    alpha,
  );
}

/** Runs a knife to tell a ratio apart: exact, or rounded where they are very many; null where the ratio reads as one. */
function toTellApart(cv: number, ratio: number, batches: (runs: number) => number): number | null {
  if (readsAsOne(ratio)) return null;
  const guess = guessed(Math.abs(Math.log(ratio)) / logSd(cv), alpha / 2);
  return guess > countedExactly
    ? inFigures(guess, 2)
    : leastFrom(guess, (runs) => apart(ratio, cv, runs, batches(runs)));
}

/** Runs a knife to show them alike, likewise; null where the ratio is at a bound or beyond. */
function toShowAlike(ratio: number): number | null {
  const room = Math.min(Math.log(ratio / alikeWithin.low), Math.log(alikeWithin.high / ratio));
  if (!(room > 0)) return null;
  const guess = guessed(room / logSd(spread.within), alpha);
  if (!(guess < 1e6)) return null;
  return guess > countedExactly ? inFigures(guess, 2) : leastFrom(guess, (runs) => alike(ratio, runs));
}

/** The ratio a plan is made for: the careful estimate's with all factors multiplied, at the middle settings. */
export const predicted = ({ row }: Scene): number => row.careful.multiplied;

/** How many runs a knife would tell the predicted ratio, or show it alike, at the spread of the loft. */
export const neededFor = memoizeByObject((scene: Scene): Needed => {
  const ratio = predicted(scene);
  const needed = {
    within: toTellApart(spread.within, ratio, inBatches),
    mixed: toTellApart(spread.mixed, ratio, () => 0),
    alike: toShowAlike(ratio),
  };
  return needed;
});

/** The chances of a plan with so many runs a knife. */
export interface Chance {
  runs: number;
  within: number;
  mixed: number;
  alike: number;
}

/** A chance above this counts as certain: more runs do not lower it, so it need not be computed again. */
const certain = 0.99995;

/** The chances with `runs` a knife, a whole number of 2 or above; `fewer` are those of a smaller number. */
export function chanceAt(scene: Scene, runs: number, fewer?: Chance): Chance {
  const ratio = predicted(scene);
  const grown = (curve: 'within' | 'mixed' | 'alike', compute: () => number): number => {
    const chance = (fewer?.[curve] ?? 0) > certain ? 1 : compute();
    return chance > certain ? 1 : chance;
  };
  return {
    runs,
    within: grown('within', () => apart(ratio, spread.within, runs, inBatches(runs))),
    mixed: grown('mixed', () => apart(ratio, spread.mixed, runs)),
    alike: grown('alike', () => alike(ratio, runs)),
  };
}

/** How far a curve of chances is drawn: to the first of a few ends that shows what is needed. */
export function mostRuns(scene: Scene): number {
  const { within, alike } = neededFor(scene);
  const wanted = Math.max(
    0,
    ...[within, alike].map((count) => (count ?? 0) * 1.2).filter((end) => end <= 144),
  );
  return [12, 30, 60].find((end) => end >= wanted) ?? 144;
}

/** Chances computed along a curve; between them they are read off, for each takes longer than a drawing may. */
const computed = 9;
/** Up to here the curves turn most, and every number of runs is computed. */
const fewRuns = 6;
const between = 4;

const curves = ['within', 'mixed', 'alike'] as const;

/** The normal score of a chance, kept finite at the ends. */
const score = (chance: number): number => normalScore(Math.min(1 - 1e-9, Math.max(1e-9, chance)));

/** Between two chances: their scores go nearly evenly with the root of the number of runs. */
function readOff(from: Chance, to: Chance, share: number): Chance {
  const root = Math.sqrt(from.runs) + share * (Math.sqrt(to.runs) - Math.sqrt(from.runs));
  const [within = 0, mixed = 0, alike = 0] = curves.map((curve) => {
    const [low, high] = [score(from[curve]), score(to[curve])];
    return normalCdf(low + share * (high - low));
  });
  return { runs: root * root, within, mixed, alike };
}

/** The chances from 2 runs on, closer together where there are few; for drawing only, `runs` need not be whole. */
export function chances(scene: Scene): Chance[] {
  const most = mostRuns(scene);
  const spaced = Array.from({ length: computed }, (_, step) =>
    Math.round(fewRuns + (most - fewRuns) * ((step + 1) / computed) ** 1.6),
  );
  const counts = [2, 3, 4, 5, fewRuns, ...spaced];
  const exact = [...new Set(counts)].reduce<Chance[]>(
    (curve, runs) => [...curve, chanceAt(scene, runs, curve.at(-1))],
    [],
  );
  return exact.flatMap((from, index) => {
    const to = exact[index + 1];
    if (!to) return [from];
    return [from, ...Array.from({ length: between }, (_, k) => readOff(from, to, (k + 1) / (between + 1)))];
  });
}
