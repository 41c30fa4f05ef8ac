import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { chunks, groups } from '../../src/build/chunks.mjs';

test.each(chunks.flatMap(({ name, of }) => of.map((place) => [name, place] as const)))(
  'the rule of %s finds %s',
  (_name, place) => {
    expect(existsSync(place)).toBe(true);
    if (place.endsWith('/')) expect(readdirSync(place)).not.toEqual([]);
  },
);

/** The files that a file imports as it is loaded, and those that they import, itself included. */
function loadedWith(file: string, found = new Set<string>()): Set<string> {
  if (found.has(file)) return found;
  found.add(file);
  for (const [, source = ''] of readFileSync(file, 'utf8').matchAll(
    /^(?:import|export) (?!type )[^;]*?from '(\.[^']+)';/gm,
  ))
    loadedWith(join(dirname(file), source).replaceAll('\\', '/'), found);
  return found;
}

test('all that the first script imports is in the rule of its file', () => {
  const loaded = [...loadedWith('src/elements/start/boot.ts')];
  expect(loaded.length).toBeGreaterThan(3);
  const start = groups.find(({ name }) => name === 'start');
  expect(loaded.filter((file) => !start?.test(`/anywhere/${file}`))).toEqual([]);
});
