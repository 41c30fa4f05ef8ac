import { describe, expect, test } from 'vitest';
import { bandBehind } from '../../../src/topics/band/words.ts';
import { guessVerdict } from '../../../src/phrases/guess-verdict.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { times } from '../../../src/scene/show.ts';
import { depths, explainedText, textForms } from '../../../src/topics/explained/text.ts';
import { explainedWords } from '../../../src/topics/explained/words.ts';
import { temptingSum } from '../../../src/scene/terms.ts';
import { compare } from '../../../src/model/index.ts';
import { notRecorded } from '../../../src/runs/log.ts';
import type { Run } from '../../../src/runs/log.ts';
import { oddComparisons } from '../odd-comparisons.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

const link = 'https://keenfold.example/telling/#with=2.x';
const opposed = () => ({ ...loft(), subject: loft().baseline, baseline: loft().subject });

describe.each(depths.flatMap((depth) => textForms.map((form) => [depth, form] as const)))(
  'the explained page in %s as %s',
  (depth, form) => {
    test('says the ratio the model computes, rounded once, and carries the link', () => {
      const scene = sceneOf(loft());
      const text = explainedText(scene, depth, form, link);
      // Asked of the model itself, not of the scene.
      const row = compare(scene.comparison, { reading: 'careful' }).rows.find(
        ({ knife }) => knife === 'dunlin',
      );
      expect(text).toContain(times(row?.product ?? NaN));
      expect(text).toContain(link);
      expect(text).toContain('Invented');
      if (depth === 'all of it')
        for (const { factor } of row?.terms ?? []) expect(text).toContain(times(factor ?? NaN));
    });

    test('says how sure it is where that was asked of the model', () => {
      const scene = sceneOf(loft());
      const band = bandBehind(scene, depth === 'one sentence' ? 'a sentence' : 'more');
      const described = explainedText(scene, depth, form, link, band);
      expect(band.join(' ')).toMatch(/sure only to between ×[\d.]+ and ×[\d.]+/);
      expect(described).toContain(band.join(' '));
      if (depth === 'one sentence') expect(described.split('\n')[0]).toMatch(/^[^.]+(?:\.\d[^.]*)*\.$/);
      expect(described).not.toMatch(/ {2}|\n{3}/);
    });

    test('differs for opposed comparisons', () =>
      expect(explainedText(sceneOf(opposed()), depth, form, link)).not.toBe(
        explainedText(sceneOf(loft()), depth, form, link),
      ));

    test.each(Object.entries(oddComparisons))('is whole for %s', (_name, entry) => {
      const scene = sceneOf(entry);
      const text = explainedText(
        scene,
        depth,
        form,
        link,
        bandBehind(scene, depth === 'one sentence' ? 'a sentence' : 'more'),
      );
      expect(text).not.toMatch(/NaN|undefined|Infinity|null| {2}|\n{3}/);
      expect(text.endsWith(`${form === 'Markdown' ? `(${link})` : link}\n`)).toBe(true);
    });
  },
);

test('a name cannot break the Markdown it stands in', () => {
  const scene = sceneOf(loftWith('dunlin', { name: '[x](y) *b* <i> `c` | #' }));
  const markdown = explainedText(scene, 'all of it', 'Markdown', link);
  expect(markdown).toContain('\\[x\\](y) \\*b\\* \\<i\\> \\`c\\` \\| \\#');
  expect(explainedText(scene, 'all of it', 'plain text', link)).toContain('[x](y) *b* <i> `c` | #');
});

test('the tempting sum of 40 % and 40 % is 1.8, where the product is 1.96', () => {
  // Worked by hand: 1 + 0.4 + 0.4.
  const { row } = sceneOf(loft());
  const [first, second, ...others] = row.careful.terms;
  if (!first || !second) throw new Error('the chain has fewer than two terms');
  const terms = [
    { ...first, factor: 1.4 },
    { ...second, factor: 1.4 },
    ...others.map((term) => ({ ...term, factor: null })),
  ];
  expect(temptingSum({ ...row.careful, terms })).toBeCloseTo(1.8, 12);
});

test('runs that go along are counted by knife', () => {
  const run = (knife: string): Run => ({
    knife,
    batch: notRecorded,
    sharpening: notRecorded,
    cuts: 100,
    endPoint: notRecorded,
    checkedEvery: notRecorded,
    startSharpness: notRecorded,
    angleDeg: notRecorded,
    burrChecked: notRecorded,
    judge: notRecorded,
  });
  const scene = sceneOf({ ...loft(), runs: [run('Dunlin'), run('Dunlin'), run('Plover'), run('Heron')] });
  expect(explainedWords['telling-runs']?.(scene)[0]).toBe(
    '4 measured runs go along with this line-up: 2 runs of Dunlin, one run of Plover.',
  );
});

describe('a guess is judged', () => {
  const held = { answer: 4, sum: 2.5 };
  test.each([
    [4.05, /You called it/],
    [2.5, /the sum/],
    [3.4, /a little low/],
    [4.8, /a little high/],
    [2, /called it low/],
    [9, /called it high/],
    [0.5, /the other knife/],
  ])('%s', (guess, verdict) => expect(guessVerdict(guess, held)).toMatch(verdict));

  test('by how far it is off as a ratio', () =>
    expect(guessVerdict(2, held)).toBe('You called it low: the answer is 2.0 times your call.'));
});
