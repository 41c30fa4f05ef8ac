import { existsSync, globSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, it, test } from 'vitest';
import { importProblem, rooms } from '../src/build/rooms.mjs';

const files = readdirSync('src', { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map(({ parentPath, name }) => join(parentPath, name).replaceAll('\\', '/'));
const modules = files.filter((file) => /\.(ts|mjs|js|astro)$/.test(file));

/** The script of a file; of an Astro component what runs at build and what it sends to the browser. */
function scriptOf(file: string): string {
  const text = readFileSync(file, 'utf8');
  if (!file.endsWith('.astro')) return text;
  const [, frontmatter = ''] = /^---\n([^]*?)\n---/.exec(text) ?? [];
  const scripts = [...text.matchAll(/<script>([^]*?)<\/script>/g)].map(([, script = '']) => script);
  return [frontmatter, ...scripts].join('\n');
}

/** The files that a pattern of `import.meta.glob` names. */
function globbed(script: string, folder: string): string[] {
  const [, argument = ''] = /import\.meta\.glob(?:<[^(]*>)?\(([^)]*)\)/.exec(script) ?? [];
  const patterns = [...argument.matchAll(/'(!?)([^']+)'/g)];
  const named = (sign: string) =>
    patterns
      .filter(([, not]) => not === sign)
      .flatMap(([, , pattern = '']) => globSync(join(folder, pattern)));
  return named('').filter((file) => !named('!').includes(file));
}

/** The files of this repository that a file imports, types included. */
function importsOf(file: string): string[] {
  const script = scriptOf(file);
  const named = ts
    .preProcessFile(script, true, true)
    .importedFiles.map(({ fileName }) => fileName)
    .filter((name) => name.startsWith('.'))
    .map((name) => join(dirname(file), name.replace(/\?.*$/, '')));
  return [...named, ...globbed(script, dirname(file))].map((path) => path.replaceAll('\\', '/'));
}

const graph = new Map(modules.map((file) => [file, importsOf(file)]));

/** Each group of files that import one another round in a circle, by their names. */
function circlesOf(imports: ReadonlyMap<string, readonly string[]>): string[][] {
  const reached = new Map<string, Set<string>>();
  const reach = (file: string): Set<string> => {
    const known = reached.get(file);
    if (known) return known;
    const found = new Set<string>();
    const open = [...(imports.get(file) ?? [])];
    for (let next = open.pop(); next !== undefined; next = open.pop())
      if (!found.has(next)) {
        found.add(next);
        open.push(...(imports.get(next) ?? []));
      }
    reached.set(file, found);
    return found;
  };
  const circular = [...imports.keys()].filter((file) => reach(file).has(file)).sort();
  const groups = new Map<string, string[]>();
  for (const file of circular) {
    const group = circular.filter((other) => reach(file).has(other) && reach(other).has(file));
    groups.set(group.join(), group);
  }
  return [...groups.values()];
}

describe('the rooms of the source', () => {
  it('are the folders of src, all of them', () => {
    const folders = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(Object.keys(rooms).sort()).toEqual(folders.map(({ name }) => name).sort());
  });

  it('import only files that exist, and many of them', () => {
    const all = [...graph].flatMap(([file, targets]) => targets.map((target) => ({ file, target })));
    expect(all.length).toBeGreaterThan(1000);
    expect(all.filter(({ target }) => !existsSync(target))).toEqual([]);
  });

  test.each([
    ['src/scene/a.ts', '../model/index.ts', undefined],
    ['src/scene/deep/a.ts', '../../model/index.ts', undefined],
    ['src/scene/a.ts', './model/a.ts', undefined],
    ['src/scene/a.ts', 'papaparse', undefined],
    ['tests/scene/a.ts', '../../src/model/memoize.ts', undefined],
    ['src/scene/a.ts', '../model/memoize.ts', 'import src/model/index.ts instead of src/model/memoize.ts'],
    [
      'src/model/chain/a.ts',
      '../../scene/a.ts',
      'src/model may not import from src/scene, which comes after it in the table of src/build/rooms.mjs',
    ],
    ['src/scene/a.ts', '../attic/a.ts', 'src/attic is not in the table of src/build/rooms.mjs'],
  ])('%s importing %s: %s', (importer, source, problem) => {
    expect(importProblem(resolve(importer), source)).toBe(problem);
  });
});

describe('imports', () => {
  it('in a circle are found', () => {
    const imports = new Map([
      ['a', ['b']],
      ['b', ['c', 'd']],
      ['c', ['a']],
      ['d', ['e']],
      ['e', []],
      ['f', ['f', 'a']],
    ]);
    expect(circlesOf(imports)).toEqual([['a', 'b', 'c'], ['f']]);
  });

  it('never run in a circle', () => {
    expect(circlesOf(graph)).toEqual([]);
  });
});

describe('size', () => {
  /** Files still to be cut, by the same rule. */
  const left: string[] = [];

  test('no file has more than 400 lines', () => {
    const long = files
      .filter((file) => /\.(ts|css)$/.test(file))
      .filter((file) => readFileSync(file, 'utf8').split('\n').length - 1 > 400);
    expect(long.sort()).toEqual(left);
  });

  test('no folder has more than 40 files lying in it', () => {
    const counts = new Map<string, number>();
    for (const file of files) counts.set(dirname(file), (counts.get(dirname(file)) ?? 0) + 1);
    expect([...counts].filter(([, count]) => count > 40)).toEqual([]);
  });
});

test('package.json names files that exist where it says what the bundler must keep', () => {
  const { sideEffects } = JSON.parse(readFileSync('package.json', 'utf8')) as { sideEffects: string[] };
  for (const pattern of sideEffects)
    expect(globSync(pattern, { exclude: ['node_modules'] }), pattern).not.toEqual([]);
});
