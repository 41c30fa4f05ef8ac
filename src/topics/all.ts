import { topic as answers } from './answers/index.ts';
import { topic as argue } from './argue/index.ts';
import { topic as ask } from './ask/index.ts';
import { topic as band } from './band/index.ts';
import { topic as base } from './base/index.ts';
import { topic as behind } from './behind-the-edge/index.ts';
import { topic as chain } from './overview/index.ts';
import { topic as cost } from './cost/index.ts';
import { topic as different } from './are-they-different/index.ts';
import { topic as grits } from './what-a-grit-is/index.ts';
import type { TopicName } from './index.ts';
import { topic as limits } from './where-it-stops/index.ts';
import { topic as nursery } from './nursery/index.ts';
import { topic as percentages } from './forty-and-forty/index.ts';
import { topic as plan } from './plan/index.ts';
import { topic as ranges } from './range-race/index.ts';
import { topic as readingsOfLess } from './less-of-a-bad-thing/index.ts';
import { registryOf } from './registry.ts';
import { topic as routes } from './two-routes/index.ts';
import { topic as ruler } from './ruler-of-ratios/index.ts';
import { topic as runs } from './runs/index.ts';
import { topic as square } from './check-prediction/index.ts';
import { topic as stack } from './stack-them/index.ts';
import { topic as steel } from './steel-fairly/index.ts';
import { topic as steelWorth } from './steel-worth/index.ts';
import { topic as sure } from './how-sure/index.ts';
import { topic as stops } from './end-points/index.ts';
import { topic as suspects } from './suspects/index.ts';
import { topic as telling } from './explained/index.ts';
import type { Part, Topic } from './topic.ts';

/** Every topic at once: for the build and for tests, never for the browser. */
export const topics: Record<TopicName | 'base', Topic> = {
  answers,
  argue,
  ask,
  band,
  base,
  behind,
  chain,
  cost,
  different,
  grits,
  limits,
  nursery,
  percentages,
  plan,
  ranges,
  'readings-of-less': readingsOfLess,
  routes,
  ruler,
  runs,
  square,
  stack,
  steel,
  'steel-worth': steelWorth,
  stops,
  sure,
  suspects,
  telling,
};

export const everything = registryOf(Object.values(topics));

/** The topic an element has to name so that the browser fetches it; nothing for what every page has. */
export function topicOf(part: Part, name: string): TopicName | undefined {
  const has = (topic: Topic): boolean =>
    part === 'figures'
      ? (topic.figures ?? []).some(({ id }) => id === name)
      : Object.hasOwn(topic[part] ?? {}, name);
  const found = (Object.keys(topics) as (keyof typeof topics)[]).find((key) => has(topics[key]));
  return found === 'base' ? undefined : found;
}
