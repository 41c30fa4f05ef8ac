import {
  equivalencePower,
  equivalenceRunsNeeded,
  logSd,
  pairedPower,
  pairsNeeded,
  runSheet,
  runsNeeded,
  twoSamplePower,
} from '../../model/index.ts';
import type { RunSheet } from '../../model/index.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import { runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';
import type { PlanEntry } from '../../comparison/entry.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';
import { inDecimals } from '../../scene/show.ts';

/** Where no runs show the scatter yet, this is taken: assumed, no source. */
const assumedCv = 0.2;

/** More runs a knife than this are not put on one sheet. */
export const mostOnSheet = 40;

/** What is planned, and where its scatter comes from. */
export interface Planned extends PlanEntry {
  cv: number;
  from: 'entered' | 'the runs' | 'assumed';
}

/** The plan as entered, with the scatter of the runs where none was entered and they show it. */
export function planOf(scene: Scene): Planned {
  const { plan = firstPlan } = scene.entry;
  if (plan.cv !== undefined) return { ...plan, cv: plan.cv, from: 'entered' };
  const { cv } = runsOf(scene);
  return cv === null
    ? { ...plan, cv: assumedCv, from: 'assumed' }
    : { ...plan, cv: Math.min(2, Math.max(0.01, inDecimals(cv, 2))), from: 'the runs' };
}

/** Runs a knife to notice the ratio, and to show knives alike to within it: never a million, within a plan's limits. */
export const neededOf = ({ cv, ratio }: Pick<Planned, 'cv' | 'ratio'>): { apart: number; alike: number } => ({
  apart: runsNeeded({ cv, ratio }),
  alike: equivalenceRunsNeeded({ cv, alikeWithin: { low: 1 / ratio, high: ratio } }),
});

/** Pairs on the same stock to notice the ratio. */
export const pairsFor = (cv: number, ratio: number, correlation: number): number =>
  pairsNeeded({ cv, ratio, correlation });

/** Chance of noticing a ratio with so many runs a knife. */
export const chanceOf = (cv: number, ratio: number, runs: number): number =>
  twoSamplePower(Math.abs(Math.log(ratio)) / logSd(cv), runs);

/** The same with so many pairs on the same stock. */
export const chanceInPairs = (cv: number, ratio: number, pairs: number, correlation: number): number =>
  pairedPower(Math.abs(Math.log(ratio)) / logSd(cv), pairs, correlation);

/** Chance of showing two knives that are alike to be so, to within a ratio above 1, with so many runs a knife. */
export function chanceAlike(cv: number, within: number, runs: number): number {
  const room = Math.log(within) / (logSd(cv) * Math.sqrt(2 / runs));
  return equivalencePower(room, room, 2 * runs - 2, 0.05);
}

/** How many runs a knife the sheet holds. */
export function runsOnSheet(plan: Planned): number {
  return plan.runs ?? Math.max(plan.batches, Math.min(mostOnSheet, neededOf(plan).apart));
}

/** The sheet of the plan, or why there is none. */
export type Sheet = { ok: true; sheet: RunSheet; batches: string[] } | { ok: false; why: string };

/** The run sheet of every knife of the comparison. */
export function sheetOf(scene: Scene): Sheet {
  const plan = planOf(scene);
  const batches = Array.from({ length: plan.batches }, (_, index) => `lot ${index + 1}`);
  return orRefusal<Sheet, Sheet>(
    () => {
      const sheet = runSheet({
        knives: scene.entry.knives.map(({ name }) => name),
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
