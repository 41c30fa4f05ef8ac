import { lastKey } from '../../comparison/saved/last-key.ts';
import { carriesComparison } from '../start/address.ts';
import { nextTask } from '../start/next-task.ts';
import type { Topic } from '../../topics/topic.ts';
import { GuessElement } from './guess.ts';
import { NumElement } from './num.ts';
import { ready, start } from './page.ts';
import { sayAloud } from './say-aloud.ts';
import { SliderElement } from '../figure/slider.ts';
import { useTopics } from './topics.ts';
import { WordsElement } from './words.ts';
import { WorkedElement } from '../teach/worked.ts';

const small: Record<string, CustomElementConstructor> = {
  'kf-call': GuessElement,
  'kf-num': NumElement,
  'kf-words': WordsElement,
  'kf-worked': WorkedElement,
  // Last: one that was moved before changes the comparison at once, and what stands above need not say the example first.
  'kf-slider': SliderElement,
};

/**
 * Whether the elements may come one after another: on a page that comes to life by itself and shows its own example. What
 * shows a visitor's comparison comes all at once, so that no part of it shows the example for a moment.
 */
function isUnhurried(): boolean {
  if (!document.documentElement.hasAttribute('data-live-at-once') || carriesComparison(location.hash))
    return false;
  try {
    return localStorage.getItem(lastKey) === null;
  } catch {
    return false;
  }
}

/**
 * Brings the page to life, at the first touch or when the address carries a comparison.
 *
 * @param topics what its elements name
 * @param large the elements that are fetched only where the page has them
 */
export async function begin(
  topics: readonly Topic[],
  large: Record<string, CustomElementConstructor>,
): Promise<void> {
  await ready();
  useTopics(topics);
  start();
  const unhurried = isUnhurried();
  for (const [name, element] of Object.entries({ ...large, ...small })) {
    if (customElements.get(name)) continue;
    customElements.define(name, element);
    if (unhurried) await nextTask();
  }
  sayAloud();
  document.documentElement.dataset['live'] = 'on';
}
