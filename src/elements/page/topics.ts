import { loadTopic } from '../../topics/index.ts';
import { topic as base } from '../../topics/base/index.ts';
import { registryOf } from '../../topics/registry.ts';
import type { Registry } from '../../topics/registry.ts';
import type { Topic } from '../../topics/topic.ts';

let held: readonly Topic[] = [];
let atHand: Registry | undefined;
const asked = new Map<string, Promise<void>>();

/** Puts the topics of the page at hand of its elements; once, before any of them is defined. */
export function useTopics(topics: readonly Topic[]): void {
  held = [base, ...topics];
  atHand = registryOf(held);
}

/** Puts one more topic at hand. A fetch that failed is tried again at the next asking. */
export function lateTopic(name: string): Promise<void> {
  const before = asked.get(name);
  if (before) return before;
  const fetched = loadTopic(name).then((topic) => {
    held = [...held, topic];
    atHand = registryOf(held);
  });
  asked.set(name, fetched);
  fetched.catch(() => asked.delete(name));
  return fetched;
}

/** What the topics of this page can show. */
export function registry(): Registry {
  if (!atHand) throw new Error('the topics of the page are not there yet');
  return atHand;
}
