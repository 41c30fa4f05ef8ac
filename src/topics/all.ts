import { topic as answers } from './answers.ts';
import { topic as argue } from './argue.ts';
import { topic as ask } from './ask.ts';
import { topic as band } from './band.ts';
import { topic as base } from './base.ts';
import { topic as behind } from './behind.ts';
import { topic as chain } from './chain.ts';
import { topic as cost } from './cost.ts';
import { topic as different } from './different.ts';
import { topic as grits } from './grits.ts';
import type { TopicName } from './index.ts';
import { topic as limits } from './limits.ts';
import { topic as nursery } from './nursery.ts';
import { topic as percentages } from './percentages.ts';
import { topic as plan } from './plan.ts';
import { topic as ranges } from './ranges.ts';
import { topic as readingsOfLess } from './readings-of-less.ts';
import { registryOf } from './registry.ts';
import { topic as routes } from './routes.ts';
import { topic as ruler } from './ruler.ts';
import { topic as runs } from './runs.ts';
import { topic as square } from './square.ts';
import { topic as stack } from './stack.ts';
import { topic as steel } from './steel.ts';
import { topic as steelWorth } from './steel-worth.ts';
import { topic as sure } from './sure.ts';
import { topic as stops } from './stops.ts';
import { topic as suspects } from './suspects.ts';
import { topic as telling } from './telling.ts';
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
