import { notRecorded } from '../runs/log.ts';
import type { Run } from '../runs/log.ts';
import { knifeCalled } from '../comparison/knife-names.ts';
import { firstPlan } from '../comparison/first-plan.ts';
import { planOf, runsOnSheet, sheetOf } from '../topics/plan/values.ts';
import { withLook } from '../scene/promise.ts';
import { runsOf } from '../scene/runs.ts';
import type { Scene } from '../scene/scene.ts';
import type { ComparisonEntry, PlanEntry } from '../comparison/entry.ts';

/**
 * The comparison with its log closed. Runs under a code of the sheet get the knife the key gives them, and where they do not
 * say, their batch; the code stays as the name of the sharpening, since each stands for one. The number of sharpenings is
 * kept in the plan, or the decoded runs would show another scatter and so another sheet.
 */
export function closeLog(scene: Scene): ComparisonEntry {
  const { entry } = scene;
  const held = sheetOf(scene);
  const plan = { ...seenAt(scene), closed: true as const };
  if (!held.ok) return { ...entry, plan };
  const { key, rows } = held.sheet;
  const knives = new Set([...scene.knives.map(({ name }) => name), plan.control]);
  const batches = new Map(rows.map(({ order, batch }) => [order, batch]));
  const coded = new Map(key.filter(({ label }) => !knives.has(label)).map((row) => [row.label, row]));
  const decoded = (run: Run): Run => {
    const row = typeof run.knife === 'string' ? undefined : coded.get(run.knife.called.toUpperCase());
    if (!row) return run;
    return {
      ...run,
      knife: knifeCalled(scene.knives, row.knife),
      sharpening: run.sharpening === notRecorded ? row.label : run.sharpening,
      // Unreachable: every run of the key has its batch on the sheet.
      batch: run.batch === notRecorded ? (batches.get(row.order) ?? run.batch) : run.batch,
    };
  };
  return {
    ...entry,
    ...(entry.runs ? { runs: entry.runs.map(decoded) } : {}),
    plan: { ...plan, runs: runsOnSheet(planOf(scene)) },
  };
}

/** The plan with what closing ends: a log cut short of its plan, or topped up beyond it, was looked at there. */
function seenAt(scene: Scene): PlanEntry {
  const { plan = firstPlan } = scene.entry;
  const { planned, reached } = runsOf(scene).promised;
  return planned === null || reached === planned ? plan : withLook(plan, Math.min(planned, reached));
}

/** The comparison with its log open again, which it says from then on. */
export function openLogAgain(entry: ComparisonEntry): ComparisonEntry {
  const { closed: _closed, ...plan } = entry.plan ?? firstPlan;
  return { ...entry, plan: { ...plan, reopened: true } };
}

/** What the page says once the log is closed: the runs before and after. */
export function closedSaid(before: readonly Run[] = [], after: readonly Run[] = []): string {
  const coded = before.filter(({ knife }) => typeof knife === 'object').length;
  const named = coded - after.filter(({ knife }) => typeof knife === 'object').length;
  return `The log is closed and its key open.${named > 0 ? ` ${named} of its runs had codes and have their knives now.` : ''} Undo takes it back.`;
}

export const openedSaid = 'The log is open again, and says that it was opened after its key was seen.';
