import { describe, expect, test } from 'vitest';
import { bandBehind } from '../../../src/topics/band/words.ts';
import { guessVerdict } from '../../../src/phrases/guess-verdict.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { short } from '../../../src/scene/show.ts';
import { depths, explainedText, textForms } from '../../../src/topics/explained/text.ts';
import { topic } from '../../../src/topics/explained/index.ts';
import { explainedWords } from '../../../src/topics/explained/words.ts';
import { temptingSum } from '../../../src/scene/terms.ts';
import { compare } from '../../../src/model/index.ts';
import { aRun } from '../../runs/runs.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { oddComparisons, pair } from '../odd-comparisons.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

const link = 'https://keenfold.example/explained/#with=2.x';
const opposed = () => ({ ...loft(), subject: loft().baseline, baseline: loft().subject });

describe.each(depths.flatMap((depth) => textForms.map((form) => [depth, form] as const)))(
  'the explained page in %s as %s',
  (depth, form) => {
    test('says the range with its middle, the factors at the middle settings, and carries the link', () => {
      const scene = sceneOf(loft());
      const text = explainedText(scene, depth, form, link);
      // The loft by an own calculation outside the model: low 4.4 to 4.8, middle 10.0 to 10.8, high 30 to 33.
      expect(text).toContain('Dunlin should cut about 5 to 30 times as long as Plover; 10 is the middle.');
      expect(text).toContain(link);
      expect(text).toContain('Invented');
      // Asked of the model itself, not of the scene.
      const row = compare(scene.comparison, { reading: 'careful' }).rows.find(
        ({ knife }) => knife === 'dunlin',
      );
      if (depth === 'all of it') {
        expect(text).toContain('If all multiply, they make 16; if some don’t, less.');
        for (const { factor } of row?.terms ?? [])
          expect(text).toContain(`Dunlin should cut ${short(factor, 2)} times as long as Plover.`);
      }
    });

    test('keeps the one answer and the careful estimate’s factors where Compare shows the quick sum', () => {
      const text = explainedText(sceneOf({ ...loft(), reading: 'quick' }), depth, form, link);
      expect(text).toContain('Dunlin should cut about 5 to 30 times as long as Plover; 10 is the middle.');
      if (depth === 'all of it')
        expect(text).toContain('If all multiply, they make 16; if some don’t, less.');
    });

    test('says how sure it is where that was asked of the model', () => {
      const scene = sceneOf(loft());
      const band = bandBehind(scene, 'more');
      const described = explainedText(scene, depth, form, link, band);
      expect(described.includes(band.join(' '))).toBe(depth !== 'one sentence');
      expect(described).not.toMatch(/ {2}|\n{3}/);
    });

    test('differs for opposed comparisons', () =>
      expect(explainedText(sceneOf(opposed()), depth, form, link)).not.toBe(
        explainedText(sceneOf(loft()), depth, form, link),
      ));

    test.each(Object.entries(oddComparisons))('is whole for %s', (_name, entry) => {
      const scene = sceneOf(entry);
      const text = explainedText(scene, depth, form, link, bandBehind(scene, 'more'));
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

test('the tempting sum of 40% and 40% is 1.8, where the product is 1.96', () => {
  // Worked by hand: 1 + 0.4 + 0.4.
  const { row } = sceneOf(loft());
  const [first, second, ...others] = row.careful.terms;
  if (!first || !second) throw new Error('the chain has fewer than two terms');
  const terms = [
    { ...first, factor: 1.4 },
    { ...second, factor: 1.4 },
    ...others.map((term) => ({ ...term, factor: 1 })),
  ];
  expect(temptingSum({ ...row.careful, terms })).toBeCloseTo(1.8, 12);
});

test('a guess is compared with the middle of the range, and with the sum', () => {
  const { answer = NaN, sum } = topic.guesses?.['explained']?.(sceneOf(loft())) ?? {};
  expect(answer).toBe(10);
  // By hand from the factors at the middle settings: 1 + 0.64 + 0.29 + 0.55 + 0.49 + 0.56 + 0.34 + 0.58.
  expect(sum).toBeCloseTo(4.44, 1);
});

test('that nobody knows how the factors combine is said only where it matters', () => {
  const said = (entry: ComparisonEntry): string =>
    explainedText(sceneOf(entry), 'one paragraph', 'plain text', link);
  expect(said(loft())).toContain('so the answer takes in three ways');
  // Finish and steel multiply in all three.
  expect(said(pair({ hrc: 63 }))).not.toContain('three ways');
  expect(said({ ...loft(), work: 'prying' })).not.toContain('three ways');
});

test('runs that go along are counted by knife', () => {
  const run = (knife: string) => aRun({ knife, cuts: 100 });
  const scene = sceneOf({ ...loft(), runs: [run('dunlin'), run('dunlin'), run('plover'), run('Heron')] });
  expect(explainedWords['explained-runs']?.(scene)[0]).toBe(
    '4 measured runs go along with this comparison: 2 runs of Dunlin, one run of Plover.',
  );
});

describe('a guess is judged', () => {
  const held = { answer: 4, sum: 2.5 };
  test.each([
    [4.05, /You’re right/],
    [2.5, /the sum/],
    [3.4, /a little low/],
    [4.8, /a little high/],
    [2, /^Too low/],
    [9, /^Too high/],
    [0.5, /the other knife/],
  ])('%s', (guess, verdict) => expect(guessVerdict(guess, held)).toMatch(verdict));

  test('by how far it is off as a ratio', () =>
    expect(guessVerdict(2, held)).toBe('Too low: the answer is 2.0 times your guess.'));
});

describe('every sentence of the page', () => {
  const sentencesOf = (text: string): string[] => text.split(/(?<=[.?!])\s+/);
  // A name of eighty letters makes any sentence long, and no writer can help it.
  const entries = Object.entries(oddComparisons).filter(([name]) => name !== 'long-names');

  test.each(entries)('has 25 words at most, no × and closed-up percentages, for %s', (_name, entry) => {
    const scene = sceneOf(entry);
    // The measures of the knives are lists, not sentences.
    const sentences = Object.entries(explainedWords)
      .filter(
        ([name]) =>
          !/^short-|-compared$|^explained-(?:wedge|apex|thickness|grind|finish|hardness|carbide)$/.test(name),
      )
      .flatMap(([name, say]) => (name === 'explained-notes' ? [] : say(scene)))
      .flatMap(sentencesOf);
    for (const sentence of sentences) {
      expect(sentence).not.toMatch(/×|\d %|times longer/);
      expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
    }
  });
});

test('a loss is told from both sides', () => {
  const scene = sceneOf(opposed());
  // The loft turned round, by the same own calculation: 1/33 to 1/4.4.
  expect(explainedWords['explained-answer']?.(scene)).toEqual([
    'Plover should cut about 0.03 to 0.2 times as long as Dunlin.',
  ]);
  expect(explainedWords['explained-middle']?.(scene)).toContain(
    'So Dunlin should cut about 5 to 30 times as long as Plover.',
  );
  expect(explainedWords['explained-surprise']?.(scene).join(' ')).toMatch(
    /^Adding up the losses of Plover leaves less than nothing, which can’t be\. But each loss takes its part/,
  );
});

test('a work without a slicing estimate says what counts instead, and nothing of sums and chances', () => {
  const scene = sceneOf({ ...loft(), work: 'prying' });
  expect(explainedWords['explained-answer']?.(scene).join()).toMatch(
    /^Plover bears .* the side load of Dunlin/,
  );
  expect(explainedWords['explained-middle']?.(scene).join(' ')).toMatch(/no slicing estimate/);
  expect(explainedWords['explained-surprise']?.(scene)).toEqual([]);
  expect(explainedWords['explained-chances']?.(scene)).toEqual([]);
});

test('each other knife has a line against the baseline', () => {
  const lines = explainedWords['explained-others']?.(sceneOf(loft())) ?? [];
  expect(lines).toHaveLength(2);
  for (const line of lines)
    expect(line).toMatch(/^(?:Curlew|Avocet): [\d.]+ to [\d.]+ times as long, middle [\d.]+\.$/);
});
