/**
 * What the site says and draws of odd comparisons, in file snapshots that a person reads and approves: one file a
 * comparison, one for its drawings, and `base.md` for what all of them say. `npm run unit -- odd-comparisons -u` writes
 * them anew.
 */
import { readdirSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { sceneOf } from '../../src/scene/scene.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { nextAsked } from '../../src/comparison/empty.ts';
import { jobOf } from '../../src/phrases/job.ts';
import { draw } from '../../src/figure-kit/draw.ts';
import { sizes } from '../../src/figure-kit/figure.ts';
import { everything, topics } from '../../src/topics/all.ts';
import type { Topic } from '../../src/topics/topic.ts';
import { oddComparisons } from './odd-comparisons.ts';

const folder = 'odd-comparisons';

const names = Object.keys(oddComparisons);
const entryOf = (name: string): ComparisonEntry => {
  const checked = validate(oddComparisons[name]);
  if (!checked.ok)
    throw new Error(
      `${name}: ${checked.problems.map(({ path, message }) => `${path} ${message}`).join('; ')}`,
    );
  return checked.entry;
};
const scenes = new Map(names.map((name) => [name, sceneOf(entryOf(name))]));

/** Every sentence, whatever page it stands on. */
const words = Object.values(topics).flatMap((topic) => Object.keys(topic.words ?? {}));

/** One thing said, a sentence or a whole table, and where. */
type Said = readonly [place: string, text: string];

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

/** All that one topic says of a comparison, in its order. */
const saidIn = (name: string, topic: Topic, scene: Scene): Said[] => [
  ...Object.keys(topic.words ?? {}).flatMap((of): Said[] => {
    const sentences = everything.words(of)(scene);
    return (sentences.length > 0 ? sentences : ['(nothing to say)']).map((text) => [`${name}: ${of}`, text]);
  }),
  ...(topic.figures ?? []).flatMap((figure): Said[] => {
    const place = `${name}: figure ${figure.id}`;
    const { columns, rows } = figure.table(scene);
    return [
      [place, figure.caption(scene)],
      [place, [columns, columns.map(() => '---'), ...rows].map(row).join('\n')],
    ];
  }),
  ...Object.entries(topic.numbers ?? {}).map(([of, read]): Said => [
    `${name}: numbers`,
    `- ${of}: ${read(scene)}`,
  ]),
];

const saidOf = new Map(
  [...scenes].map(([name, scene]) => [
    name,
    Object.entries(topics).flatMap(([topicName, topic]) => saidIn(topicName, topic, scene)),
  ]),
);

const keyOf = ([place, text]: Said): string => `${place}\n${text}`;
const [first = [], ...rest] = saidOf.values();
const base = rest.reduce((common, said) => {
  const found = new Set(said.map(keyOf));
  return common.filter((each) => found.has(keyOf(each)));
}, first);
const inBase = new Set(base.map(keyOf));

/** Each thing once, under the first place that says it, with the other places behind it. */
function written(title: string, said: readonly Said[]): string {
  const places = new Map<string, Set<string>>();
  for (const [place, text] of said) places.set(text, (places.get(text) ?? new Set()).add(place));
  const sections = new Map<string, string[]>();
  for (const [text, all] of places) {
    const [place = '', ...others] = all;
    const line = others.length > 0 ? `${text} [also ${others.join('; ')}]` : text;
    sections.set(place, [...(sections.get(place) ?? []), line]);
  }
  return [`# ${title}`, ...[...sections].map(([place, lines]) => `## ${place}\n\n${lines.join('\n')}`)]
    .join('\n\n')
    .concat('\n');
}

/** A drawing without what differs from machine to machine: the last digits of its coordinates. */
function drawn(of: string, scene: Scene, document: Document): SVGSVGElement {
  const svg = draw(everything.figure(of), scene, sizes.wide, document, of);
  svg.innerHTML = svg.innerHTML.replaceAll(/-?\d+\.\d+(?:e-?\d+)?/g, (digits) =>
    String(Number(Number(digits).toFixed(3))),
  );
  return svg;
}

/** The bars and the blades of a comparison, one above the other, an element a line. */
function drawings(scene: Scene): string {
  const { document } = parseHTML('<html><body></body></html>');
  const all = ['chain', 'sections'].map((of) => drawn(of, scene, document as unknown as Document));
  let top = 0;
  const placed = all.map((svg) => {
    svg.setAttribute('y', String(top));
    top += Number(svg.getAttribute('height'));
    return svg.outerHTML.replaceAll('><', '>\n<');
  });
  const width = Math.max(...all.map((svg) => Number(svg.getAttribute('width'))));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${top}">\n${placed.join('\n')}\n</svg>\n`;
}

/** Of a lesson's own spans, not of the two knives: these cover neither. */
const ofNeither = [
  'grits-refused',
  'range-given',
  'ranges',
  'ranges-doubt',
  'ruler-shares',
  'ruler-orders',
  'argue-settle-push',
  'argue-settle-floor',
  'argue-scatter',
];

/** Of the whole comparison, whichever of its knives is looked at. */
const ofTheComparison = [
  'answer-middle',
  'band-nearest',
  'explained-better',
  'explained-count',
  'explained-middle',
  'explained-notes',
  'limits-turning',
  'percentages-answer',
  'percentages-question',
  'percentages-why',
  'question-takes',
  'reasons-heading',
  'runs-sheet',
  'runs-start',
  // Cells of a table and positions taken: two knives may have the same.
  ...['angle', 'edge', 'finish'].flatMap((measure) => [
    `short-${measure}-baseline`,
    `short-${measure}-subject`,
  ]),
  ...['apex', 'push', 'structure', 'floor'].map((dispute) => `short-held-${dispute}`),
  'short-asked-work',
  'side-load',
  'short-all-reasons',
  'short-assumes',
  'short-better',
  'short-cost',
  'short-doing',
  'short-equal',
  'short-matters',
  'short-sure',
  'short-takes',
  'short-whose',
  'short-work',
];

/** Where nothing is known of one of the two, these ask for its first measure, whichever is looked at. */
const ofTheAnswer = ['answer-line', 'explained-answer', 'explained-sentence', 'short-answer'];
const asks = ({ entry }: Scene): boolean => nextAsked(entry) !== null;
/** Where nothing is sliced, the answer is which of the two bears more: the same, whichever is asked about. */
const bears = ({ entry }: Scene): boolean => !jobOf(entry).slicingChain;
/** A factor of one is its own inverse. */
const isOne = (paragraph: string): boolean => paragraph === '×1';
/** A measure in a cell is one knife’s, and two may have the same. */
const isMeasure = (of: string): boolean => of.startsWith('measure-');

/** Titles, headings and short answers by their names: none is a whole sentence. */
const isHeading = (of = ''): boolean => /^(?:short|measure)-|-(?:title|heading)$/.test(of);

test('what all of them say was read and approved', async () => {
  await expect(written('What every comparison says', base)).toMatchFileSnapshot(`${folder}/base.md`);
});

describe.each([...scenes])('%s', (name, scene) => {
  test('says what was read and approved', async () => {
    const said = saidOf.get(name) ?? [];
    expect(said.map(([, text]) => text).join('\n')).not.toMatch(/NaN|Infinity|undefined|\[object|null/);
    const own = said.filter((each) => !inBase.has(keyOf(each)));
    await expect(written(`${name}, all invented`, own)).toMatchFileSnapshot(`${folder}/${name}.md`);
  });

  test('draws what was looked at', async () => {
    const drawing = drawings(scene);
    expect(drawing).not.toMatch(/NaN|Infinity|undefined|style=/);
    await expect(drawing).toMatchFileSnapshot(`${folder}/${name}.svg`);
  });

  test('says nothing broken', () => {
    for (const [of, sentence] of words.flatMap((of) =>
      everything
        .words(of)(scene)
        .map((said) => [of, said]),
    )) {
      // A heading has no stop.
      expect(sentence).toMatch(isHeading(of) ? /[^.?]$/ : /[.?]$/);
      expect(sentence).not.toMatch(/ {2}| [,.;:]|,,|\.\.|times longer|−0%/);
    }
  });

  test('says something else with the two knives exchanged', () => {
    const { baseline, subject, ...others } = entryOf(name);
    // What is made equal takes the baseline's value: exchanged, it would be another pair of knives.
    const opposite = sceneOf({ ...others, baseline: subject, subject: baseline });
    for (const of of words) {
      const paragraph = everything.words(of)(scene).join(' ');
      if (ofNeither.includes(of)) expect(paragraph).not.toMatch(/Dunlin|Plover/);
      else if (
        paragraph !== '' &&
        !isOne(paragraph) &&
        !isMeasure(of) &&
        !ofTheComparison.includes(of) &&
        !((asks(scene) || bears(scene)) && ofTheAnswer.includes(of))
      )
        expect(everything.words(of)(opposite).join(' '), of).not.toBe(paragraph);
    }
  });
});

test('there are thirty or more, and nothing is kept of any other', () => {
  expect(names.length).toBeGreaterThanOrEqual(30);
  const files = ['base.md', ...names.flatMap((name) => [`${name}.md`, `${name}.svg`])];
  expect(readdirSync(new URL(folder, import.meta.url)).sort()).toEqual(files.sort());
});
