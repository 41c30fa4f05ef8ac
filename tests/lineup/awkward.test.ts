import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { numbers } from '../../src/lineup/numbers.ts';
import { sceneOf } from '../../src/lineup/scene.ts';
import type { Scene } from '../../src/lineup/scene.ts';
import { validate } from '../../src/lineup/schema.ts';
import type { LineUpEntry } from '../../src/lineup/schema.ts';
import { words, wordsNamed } from '../../src/lineup/words.ts';
import { draw } from '../../src/plots/draw.ts';
import { sizes } from '../../src/plots/figure.ts';
import { figureNamed } from '../../src/plots/index.ts';
import { awkward } from './awkward.ts';

/** Everything the site says and draws of these is kept beside this file; `UPDATE=1` writes it anew, to be read. */
const folder = new URL('awkward/', import.meta.url);

const names = Object.keys(awkward);
const entryOf = (name: string): LineUpEntry => {
  const checked = validate(awkward[name]);
  if (!checked.ok)
    throw new Error(
      `${name}: ${checked.problems.map(({ path, message }) => `${path} ${message}`).join('; ')}`,
    );
  return checked.entry;
};

/** Of a lesson's own spans, not of the two knives: these speak of neither. */
const ofNeither = ['range-given', 'ranges', 'ranges-doubt'];

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

function told(name: string, scene: Scene): string {
  const chain = figureNamed('chain');
  const { columns, rows } = chain.table(scene);
  const sections = Object.keys(words).map((of) => {
    const sentences = wordsNamed(of, scene);
    return `## ${of}\n\n${sentences.length > 0 ? sentences.join('\n') : '(nothing to say)'}\n`;
  });
  const values = Object.entries(numbers).map(([of, read]) => row([of, read(scene)]));
  return [
    `# ${name}\n\nInvented: no number here was measured.\n`,
    ...sections,
    `## Captions\n\n${chain.caption(scene)}\n${figureNamed('sections').caption(scene)}\n`,
    `## The chain\n\n${[columns, columns.map(() => '---'), ...rows].map(row).join('\n')}\n`,
    `## Numbers\n\n${[row(['name', 'as shown']), row(['---', '---']), ...values].join('\n')}\n`,
  ].join('\n');
}

/** A drawing without what differs from machine to machine: the last digits of its coordinates. */
function drawn(of: string, scene: Scene): string {
  const { document } = parseHTML('<html><body></body></html>');
  const svg = draw(figureNamed(of), scene, sizes.wide, document as unknown as Document, of);
  svg.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  return `${svg.outerHTML.replaceAll(/-?\d+\.\d+(?:e-?\d+)?/g, (digits) => String(Number(Number(digits).toFixed(3))))}\n`;
}

function kept(file: string, now: string): void {
  if (process.env['UPDATE'] === '1') {
    mkdirSync(folder, { recursive: true });
    writeFileSync(new URL(file, folder), now);
  }
  expect(now).toBe(readFileSync(new URL(file, folder), 'utf8'));
}

describe.each(names)('%s', (name) => {
  const scene = sceneOf(entryOf(name));

  test('says what was read and approved', () => {
    kept(`${name}.md`, told(name, scene));
  });

  test.each(['chain', 'sections'])('draws the %s that was looked at', (of) => {
    const drawing = drawn(of, scene);
    expect(drawing).not.toMatch(/NaN|Infinity|undefined|style=/);
    kept(`${name}.${of}.svg`, drawing);
  });

  test('says nothing broken', () => {
    const text = told(name, scene);
    expect(text).not.toMatch(/NaN|Infinity|undefined|\[object|null/);
    const paragraphs = Object.keys(words).flatMap((of) => wordsNamed(of, scene));
    for (const sentence of paragraphs) {
      expect(sentence).toMatch(/[.?]$/);
      expect(sentence).not.toMatch(/ {2}| [,.;:]|,,|\.\.|times longer|−0 %/);
    }
  });

  test('says something else with the two knives exchanged', () => {
    const { baseline, subject, ...rest } = entryOf(name);
    // What is evened up takes the baseline's value: exchanged, it would be another pair of knives.
    const opposite = sceneOf({ ...rest, baseline: subject, subject: baseline });
    for (const of of Object.keys(words)) {
      const paragraph = wordsNamed(of, scene).join(' ');
      if (ofNeither.includes(of)) expect(paragraph).not.toMatch(/Dunlin|Plover/);
      else if (paragraph !== '') expect(wordsNamed(of, opposite).join(' '), of).not.toBe(paragraph);
    }
  });
});

test('thirty or more, and nothing is kept of any other', () => {
  expect(names.length).toBeGreaterThanOrEqual(30);
  const files = names.flatMap((name) => [`${name}.md`, `${name}.chain.svg`, `${name}.sections.svg`]);
  expect(readdirSync(folder).sort()).toEqual(files.sort());
});
