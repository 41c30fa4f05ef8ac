import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { contextIds, isAdditive, judge, kinds, kindsFor } from '../../src/exercises/index.ts';
import type { Kind } from '../../src/exercises/index.ts';
import { csvCell, makeSet, setCsv, setMarkdown, versions } from '../../src/exercises/set/index.ts';

const seeds = Array.from({ length: 40 }, (_, seed) => seed);
const numbers = (set: ReturnType<typeof makeSet>): string[] =>
  set.items.map(({ problem }) =>
    JSON.stringify([problem.kind, problem.givens.map(({ value }) => value), problem.options]),
  );

describe('a set', () => {
  test('mixes the kinds, and a fair share is additive', () => {
    for (const seed of seeds) {
      const made = makeSet({ seed, count: 12 }).items.map(({ problem }) => problem.kind);
      expect(made).toHaveLength(12);
      // A quarter of twelve adds; the nine others are all of different kinds.
      expect(made.filter(isAdditive)).toHaveLength(3);
      expect(new Set(made.filter((kind) => !isAdditive(kind))).size).toBe(9);
    }
  });

  test('places the additive ones anywhere', () => {
    const places = seeds.flatMap((seed) =>
      makeSet({ seed, count: 8 }).items.flatMap(({ number, problem }) =>
        isAdditive(problem.kind) ? [number] : [],
      ),
    );
    expect(new Set(places).size).toBe(8);
  });

  test('keeps to what is asked for', () => {
    const asked: Kind[] = ['undo', 'forward-chain'];
    const set = makeSet({ seed: 3, kinds: asked, level: 2, context: 'tides', count: 6 });
    expect(set.items.map(({ problem }) => problem.kind).sort()).toEqual([
      ...Array<Kind>(3).fill('forward-chain'),
      ...Array<Kind>(3).fill('undo'),
    ]);
    expect(set.items.every(({ problem }) => problem.level === 2 && problem.context === 'tides')).toBe(true);
  });

  test('rises through the levels', () => {
    const rising = makeSet({ seed: 3, level: 'rising', count: 9 }).items.map(({ problem }) => problem.level);
    expect(rising).toEqual([1, 1, 1, 2, 2, 2, 3, 3, 3]);
  });

  test.each(contextIds)('can be of every kind there is in %s', (context) => {
    const set = makeSet({ seed: 1, context, count: 40 });
    expect(new Set(set.items.map(({ problem }) => problem.kind))).toEqual(new Set(kindsFor(context)));
  });
});

describe('versions', () => {
  test('differ in every number and in nothing else', () => {
    for (const seed of seeds) {
      const sets = versions.map((version) => makeSet({ seed, version, level: 'rising', count: 10 }));
      const places = sets.map(({ items }) => items.map(({ problem }) => [problem.kind, problem.level]));
      expect(places[1]).toEqual(places[0]);
      expect(places[2]).toEqual(places[0]);
      expect(new Set(sets.flatMap(numbers)).size).toBe(30);
    }
  });

  test('of a kind with few numbers differ place by place', () => {
    const [a = [], b = [], c = []] = versions.map((version) =>
      numbers(makeSet({ seed: 5, version, kinds: ['undo'], count: 40 })),
    );
    for (const [index, one] of a.entries()) expect(new Set([one, b[index], c[index]]).size).toBe(3);
  });
});

describe('a key', () => {
  const set = makeSet({ seed: 11, count: 40, level: 'rising' });

  test('has its answers right, and its missteps wrong', () => {
    for (const { problem, key } of set.items) {
      const typed = (words: string) => words.replace(/^([A-D]): .*/, '$1');
      expect(judge(problem, typed(key.answer)).verdict).toBe('right');
      expect(key.missteps.length).toBeGreaterThanOrEqual(3);
      for (const { answer, step } of key.missteps) {
        expect(judge(problem, typed(answer)).verdict).toBe('misstep');
        expect(step).toBeLessThanOrEqual(key.steps.length);
      }
      expect(key.marks.total).toBe(key.steps.length + 1);
    }
  });

  test('adds up its marks, and says how to mark', () => {
    // Counted from the Markdown: every mark is written out as "(1 mark)".
    expect(setMarkdown(set, 'key').match(/\(1 mark\)/g)).toHaveLength(set.marks);
    for (const word of ['Method', 'Follow-through', 'Early rounding'])
      expect(setMarkdown(set, 'key')).toContain(`- ${word}: `);
  });

  test('is no part of the sheet', () => {
    const sheet = setMarkdown(set);
    expect(sheet).toContain('# Problems, version A\n\nSeed 11, ');
    for (const { problem, key } of set.items) {
      expect(sheet).toContain(problem.question);
      for (const { text } of problem.steps) expect(sheet).not.toContain(text);
      for (const { idea } of key.missteps) expect(sheet).not.toContain(idea);
    }
  });
});

/** Reads a table as RFC 4180 describes it. */
function parsed(csv: string): string[][] {
  const cells = [...csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)];
  const rows: string[][] = [[]];
  for (const [, quoted, bare, end] of cells) {
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? bare ?? '');
    if (end === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe('a table', () => {
  const set = makeSet({ seed: 2, count: 20 });
  const [head = [], ...rows] = parsed(setCsv(set));

  test('reads back whole', () => {
    expect(rows).toHaveLength(20);
    expect(rows.every((row) => row.length === head.length)).toBe(true);
    expect(rows.map((row) => row[head.indexOf('question')])).toEqual(
      set.items.map(({ problem }) => problem.question),
    );
    expect(rows.map((row) => row[head.indexOf('answer')])).toEqual(set.items.map(({ key }) => key.answer));
  });

  // The signs by which spreadsheets know a formula, as OWASP's page on CSV injection lists them.
  test.each([['=1+1'], ['+1'], ['-1'], ['@a'], ['\t=1'], ['\r=1'], [' =1'], ['＝1'], ['\u200b=1']])(
    '%j is not run',
    (text) => {
      expect(parsed(`${csvCell(text)}\r\n`)).toEqual([[`'${text}`]]);
    },
  );

  test('nothing else is changed', () => {
    for (const text of ['a', '1.5', '20% less', 'a=b', 'A: x, y', 'say "a"'])
      expect(parsed(`${csvCell(text)}\r\n`)).toEqual([[text]]);
    expect(setCsv(set)).not.toMatch(/(^|,|\n)"?[=+\-@]/);
  });
});

test('the same request makes the same bytes in another locale and time zone', () => {
  const request = { seed: 9, level: 'rising', count: 12, version: 'C' } as const;
  const program = `
    import { makeSet, setCsv, setMarkdown } from './src/exercises/set/index.ts';
    const set = makeSet(${JSON.stringify(request)});
    process.stdout.write(setMarkdown(set) + setMarkdown(set, 'key') + setCsv(set));`;
  const { stdout } = spawnSync(process.execPath, ['--input-type=module', '--eval', program], {
    env: { ...process.env, LC_ALL: 'ar_EG.UTF-8', TZ: 'Pacific/Apia', NODE_OPTIONS: '' },
    encoding: 'utf8',
  });
  const set = makeSet(request);
  expect(stdout).toBe(setMarkdown(set) + setMarkdown(set, 'key') + setCsv(set));
});

test.each([
  [{ seed: -1 }, 'seed -1 is not a whole number from 0 to 4294967295'],
  [{ seed: 1, count: 0 }, 'count 0 is not a whole number from 1 to 40'],
  [{ seed: 1, count: 41 }, 'count 41 is not'],
  [{ seed: 1, kinds: [] }, `kinds are none, allowed are ${kinds.join(', ')}`],
  [{ seed: 1, kinds: ['two-routes' as const], context: 'tides' as const }, 'kind "two-routes" is not one of'],
  [{ seed: 1, level: 4 as 1 }, 'level 4 is not between 1 and 3'],
  [{ seed: 1, version: 'D' as 'A' }, 'version "D" is not one of A, B, C'],
  [{ seed: 1, context: 'kitchen' as 'tides' }, 'context "kitchen" is not one of'],
])('%j is refused', (request, message) => {
  expect(() => makeSet(request)).toThrow(RangeError);
  expect(() => makeSet(request)).toThrow(message);
});
