import { topic as base } from '../topics/base.ts';
import { registryOf } from '../topics/registry.ts';
import type { Registry } from '../topics/registry.ts';
import type { Topic } from '../topics/topic.ts';

let atHand: Registry | undefined;

/** Puts the topics of the page at hand of its elements; once, before any of them is defined. */
export function useTopics(topics: readonly Topic[]): void {
  atHand = registryOf([base, ...topics]);
}

/** What the topics of this page can show. */
export function registry(): Registry {
  if (!atHand) throw new Error('the topics of the page are not there yet');
  return atHand;
}
