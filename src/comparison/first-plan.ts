import type { PlanEntry } from './entry.ts';

/** The plan of a comparison that has none. */
export const firstPlan: PlanEntry = { ratio: 1.25, batches: 3, blind: true, seed: 1 };
