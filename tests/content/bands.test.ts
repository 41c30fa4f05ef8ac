import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figureIds, wholeRatioFigures } from '../../src/components/content/homes.ts';
import { answersWords } from '../../src/topics/answers/words.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { ratioInWords, times } from '../../src/scene/show.ts';
import { everything } from '../../src/topics/all.ts';
import { dist } from '../site/pages.ts';
import { loft } from '../comparison/entries.ts';

/** The loft's own pair, whose ratio no part of it makes alone. */
const scene = sceneOf(loft());
const { product } = scene.row.careful;
const { subject, baseline } = scene;

/** Whether a text says how the two compare in all, by the careful estimate. */
const saysWhole = (text: string): boolean =>
  text.includes(times(product)) ||
  text.includes(`${subject.name} should cut ${ratioInWords(product)} as ${baseline.name}`);

/** A caption that has the band in itself. */
const withBand = /with 90 % between ×[\d.]+ and ×[\d.]+/;

/** Words that say the band of the whole ratio. */
const bands = ['answer-band', 'whole-band', 'band', 'sure', 'runs-square'];

const files = globSync(['content/lessons/*.mdx', 'src/pages/**/*.astro']);
const wordsIn = (text: string): string[] =>
  [...text.matchAll(/<Words of="([\w-]+)"/g)].map(([, name = '']) => name);
const saying = files.filter((file) =>
  wordsIn(readFileSync(file, 'utf8')).some((name) => saysWhole(everything.words(name)(scene).join(' '))),
);

test('the whole ratio of two knives is said in many places', () => {
  expect(saying.length).toBeGreaterThan(10);
});

describe.each(saying)('%s', (file) => {
  test('says the whole ratio with its band', () => {
    const band = wordsIn(readFileSync(file, 'utf8')).filter((name) => bands.includes(name));
    expect(band).not.toEqual([]);
    for (const name of band) expect(everything.words(name)(scene).join(' ')).toMatch(/×[\d.]+ (?:and|to) ×[\d.]+/);
  });
});

test('a figure that stands alone has its band below it where its caption gives the whole ratio', () => {
  // Of percentages that are worked with, and of a position held and not predicted.
  const others = ['growing-bars', 'positions'];
  const described = figureIds.filter((id) => {
    const caption = everything.figure(id).caption(scene);
    return saysWhole(caption) && !withBand.test(caption);
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
    expect(saysWhole(text)).toBe(true);
    expect(text).toMatch(/\(band ×[\d.]+ to ×[\d.]+\)/);
  });
});
