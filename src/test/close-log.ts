import { notRecorded } from '../runs/log.ts';
import type { Run } from '../runs/log.ts';
import { firstPlan } from '../comparison/first-plan.ts';
import { planOf, runsOnSheet, sheetOf } from '../topics/plan/values.ts';
import type { Scene } from '../scene/scene.ts';
import type { ComparisonEntry } from '../comparison/entry.ts';

/**
 * The comparison with its log closed. Runs under a code of the sheet get the knife the key gives them, and where they do not
 * say, their lot; the code stays as the name of the sharpening, since each stands for one. The number of sharpenings is
 * kept in the plan, or the decoded runs would show another scatter and so another sheet.
 */
export function closeLog(scene: Scene): ComparisonEntry {
  const { entry } = scene;
  const held = sheetOf(scene);
  const plan = { ...(entry.plan ?? firstPlan), closed: true as const };
  if (!held.ok) return { ...entry, plan };
  const { key, rows } = held.sheet;
  const knives = new Set([...entry.knives.map(({ name }) => name), plan.control]);
  const batches = new Map(rows.map(({ order, batch }) => [order, batch]));
  const coded = new Map(key.filter(({ label }) => !knives.has(label)).map((row) => [row.label, row]));
  const decoded = (run: Run): Run => {
    const row = knives.has(run.knife) ? undefined : coded.get(run.knife.trim().toUpperCase());
    if (!row) return run;
    return {
      ...run,
      knife: row.knife,
      sharpening: run.sharpening === notRecorded ? row.label : run.sharpening,
      // Unreachable: every run of the key has its lot on the sheet.
      batch: run.batch === notRecorded ? (batches.get(row.order) ?? run.batch) : run.batch,
    };
  };
  return {
    ...entry,
    ...(entry.runs ? { runs: entry.runs.map(decoded) } : {}),
    plan: { ...plan, runs: runsOnSheet(planOf(scene)) },
  };
}

/** The comparison with its log open again, which it says from then on. */
export function openLogAgain(entry: ComparisonEntry): ComparisonEntry {
  const { closed: _closed, ...plan } = entry.plan ?? firstPlan;
  return { ...entry, plan: { ...plan, reopened: true } };
}

/** What the page says once the log is closed: the runs before and after. */
export function closedSaid(before: readonly Run[] = [], after: readonly Run[] = []): string {
  const named = after.filter(({ knife }, index) => knife !== before[index]?.knife).length;
  return `The log is closed and its key open.${named > 0 ? ` ${named} of its runs had codes and have their knives now.` : ''} Undo takes it back.`;
}

export const openedSaid = 'The log is open again, and says that it was opened after its key was seen.';
