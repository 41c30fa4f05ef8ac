import { firstPlan } from '../comparison/first-plan.ts';
import type { ComparisonEntry, PlanEntry } from '../comparison/entry.ts';
import { withLook } from '../scene/promise.ts';
import { runsOf } from '../scene/runs.ts';
import type { Scene } from '../scene/scene.ts';
import { planOf, runsOnSheet } from '../topics/plan/values.ts';
import { planFieldNamed } from './plan-fields.ts';
import type { WrittenPlan } from './plan-fields.ts';

/** What a verdict already seen, or readings already in the log, make of a change of the plan. */
function honest(now: Scene, before: PlanEntry, after: PlanEntry): PlanEntry {
  const { promised, measured } = runsOf(now);
  const more = after.runs === undefined || after.runs > promised.reached;
  const seen = after.runs !== before.runs && measured !== null && more;
  const plan = seen ? withLook(after, promised.reached) : after;
  const late = after.endPoint !== undefined && (now.entry.runs ?? []).some(({ series }) => series);
  return late && after.endPoint !== before.endPoint ? { ...plan, endPointLate: true } : plan;
}

/** The plan with one field written anew, or why not. */
export function writtenPlan(now: Scene, name: string, text: string): WrittenPlan {
  const { plan = firstPlan } = now.entry;
  const written = planFieldNamed(name).write(plan, text);
  return written.ok ? { ok: true, plan: honest(now, plan, written.plan) } : written;
}

/** The comparison with its verdict looked at before the number planned is cut. */
export function lookedEarly(now: Scene): ComparisonEntry {
  return { ...now.entry, plan: withLook(now.entry.plan ?? firstPlan, runsOf(now).promised.reached) };
}

/** The comparison with as many sharpenings as its sheet has now: a printed sheet must not follow the runs that come in. */
export function keptSheet(now: Scene): ComparisonEntry {
  const { plan = firstPlan } = now.entry;
  return { ...now.entry, plan: honest(now, plan, { ...plan, runs: runsOnSheet(planOf(now)) }) };
}
