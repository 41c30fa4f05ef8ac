import type { Topic } from './topic.ts';

/** The topics a page may name besides `base`, which every page has. Each is a chunk of its own in the browser. */
export const topicLoaders = {
  answers: () => import('./answers/index.ts'),
  argue: () => import('./argue/index.ts'),
  ask: () => import('./ask/index.ts'),
  band: () => import('./band/index.ts'),
  behind: () => import('./behind-the-edge/index.ts'),
  chain: () => import('./overview/index.ts'),
  cost: () => import('./cost/index.ts'),
  different: () => import('./are-they-different/index.ts'),
  grits: () => import('./what-a-grit-is/index.ts'),
  limits: () => import('./where-it-stops/index.ts'),
  nursery: () => import('./nursery/index.ts'),
  percentages: () => import('./forty-and-forty/index.ts'),
  plan: () => import('./plan/index.ts'),
  ranges: () => import('./range-race/index.ts'),
  'readings-of-less': () => import('./less-of-a-bad-thing/index.ts'),
  routes: () => import('./two-routes/index.ts'),
  ruler: () => import('./ruler-of-ratios/index.ts'),
  runs: () => import('./runs/index.ts'),
  square: () => import('./check-prediction/index.ts'),
  stack: () => import('./stack-them/index.ts'),
  steel: () => import('./steel-fairly/index.ts'),
  'steel-worth': () => import('./steel-worth/index.ts'),
  sure: () => import('./how-sure/index.ts'),
  stops: () => import('./end-points/index.ts'),
  suspects: () => import('./suspects/index.ts'),
  telling: () => import('./explained/index.ts'),
} as const satisfies Record<string, () => Promise<{ topic: Topic }>>;

export type TopicName = keyof typeof topicLoaders;

export const isTopicName = (name: string | undefined): name is TopicName =>
  name !== undefined && Object.hasOwn(topicLoaders, name);
