import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figureIds, wholeRatioFigures } from '../../src/components/content/homes.ts';
import { answersWords } from '../../src/topics/answers/words.ts';
import { headlineOf } from '../../src/scene/headline.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { asLongAs } from '../../src/phrases/as-long-as.ts';
import { ratioSaid } from '../../src/phrases/judged-runs.ts';
import { ratioInWords, times } from '../../src/scene/show.ts';
import { everything } from '../../src/topics/all.ts';
import { dist } from '../site/pages.ts';
import { loft } from '../comparison/entries.ts';

/** The loft's own pair, whose ratio no part of it makes alone. */
const scene = sceneOf(loft());
const { multiplied } = scene.row.careful;
const { low, high } = headlineOf(scene);
const { subject, baseline } = scene;

/** Whether a text says how the two compare in all, by the careful estimate. */
const saysWhole = (text: string): boolean =>
  text.includes(times(multiplied)) ||
  text.includes(`at ${ratioSaid(multiplied)} times as long as`) ||
  text.includes(`cuts ${asLongAs(multiplied, baseline.name)}`) ||
  new RegExp(`(?:is|gives) ${ratioSaid(multiplied)}(?: if|, at)`).test(text) ||
  // From the lowest to the highest of the three ways.
  new RegExp(`to ${ratioSaid(multiplied)}(?: times as long as ${baseline.name})?, by how the effects combine`).test(text) ||
  ['cuts', 'slices'].some((does) =>
    text.includes(`${subject.name} ${does} ${ratioInWords(multiplied)} as ${baseline.name}`),
  );

/** The range that is the answer, as sentences and captions have it. */
const range = `${low} to ${high} times as long`;

/** Words that say the band of the whole ratio. */
const bands = ['answer', 'whole-band', 'band', 'sure'];

const files = globSync(['content/lessons/*.mdx', 'src/{pages,compare}/**/*.astro']);
const wordsIn = (text: string): string[] =>
  [...text.matchAll(/<Words of="([\w-]+)"/g)].map(([, name = '']) => name);
const saying = files.filter((file) =>
  wordsIn(readFileSync(file, 'utf8')).some((name) => saysWhole(everything.words(name)(scene).join(' '))),
);

test('the whole ratio of two knives is said in many places', () => {
  expect(saying.length).toBeGreaterThanOrEqual(10);
});

describe.each(saying)('%s', (file) => {
  test('says the whole ratio with its band', () => {
    const source = readFileSync(file, 'utf8');
    const said = [
      ...wordsIn(source)
        .filter((name) => bands.includes(name))
        .map((name) => everything.words(name)(scene).join(' ')),
      // The ruler says it in its caption.
      ...(source.includes('<Figure of="ruler"') ? [everything.figure('ruler').caption(scene)] : []),
    ];
    expect(said).not.toEqual([]);
    for (const text of said) expect(text).toContain(range);
  });
});

test('a figure that stands alone has its band below it where its caption gives the whole ratio', () => {
  // Of percentages that are worked with, and of a position held and not predicted.
  const others = ['growing-bars', 'positions'];
  const described = figureIds.filter((id) => {
    const caption = everything.figure(id).caption(scene);
    return saysWhole(caption) && !caption.includes(range);
  });
  expect(described.filter((id) => !others.includes(id)).sort()).toEqual([...wholeRatioFigures].sort());
  for (const id of figureIds) {
    const page = readFileSync(`${dist}/embed/${id}/index.html`, 'utf8');
    expect(page.includes('of="whole-band"')).toBe(wholeRatioFigures.includes(id));
  }
});

describe.each(Object.keys(answersWords))('%s', (name) => {
  test('says the whole ratio with its band', () => {
    const text = everything.words(name)(scene).join(' ');
    expect(text).toContain(range);
  });
});
