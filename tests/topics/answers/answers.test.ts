import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { answersWords } from '../../../src/topics/answers/words.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { Scene } from '../../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { oddComparisons } from '../odd-comparisons.ts';
import { loft } from '../../comparison/entries.ts';

const scenes = new Map<string, Scene>();

/** The scene of a comparison, made once: its band takes many samples. */
function sceneFor(entry: ComparisonEntry): Scene {
  const key = JSON.stringify(entry);
  const scene = scenes.get(key) ?? sceneOf(entry);
  scenes.set(key, scene);
  return scene;
}

const described = (name: string, entry: ComparisonEntry): string =>
  (answersWords[`answer-${name}`]?.(sceneFor(entry)) ?? []).filter((sentence) => sentence !== '').join(' ');

const listed = parse(readFileSync('content/answers.yaml', 'utf8')) as Record<string, unknown>;
const names = Object.keys(listed);

test('there are twelve, and each objection has its answer', () => {
  expect(names).toHaveLength(12);
  expect(names.map((name) => `answer-${name}`).sort()).toEqual(Object.keys(answersWords).sort());
});

/** The loft's two knives, seen from the other one. */
const opposed = (entry: ComparisonEntry): ComparisonEntry => ({
  ...entry,
  subject: entry.baseline,
  baseline: entry.subject,
  madeEqual: [],
});

/** Low, middle and high of the headline an answer opens with. */
const headlineIn = (text: string): number[] => {
  const [, low, high, middle] =
    /about ([\d.]+) to ([\d.]+) times as long as \S+; ([\d.]+) is the middle\./.exec(text) ?? [];
  return [low, middle, high].map(Number);
};

describe.each(names)('%s', (name) => {
  test('stays under 500 characters, whatever the comparison', () => {
    for (const entry of [loft(), ...Object.values(oddComparisons)] as ComparisonEntry[])
      for (const one of [entry, opposed(entry)]) expect(described(name, one).length).toBeLessThan(500);
  });

  test('opens with whom it covers, and the range and middle of the model', () => {
    // The loft by an own calculation outside the model: low 4.4 to 4.8, middle 10.0 to 10.8, high 30 to 33.
    expect(described(name, loft())).toMatch(
      /^Dunlin should cut about 5 to 30 times as long as Plover; 10 is the middle\. /,
    );
    // From the other knife it is the same turned over, as near as the steps of a headline lie, up to 1.25 apart.
    const [low = 0, middle = 0, high = 0] = headlineIn(described(name, loft()));
    expect(described(name, opposed(loft()))).toMatch(/^Plover should cut about /);
    const over = headlineIn(described(name, opposed(loft())));
    for (const [turned, straight] of [
      [over[0], high],
      [over[1], middle],
      [over[2], low],
    ] as const)
      expect(Math.abs(Math.log((turned ?? 0) * straight))).toBeLessThan(Math.log(1.25));
  });

  test('says nothing that cannot be read, whatever the comparison', () => {
    for (const entry of Object.values(oddComparisons))
      expect(described(name, entry)).not.toMatch(/NaN|undefined|Infinity|null|\[object| {2}/);
  });

  test('keeps to one headline: the quick sum is named where it stands', () => {
    const text = described(name, { ...loft(), reading: 'quick' });
    expect(text).toMatch(/^Dunlin should cut about 5 to 30 times as long as Plover; 10 is the middle\. /);
    // (24/14)²·(0.60/0.25)·…, 56 in all: by hand from the ratios of the measures.
    if (/\b56\b/.test(text)) expect(text).toMatch(/[Qq]uick sum/);
  });
});

/** Two knives alike but for what is changed. */
const alikeBut = (
  change: Partial<ComparisonEntry['knives'][number]>,
  rest: Partial<ComparisonEntry> = {},
): ComparisonEntry => {
  const { knives, ...entry } = loft();
  const [plover] = knives;
  if (!plover) throw new Error('the loft has no knives');
  return { ...entry, knives: [plover, { ...plover, id: 'dunlin', name: 'Dunlin', ...change }], ...rest };
};

test('the angle’s two routes are those one can work by hand', () => {
  const thin = alikeBut({ angle: { deg: 12 } }, { reading: 'quick' });
  // By hand: 24/12 = 2 by each route, 4 together.
  expect(described('angle-twice', thin)).toContain('2, at the apex that wears 2. Multiplied that is 4.');
  // By hand: arctan 0.25 = 14.036°; tan 38.036° / tan 26.036° = 0.7823 / 0.4885 = 1.601.
  const careful = { ...thin, reading: 'careful', slicePush: 0, friction: 0.25 } as const;
  expect(described('angle-twice', careful)).toContain('As a wedge that opens the cut the angle makes 1.6,');
});

test('whether the order is sure depends on the band before it is rounded', () => {
  const [, low = NaN, high = NaN] = (
    /from ([\d.]+) to ([\d.]+)\. It does not hold 1/.exec(described('too-exact', loft())) ?? []
  ).map(Number);
  expect(low).toBeGreaterThan(4.4);
  expect(low).toBeLessThan(4.8);
  expect(high).toBeGreaterThan(30);
  expect(high).toBeLessThan(33);
  expect(described('too-exact', alikeBut({}))).toMatch(/It holds 1, so the order/);
});

// The loft by an own calculation outside the model: geometry ×4.87 multiplied and ×2.01 added, steel ×2.11.
test('where adding turns geometry and steel round, the answer says so', () => {
  expect(described('all-steel', loft())).toContain('steel makes 2.1, geometry 4.9 and finish 1.6.');
  expect(described('all-steel', loft())).toContain(
    'But geometry has a smaller effect than steel if the forces add (2).',
  );
  // The same thickness and finish, no harder: geometry stays the larger whichever way it is combined.
  expect(described('all-steel', alikeBut({ angle: { deg: 8 }, hrc: 58 }))).not.toContain('effect of the two');
});

// The same calculation: 16.06, 6.63 and 8.08 at the middle settings; the samples' own middles near 19, 8 and 8.
test('the three ways are named, at the middle settings and by their samples', () => {
  expect(described('only-a-model', loft())).toContain(
    '16 if they multiply, 6.6 if the forces add and 8.1 if the force has a limit. The quick sum says 56.',
  );
  expect(described('forces-add', loft())).toContain(
    'near 20 if all factors multiply, 8 if the forces add and 8 if the force has a limit',
  );
});

test('one difference leaves nothing to add', () => {
  const finer = alikeBut({ finish: { scale: 'FEPA-P', grit: 220 } });
  expect(described('just-add', finer)).toContain('They differ in the finish of the edge alone');
  expect(described('all-steel', finer)).toContain('none of it is steel');
  expect(described('sharpen-alike', finer)).toContain('no difference');
});

test('the price of a thin edge is owned up to, and not claimed where it is not paid', () => {
  expect(described('thin-rolls', loft())).toContain('So yes, that is the price');
  expect(described('thin-rolls', opposed(loft()))).toContain(
    'Plover rolls later, and pays for it in slicing',
  );
});

test('the runs it takes are those of the usual formula, to a run or two', () => {
  const [, runs = '', ratio = ''] =
    /takes (\d+) runs of each to find a ratio of ([\d.]+)/.exec(
      described('no-difference', alikeBut({ finish: { scale: 'FEPA-P', grit: 400 } })),
    ) ?? [];
  // n = 2 (1.960 + 0.842)² σ² / ln² ratio, σ² = ln(1 + 0.2²): the normal sum of any textbook; the t test takes a little more.
  const normal = (2 * (1.96 + 0.842) ** 2 * Math.log1p(0.04)) / Math.log(Number(ratio)) ** 2;
  expect(Number(runs)).toBeGreaterThanOrEqual(Math.floor(normal));
  expect(Number(runs)).toBeLessThanOrEqual(Math.ceil(normal) + 2);
});

test('a work that wear does not end is answered with it', () => {
  expect(described('other-work', { ...loft(), work: 'prying' })).toMatch(
    /^In clean slicing, which this work is not: .* Right\. [A-Z].* So that range doesn’t hold for /,
  );
});
