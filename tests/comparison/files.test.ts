import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comparisonsFile, readComparisons } from '../../src/comparison/files.ts';
import { comparisonMarkdown } from '../../src/compare/sheet/markdown.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { times } from '../../src/scene/show.ts';
import { oddComparisons } from '../topics/odd-comparisons.ts';
import { loft, loftWith } from './entries.ts';

describe('a file of comparisons', () => {
  test.each(Object.entries(oddComparisons))('comes back equal: %s', (name, entry) =>
    expect(readComparisons(comparisonsFile([{ name, entry }]))).toEqual({
      ok: true,
      comparisons: [{ name, entry }],
      problems: [],
    }),
  );

  test('comes back equal with a mark before it, as some editors save it', () =>
    expect(readComparisons(`\uFEFF${comparisonsFile([{ name: 'loft', entry: loft() }])}`)).toMatchObject({
      comparisons: [{ name: 'loft', entry: loft() }],
    }));

  test('keeps what can be read, and names what cannot', () => {
    const file = comparisonsFile([
      { name: 'one', entry: loft() },
      { name: 'two', entry: loft() },
    ]);
    const read = readComparisons(file.replace('"reading": "careful"', '"reading": "sideways"'));
    if (!read.ok) throw new Error(read.message);
    expect(read.comparisons.map(({ name }) => name)).toEqual(['two']);
    expect(read.problems).toEqual([expect.stringMatching(/Comparison 1.*sideways/)]);
  });

  const file = comparisonsFile([{ name: 'loft', entry: loft() }]);
  test.each([
    ['empty', '', /not JSON/],
    ['cut short', file.slice(0, 300), /not JSON/],
    ['of another kind', '{"type":"FeatureCollection"}', /no comparisons/],
    ['a list', '[]', /no comparisons/],
    ['of a version to come', file.replace(/"version": \d+/, '"version": 99'), /version 99/],
    ['of no version', file.replace(/"version": \d+/, '"version": "x"'), /does not say/],
    ['of a version before the first', file.replace(/"version": \d+/, '"version": 0'), /does not say/],
    ['far too long', ' '.repeat(20_000_001), /larger/],
  ])('%s says what is wrong', (_how, text, why) => {
    const read = readComparisons(text);
    expect(read.ok ? '' : read.message).toMatch(why);
  });

  test('never throws, whatever it holds', () =>
    fc.assert(
      fc.property(fc.json(), fc.anything(), (text, item) => {
        readComparisons(text);
        readComparisons(JSON.stringify({ keenfold: 'line-ups', version: 1, comparisons: [item] }) ?? '');
      }),
    ));
});

describe('a comparison as Markdown', () => {
  const link = 'https://keenfold.example/compare/#with=2.x';

  test.each(Object.entries(oddComparisons))('is a whole table for %s', (_name, entry) => {
    const text = comparisonMarkdown(sceneOf(entry), link);
    expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
    const lines = text.split('\n').filter((line) => line.startsWith('|'));
    expect(lines.length).toBeGreaterThan(9);
    for (const line of lines) expect(line.match(/(?<!\\)\|/g)).toHaveLength(entry.knives.length + 2);
  });

  test('holds each knife’s ratio as the model has it, and the link', () => {
    const scene = sceneOf(loft());
    const text = comparisonMarkdown(scene, link);
    for (const { multiplied, added } of scene.rows.careful) {
      expect(text).toContain(times(multiplied));
      expect(text).toContain(times(added));
    }
    expect(text).toContain(`(${link})`);
    expect(text).toContain('Invented');
  });

  test('says behind the answer what the page says of how sure it is', () => {
    const text = comparisonMarkdown(sceneOf(loft()), link, ['Nine chances in ten.']);
    expect(text).toMatch(/is the middle\. Nine chances in ten\.\n/);
  });

  test('is not broken by a name', () =>
    expect(comparisonMarkdown(sceneOf(loftWith('dunlin', { name: 'a|b' })), link)).toContain('a\\|b'));
});
