import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { sceneOf } from '../../src/scene/scene.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { draw } from '../../src/figure-kit/draw.ts';
import { sizes } from '../../src/figure-kit/figure.ts';
import { everything, topics } from '../../src/topics/all.ts';
import type { Topic } from '../../src/topics/topic.ts';
import { awkward } from './awkward.ts';

/** Everything the site says and draws of these is kept beside this file; `UPDATE=1` writes it anew, to be read. */
const folder = new URL('awkward/', import.meta.url);

const names = Object.keys(awkward);
const entryOf = (name: string): ComparisonEntry => {
  const checked = validate(awkward[name]);
  if (!checked.ok)
    throw new Error(
      `${name}: ${checked.problems.map(({ path, message }) => `${path} ${message}`).join('; ')}`,
    );
  return checked.entry;
};

/** Every sentence, whatever page it stands on. */
const words = Object.values(topics).flatMap((topic) => Object.keys(topic.words ?? {}));

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
const ofTheComparison = ['band-nearest', 'runs-sheet', 'runs-start'];

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

/** All that one topic says of a comparison. */
function described(name: string, topic: Topic, scene: Scene): string {
  const sections = Object.keys(topic.words ?? {}).map((of) => {
    const sentences = everything.words(of)(scene);
    return `## ${of}\n\n${sentences.length > 0 ? sentences.join('\n') : '(nothing to say)'}\n`;
  });
  const figures = (topic.figures ?? []).map((figure) => {
    const { columns, rows } = figure.table(scene);
    return `## Figure ${figure.id}\n\n${figure.caption(scene)}\n\n${[columns, columns.map(() => '---'), ...rows].map(row).join('\n')}\n`;
  });
  const values = Object.entries(topic.numbers ?? {}).map(([of, read]) => row([of, read(scene)]));
  return [
    `# ${name}\n\nInvented: no number here was measured.\n`,
    ...sections,
    ...figures,
    `## Numbers\n\n${[row(['name', 'as shown']), row(['---', '---']), ...values].join('\n')}\n`,
  ].join('\n');
}

/** A drawing without what differs from machine to machine: the last digits of its coordinates. */
function drawn(of: string, scene: Scene): string {
  const { document } = parseHTML('<html><body></body></html>');
  const svg = draw(everything.figure(of), scene, sizes.wide, document as unknown as Document, of);
  svg.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  return `${svg.outerHTML.replaceAll(/-?\d+\.\d+(?:e-?\d+)?/g, (digits) => String(Number(Number(digits).toFixed(3))))}\n`;
}

function kept(file: string, now: string): void {
  if (process.env['UPDATE'] === '1') {
    mkdirSync(new URL('.', new URL(file, folder)), { recursive: true });
    writeFileSync(new URL(file, folder), now);
  }
  expect(now).toBe(readFileSync(new URL(file, folder), 'utf8'));
}

describe.each(names)('%s', (name) => {
  const scene = sceneOf(entryOf(name));

  test.each(Object.entries(topics))('says of %s what was read and approved', (topicName, topic) => {
    const text = described(name, topic, scene);
    expect(text).not.toMatch(/NaN|Infinity|undefined|\[object|null/);
    kept(`${topicName}/${name}.md`, text);
  });

  test.each(['chain', 'sections'])('draws the %s that was looked at', (of) => {
    const drawing = drawn(of, scene);
    expect(drawing).not.toMatch(/NaN|Infinity|undefined|style=/);
    kept(`overview/${name}.${of}.svg`, drawing);
  });

  test('says nothing broken', () => {
    const paragraphs = words.flatMap((of) => everything.words(of)(scene));
    for (const sentence of paragraphs) {
      expect(sentence).toMatch(/[.?]$/);
      expect(sentence).not.toMatch(/ {2}| [,.;:]|,,|\.\.|times longer|−0 %/);
    }
  });

  test('says something else with the two knives exchanged', () => {
    const { baseline, subject, ...rest } = entryOf(name);
    // What is made equal takes the baseline's value: exchanged, it would be another pair of knives.
    const opposite = sceneOf({ ...rest, baseline: subject, subject: baseline });
    for (const of of words) {
      const paragraph = everything.words(of)(scene).join(' ');
      if (ofNeither.includes(of)) expect(paragraph).not.toMatch(/Dunlin|Plover/);
      else if (paragraph !== '' && !ofTheComparison.includes(of))
        expect(everything.words(of)(opposite).join(' '), of).not.toBe(paragraph);
    }
  });
});

test('thirty or more, and nothing is kept of any other', () => {
  expect(names.length).toBeGreaterThanOrEqual(30);
  const files = names.flatMap((name) => [
    ...Object.keys(topics).map((topic) => `${topic}/${name}.md`),
    `overview/${name}.chain.svg`,
    `overview/${name}.sections.svg`,
  ]);
  const found = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.includes('.'),
  );
  expect(found.map((file) => file.replaceAll('\\', '/')).sort()).toEqual(files.sort());
});
