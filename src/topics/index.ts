import type { Topic } from './topic.ts';

/** The topics a page may name besides `base`, which every page has. Each is a chunk of its own in the browser. */
export const topicLoaders = {
  answers: () => import('./answers.ts'),
  argue: () => import('./argue.ts'),
  ask: () => import('./ask.ts'),
  band: () => import('./band.ts'),
  behind: () => import('./behind.ts'),
  chain: () => import('./chain.ts'),
  cost: () => import('./cost.ts'),
  different: () => import('./different.ts'),
  grits: () => import('./grits.ts'),
  limits: () => import('./limits.ts'),
  nursery: () => import('./nursery.ts'),
  percentages: () => import('./percentages.ts'),
  plan: () => import('./plan.ts'),
  ranges: () => import('./ranges.ts'),
  'readings-of-less': () => import('./readings-of-less.ts'),
  routes: () => import('./routes.ts'),
  ruler: () => import('./ruler.ts'),
  runs: () => import('./runs.ts'),
  square: () => import('./square.ts'),
  stack: () => import('./stack.ts'),
  steel: () => import('./steel.ts'),
  'steel-worth': () => import('./steel-worth.ts'),
  sure: () => import('./sure.ts'),
  stops: () => import('./stops.ts'),
  suspects: () => import('./suspects.ts'),
  telling: () => import('./telling.ts'),
} as const satisfies Record<string, () => Promise<{ topic: Topic }>>;

export type TopicName = keyof typeof topicLoaders;

export const isTopicName = (name: string | undefined): name is TopicName =>
  name !== undefined && Object.hasOwn(topicLoaders, name);
