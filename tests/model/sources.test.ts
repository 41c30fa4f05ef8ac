import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';

interface Source {
  title: string;
  kind: string;
  taken: string;
  seen: string;
}
const sources = parse(readFileSync('content/sources.yaml', 'utf8')) as Record<string, Source>;
const ids = Object.keys(sources);

const under = (folder: string): { file: string; text: string }[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|mdx|astro|yaml)$/.test(entry.name))
    .map(({ parentPath, name }) => `${parentPath}/${name}`.replaceAll('\\', '/'))
    // What packages and builds have laid beside our own files.
    .filter((file) => !/\/(node_modules|\.astro)\//.test(file))
    .filter((file) => !file.endsWith('sources.yaml'))
    .map((file) => ({ file, text: readFileSync(file, 'utf8') }));
const texts = [...under('src'), ...under('content'), ...under('tests')];

/** What a constant says instead of a source where it has none. */
const standings = ['derived', 'assumed', 'practice', 'memory'];

/** Ways a source is pointed at: a tag in a docstring, a field of a constant, a citation in prose. */
const pointers = [/\* @source ([\w-]+)/g, /\bsource: '([\w-]+)'/g, /<Cite\s+id="([\w-]+)"/g];
const pointed = (entries: typeof texts): { file: string; id: string }[] =>
  entries.flatMap(({ file, text }) =>
    pointers.flatMap((pointer) => [...text.matchAll(pointer)].map(([, id = '']) => ({ file, id }))),
  );

describe('sources', () => {
  test('every id that is pointed at exists', () => {
    const found = pointed(texts.filter(({ file }) => !file.endsWith('sources.test.ts')));
    expect(found.length).toBeGreaterThan(10);
    expect(found.filter(({ id }) => !ids.includes(id) && !standings.includes(id))).toEqual([]);
  });

  test('every source is used somewhere', () => {
    const everything = texts.map(({ text }) => text).join('\n');
    expect(ids.filter((id) => !everything.includes(id))).toEqual([]);
  });

  test.each(ids)('%s says what was taken and how it was seen', (id) => {
    const { title, kind, taken, seen } = sources[id] ?? { title: '', kind: '', taken: '', seen: '' };
    for (const text of [title, taken, seen]) expect(text.length).toBeGreaterThan(4);
    expect(['standard', 'paper', 'web', 'handbook', 'textbook', 'memory']).toContain(kind);
  });
});
