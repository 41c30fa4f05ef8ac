import type { PlanEntry } from '../comparison/entry.ts';

/** What was settled of a log before its cutting, and what became of it. */
export interface Promised {
  /** Sharpenings of each knife that were planned; null where no number was. */
  planned: number | null;
  /** Sharpenings of the knife that has fewer. */
  reached: number;
  /** The verdict waits for the number planned. */
  waiting: boolean;
  /** It was asked for before that. */
  early: boolean;
  /** Numbers of sharpenings at which the verdict was seen before, ascending: each was a chance more to be wrong. */
  looks: readonly number[];
}

/** How far the plan of a log is kept. */
export function promisedOf(plan: PlanEntry | undefined, knives: readonly { edges: number }[]): Promised {
  const planned = plan?.runs ?? null;
  const reached = Math.min(...knives.map(({ edges }) => edges));
  const asked = plan?.looks ?? [];
  const closed = plan?.closed === true;
  const short = planned !== null && reached < planned;
  // The number of a closed log may be that of its sheet alone; what was seen of it is among the looks.
  const seen = planned !== null && reached > planned && !closed ? [...asked, planned] : asked;
  return {
    planned,
    reached,
    waiting: short && !closed && !asked.includes(reached),
    early: short && asked.includes(reached),
    looks: [...new Set(seen)].filter((look) => look > 1 && look < reached).sort((a, b) => a - b),
  };
}

/** The plan with one more look at the verdict, at so many sharpenings of each knife. */
export function withLook(plan: PlanEntry, reached: number): PlanEntry {
  const looks = [...new Set([...(plan.looks ?? []), reached])].filter((look) => look > 0);
  return looks.length === 0 ? plan : { ...plan, looks: looks.sort((a, b) => a - b).slice(-50) };
}
