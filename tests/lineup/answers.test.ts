import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { answersWords } from '../../src/lineup/answers-words.ts';
import { sceneOf } from '../../src/lineup/scene.ts';
import type { LineUpEntry } from '../../src/lineup/schema.ts';
import { awkward } from './awkward.ts';
import { loft } from './entries.ts';

const told = (name: string, entry: LineUpEntry): string =>
  (answersWords[`answer-${name}`]?.(sceneOf(entry)) ?? []).filter((sentence) => sentence !== '').join(' ');

const listed = parse(readFileSync('content/answers.yaml', 'utf8')) as Record<string, unknown>;
const names = Object.keys(listed);

test('there are twelve, and each objection has its answer', () => {
  expect(names).toHaveLength(12);
  expect(names.map((name) => `answer-${name}`).sort()).toEqual(Object.keys(answersWords).sort());
});

/** The loft's two knives, seen from the other one. */
const opposed = (entry: LineUpEntry): LineUpEntry => ({
  ...entry,
  subject: entry.baseline,
  baseline: entry.subject,
  evenedUp: [],
});

describe.each(names)('%s', (name) => {
  test('stays under 500 characters, whatever the line-up', () => {
    for (const entry of [loft(), ...Object.values(awkward)] as LineUpEntry[])
      for (const one of [entry, opposed(entry)]) expect(told(name, one).length).toBeLessThan(500);
  });

  test('opens with whom it speaks of', () => {
    expect(told(name, loft())).toMatch(/^Dunlin against Plover, /);
    expect(told(name, opposed(loft()))).toMatch(/^Plover against Dunlin, /);
  });
});

/** Two knives alike but for what is changed. */
const alikeBut = (
  change: Partial<LineUpEntry['knives'][number]>,
  rest: Partial<LineUpEntry> = {},
): LineUpEntry => {
  const { knives, ...entry } = loft();
  const [plover] = knives;
  if (!plover) throw new Error('the loft has no knives');
  return { ...entry, knives: [plover, { ...plover, id: 'dunlin', name: 'Dunlin', ...change }], ...rest };
};

test('the angle’s two routes are those one can work by hand', () => {
  const thin = alikeBut({ angle: { deg: 12 } }, { reading: 'pocket' });
  // By hand: 24/12 = 2 by each route, 4 together.
  expect(told('angle-twice', thin)).toContain('×2.00, at the apex that wears ×2.00: together ×4.00');
  // By hand: arctan 0.25 = 14.036°; tan 38.036° / tan 26.036° = 0.7823 / 0.4885 = 1.601.
  const close = { ...thin, reading: 'close', slicePush: 0, friction: 0.25 } as const;
  expect(told('angle-twice', close)).toContain('As a wedge that opens the cut the angle makes ×1.60');
});

test('one difference leaves nothing to add', () => {
  const finer = alikeBut({ finish: { scale: 'FEPA-P', grit: 220 } });
  expect(told('just-add', finer)).toContain('They differ in finish alone');
  expect(told('all-steel', finer)).toContain('none of it is steel');
  expect(told('sharpen-alike', finer)).toContain('no difference');
});

test('the price of a thin edge is owned up to, and not claimed where it is not paid', () => {
  expect(told('thin-rolls', loft())).toContain('So yes, that is the price');
  expect(told('thin-rolls', opposed(loft()))).toContain('this one bends later, and pays for it in slicing');
});

test('the runs it takes are those of the usual formula, to a run or two', () => {
  const [, ratio = '', runs = ''] =
    /says ×([\d.]+)\. .* takes (\d+) runs/.exec(
      told('no-difference', alikeBut({ finish: { scale: 'FEPA-P', grit: 400 } })),
    ) ?? [];
  // n = 2 (1.960 + 0.842)² σ² / ln² ratio, σ² = ln(1 + 0.2²): the normal sum of any textbook; the t test takes a little more.
  const normal = (2 * (1.96 + 0.842) ** 2 * Math.log1p(0.04)) / Math.log(Number(ratio)) ** 2;
  expect(Number(runs)).toBeGreaterThanOrEqual(Math.floor(normal));
  expect(Number(runs)).toBeLessThanOrEqual(Math.ceil(normal) + 2);
});

test('a work that wear does not end is answered with it', () => {
  expect(told('other-work', { ...loft(), work: 'prying' })).toMatch(/which this work is not.*Right: in /);
});
