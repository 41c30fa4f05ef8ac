import { readdirSync } from 'node:fs';
import { registryOf } from './registry.ts';
import type { Part, Topic } from './topic.ts';

type Module = { topic: Topic };

/** Outside the site's build, as in browser tests, the folder itself is read. */
async function fromFolder(): Promise<Record<string, Module>> {
  const folders = readdirSync(new URL('.', import.meta.url), { withFileTypes: true });
  const found: Record<string, Module> = {};
  for (const { name } of folders.filter((entry) => entry.isDirectory()))
    try {
      found[`./${name}/index.ts`] = (await import(`./${name}/index.ts`)) as Module;
    } catch (error) {
      // A folder without a door is no topic: what it holds serves others.
      if ((error as { code?: string }).code !== 'ERR_MODULE_NOT_FOUND') throw error;
    }
  return found;
}

// The types say that the site's build is always at hand; a plain Node has none.
const isBuilt = Boolean((import.meta as { env?: unknown }).env);
const modules = isBuilt ? import.meta.glob<Module>('./*/index.ts', { eager: true }) : await fromFolder();

/** Every topic at once, by its folder's name: for the build and for tests, never for the browser. */
export const topics: Readonly<Record<string, Topic>> = Object.fromEntries(
  Object.entries(modules)
    .map(([file, { topic }]): [string, Topic] => [file.split('/')[1] ?? '', topic])
    .sort(([one], [other]) => (one < other ? -1 : 1)),
);

export const everything = registryOf(Object.values(topics));

/** The topic an element has to name so that the browser fetches it; nothing for what every page has. */
export function topicOf(part: Part, name: string): string | undefined {
  const has = (topic: Topic): boolean =>
    part === 'figures'
      ? (topic.figures ?? []).some(({ id }) => id === name)
      : Object.hasOwn(topic[part] ?? {}, name);
  const found = Object.keys(topics).find((key) => has(topics[key] ?? {}));
  return found === 'base' ? undefined : found;
}
