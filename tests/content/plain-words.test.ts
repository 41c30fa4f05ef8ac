import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { validate } from '../../src/comparison/validate.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { topics } from '../../src/topics/all.ts';
import { pages } from '../site/pages.ts';
import { oddComparisons } from '../topics/odd-comparisons.ts';
import { faultsIn, sentencesIn } from './plain-words.ts';

/** The pages that are held to it. */
const held = /^\/(?:$|404|compare\/|explained\/|comparisons\/|saved\/|seal\/|sheet\/|answers\/|argue\/|words\/|sources\/)/;

/** Running text: not tables, drawings, formulas, code, or the small print of a figure. */
const running = 'p, li, figcaption, h1, h2, h3, summary, dd, dt, legend, label, small, noscript';
const apart = 'table, svg, math, code, pre, .title-block, select, script, style, template';

function textsOf(path: string): string[] {
  const html = readFileSync(`dist${path.endsWith('/') ? `${path}index.html` : path}`, 'utf8');
  const { document } = parseHTML(html);
  for (const part of document.querySelectorAll(apart)) part.remove();
  // A block within another is read on its own.
  return [...document.querySelectorAll(running)]
    .map((element) => {
      const own = element.cloneNode(true) as Element;
      for (const inner of own.querySelectorAll(running)) inner.replaceWith('\n');
      return own.textContent?.replaceAll(/[^\S\n]+/g, ' ').trim() ?? '';
    })
    .filter((text) => text !== '');
}

describe('the pages speak plainly', () => {
  test.each(pages().filter((path) => held.test(path)))('%s', (path) => {
    const faults = textsOf(path).flatMap(faultsIn);
    expect(faults, faults.join('\n')).toEqual([]);
  });

  test.each(pages())('no link on %s parts a number from its unit', (path) => {
    const html = readFileSync(`dist${path.endsWith('/') ? `${path}index.html` : path}`, 'utf8');
    const unit = String.raw`(?:mm|µm|°|%|HRC|times)`;
    expect(html.match(new RegExp(String.raw`\d\s*</a>\s*${unit}|\d\s*<a\b[^>]*>\s*${unit}`, 'g')) ?? []).toEqual([]);
  });
});

/** Labels in a table or a drawing. */
const isLabel = /-times$/;

/** The topics whose sentences these pages say. */
const saying = [
  'answers',
  'argue',
  'ask',
  'band',
  'check-prediction',
  'compare',
  'edges',
  'explained',
  'headline',
  'how-sure',
  'look-closer',
  'overview',
  'reasons',
  'ruler',
];

describe('odd comparisons are spoken of plainly', () => {
  test.each(Object.entries(oddComparisons))('%s', (_name, entry) => {
    const checked = validate(entry);
    if (!checked.ok) throw new Error('an odd comparison is refused');
    const scene = sceneOf(checked.entry);
    // A name is one word, however long.
    const named = (text: string): string =>
      scene.knives.reduce((said, { name }, index) => said.replaceAll(name, `Knife${index}`), text);
    const faults = saying.flatMap((topic) => [
      ...Object.entries(topics[topic]?.words ?? {}).flatMap(([of, say]) =>
        (isLabel.test(of) ? [] : say(scene).map(named))
          .flatMap(faultsIn)
          .map((fault) => `${topic}, ${of}: ${fault}`),
      ),
      ...(topics[topic]?.figures ?? []).flatMap((figure) =>
        faultsIn(named(figure.caption(scene))).map((fault) => `${topic}, caption of ${figure.id}: ${fault}`),
      ),
    ]);
    expect(faults, faults.join('\n')).toEqual([]);
  });
});

describe('the rules themselves', () => {
  test.each([
    ['Dunlin makes ×1.64 of it.', 1],
    ['Dunlin cuts 1.64 times as long.', 1],
    ['Dunlin cuts 1.6 times as long, 40% more.', 0],
    ['It lasts 40 % longer.', 2],
    ['It is 3 times longer.', 1],
    ['P400 and 2018 are numbers too, and 0.25 mm.', 0],
    ['They can’t be told apart. They are told apart.', 1],
    [`${'word '.repeat(26)}.`, 1],
    [`${'word '.repeat(25)}.`, 0],
  ])('“%s” has %i faults', (text, many) => {
    expect(faultsIn(text)).toHaveLength(many);
  });

  test('sentences end where people end them', () => {
    expect(sentencesIn('One. Two? “Three.” Four: 5 mm.')).toEqual(['One.', 'Two?', '“Three.”', 'Four:', '5 mm.']);
  });
});
