import {
  cvWithLooks,
  equivalencePower,
  equivalenceRunsNeeded,
  logSd,
  pairedPower,
  pairsNeeded,
  powerOfRuns,
  runSheet,
  runsNeeded,
  upperCv,
} from '../../model/index.ts';
import type { RunSheet } from '../../model/index.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import { middleOf, runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';
import type { PlanEntry } from '../../comparison/entry.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';
import { inDecimals, inFigures } from '../../scene/show.ts';

/** Where no runs show the scatter yet, this is taken: assumed, no source. */
const assumedCv = 0.2;

/** More runs a knife than this are not put on one sheet. */
export const mostOnSheet = 40;

const level = 0.05;

/** What is planned, and where its scatter comes from. */
export interface Planned extends PlanEntry {
  /** Scatter of the lives of one knife: as entered, or the upper 80% limit of what the runs show, or assumed. */
  cv: number;
  from: 'entered' | 'the runs' | 'assumed';
  /** The scatter the runs show, where `cv` is its upper limit. */
  seen: number | null;
  /** How long the shorter-lived knife usually lasts; null where nobody says and no runs show it. */
  usualLife: number | null;
  /** The scatter to plan with: with what is added where the end point is looked for only now and then. */
  total: number;
  /** Why the looks cannot be planned with; null where they can, or where every cut is looked at. */
  looksRefused: string | null;
  /** Pairs of knives the analysis will judge at once: those of all knives on the sheet. */
  family: number;
}

/** The plan as entered, with the scatter of the runs where none was entered and they show it. */
export function planOf(scene: Scene): Planned {
  const { plan = firstPlan, knives } = scene.entry;
  const runs = runsOf(scene);
  const scatter = scatterOf(plan, runs.scatter);
  const middles = [runs.subject, runs.baseline].map(middleOf).filter((middle) => middle !== null);
  const shown = middles.length === 0 ? null : inFigures(Math.min(...middles), 2);
  const usualLife = plan.life ?? shown;
  return {
    ...plan,
    ...scatter,
    usualLife,
    ...withLooks(scatter.cv, plan.lookEvery, usualLife),
    family: (knives.length * (knives.length - 1)) / 2,
  };
}

function scatterOf(
  plan: PlanEntry,
  shown: { cv: number; df: number } | null,
): Pick<Planned, 'cv' | 'from' | 'seen'> {
  if (plan.cv !== undefined) return { cv: plan.cv, from: 'entered', seen: null };
  if (shown === null) return { cv: assumedCv, from: 'assumed', seen: null };
  const limit = (cv: number): number => Math.min(2, Math.max(0.01, inDecimals(cv, 2)));
  // What few runs show is too small in about half of all tries.
  return { cv: limit(upperCv(shown)), from: 'the runs', seen: limit(shown.cv) };
}

function withLooks(
  cv: number,
  lookEvery: number | undefined,
  life: number | null,
): Pick<Planned, 'total' | 'looksRefused'> {
  if (lookEvery === undefined) return { total: cv, looksRefused: null };
  if (life === null) return { total: cv, looksRefused: 'nobody says how long a knife usually lasts' };
  if (lookEvery >= 2 * life)
    return { total: cv, looksRefused: 'a knife is blunt long before the first look' };
  return { total: Math.min(5, cvWithLooks({ cv, lookEvery, life })), looksRefused: null };
}

/** Chance of a false alarm that each pair of the sheet's knives is left with. */
const alphaOf = ({ family }: Planned): number => level / family;

/** Batches that so many runs of each knife can be spread over. */
const batchesFor = ({ batches }: Planned, runs: number): number => Math.min(batches, runs);

/** Runs a knife to notice the ratio, and to show knives as good as equal to within it: never a million, within a plan's limits. */
export function neededOf(plan: Planned): { apart: number; alike: number } {
  const { total: cv, ratio, batches } = plan;
  const alpha = alphaOf(plan);
  return {
    apart: runsNeeded({ cv, ratio, alpha, batches }),
    alike: equivalenceRunsNeeded({ cv, alikeWithin: { low: 1 / ratio, high: ratio }, alpha, batches }),
  };
}

/** Pairs on the same stock to notice the ratio. */
export const pairsFor = (plan: Planned, correlation: number): number =>
  pairsNeeded({ cv: plan.total, ratio: plan.ratio, correlation, alpha: alphaOf(plan) });

/** Chance of noticing a ratio with so many runs a knife, by the formula for knives that scatter alike. */
export const chanceOf = (plan: Planned, ratio: number, runs: number): number =>
  powerOfRuns({ runs, cv: plan.total, ratio, alpha: alphaOf(plan), batches: batchesFor(plan, runs) });

/** The same with so many pairs on the same stock. */
export const chanceInPairs = (plan: Planned, pairs: number, correlation: number): number =>
  pairedPower(Math.abs(Math.log(plan.ratio)) / logSd(plan.total), pairs, correlation, alphaOf(plan));

/** Chance of showing two knives that are equal to be as good as equal, to within the ratio, with so many runs a knife. */
export function chanceAlike(plan: Planned, runs: number): number {
  const room = Math.log(plan.ratio) / (logSd(plan.total) * Math.sqrt(2 / runs));
  return equivalencePower(room, room, 2 * runs - 1 - batchesFor(plan, runs), alphaOf(plan));
}

/** How many runs a knife the sheet holds: where nobody set it as many as are needed, evenly over the batches. */
export function runsOnSheet(plan: Planned): number {
  if (plan.runs !== undefined) return plan.runs;
  const most = Math.floor(mostOnSheet / plan.batches);
  return plan.batches * Math.min(most, Math.ceil(neededOf(plan).apart / plan.batches));
}

/** The sheet of the plan, or why there is none. */
export type Sheet = { ok: true; sheet: RunSheet; batches: string[] } | { ok: false; why: string };

/** The run sheet of every knife of the comparison. */
export function sheetOf(scene: Scene): Sheet {
  const plan = planOf(scene);
  const batches = Array.from({ length: plan.batches }, (_, index) => `batch ${index + 1}`);
  return orRefusal<Sheet, Sheet>(
    () => {
      const sheet = runSheet({
        knives: scene.knives.map(({ name }) => name),
        runs: runsOnSheet(plan),
        batches,
        seed: plan.seed,
        blind: plan.blind,
        ...(plan.control === undefined ? {} : { control: plan.control }),
      });
      return { ok: true, sheet, batches };
    },
    (message) => ({ ok: false, why: `${message}.` }),
  );
}
