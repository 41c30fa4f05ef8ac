import type { Topic } from './topic.ts';

/**
 * The topics a page may name besides `base`, which every page has. A topic is a folder with an `index.ts`, found by
 * itself; each is a chunk of its own in the browser.
 */
const loaders = import.meta.glob<{ topic: Topic }>(['./*/index.ts', '!./base/index.ts']);

const path = (name: string): string => `./${name}/index.ts`;

export const isTopicName = (name: string | undefined): name is string =>
  name !== undefined && Object.hasOwn(loaders, path(name));

/**
 * Fetches a topic.
 *
 * @throws RangeError (rejected) for a name that is no folder of `src/topics`
 */
export async function loadTopic(name: string): Promise<Topic> {
  const load = loaders[path(name)];
  if (!load) throw new RangeError(`topic "${name}" is no folder of src/topics with an index.ts`);
  return (await load()).topic;
}
