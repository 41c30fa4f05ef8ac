import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { answersWords } from '../../../src/topics/answers/words.ts';
import { bandWords } from '../../../src/topics/band/words.ts';
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

/** The ends of the band in what the Compare page says behind its answer; none where it says there is none. */
const bandSaid = (entry: ComparisonEntry): string[] =>
  bandWords['whole-band']?.(sceneFor(entry))
    .join(' ')
    .match(/sure only to between (×[\d.]+) and (×[\d.]+)/)
    ?.slice(1) ?? [];

/** Lower end, ratio and upper end of an answer by the careful estimate. */
const withBand = (text: string): number[] => {
  const [, ratio, low, high] = /×([\d.]+) \(band ×([\d.]+) to ×([\d.]+)\)/.exec(text) ?? [];
  return [low, ratio, high].map(Number);
};

describe.each(names)('%s', (name) => {
  test('stays under 500 characters, whatever the comparison', () => {
    for (const entry of [loft(), ...Object.values(oddComparisons)] as ComparisonEntry[])
      for (const one of [entry, opposed(entry)]) expect(described(name, one).length).toBeLessThan(500);
  });

  test('says the ratio with its band, as the Compare page has it', () => {
    for (const entry of [loft(), opposed(loft()), ...Object.values(oddComparisons)] as ComparisonEntry[]) {
      const [low, high] = bandSaid(entry);
      if (low === undefined || high === undefined)
        expect(described(name, entry)).toMatch(/\(no band\)|has none\)/);
      else expect(described(name, entry)).toContain(` ${low} to ${high})`);
    }
    // The band runs about the ratio, and from the other knife it is the same turned over.
    const [low = 0, ratio = 0, high = 0] = withBand(described(name, loft()));
    expect(low).toBeLessThan(ratio);
    expect(ratio).toBeLessThan(high);
    const over = withBand(described(name, opposed(loft())));
    expect(over[0]).toBeCloseTo(1 / high, 2);
    expect(over[2]).toBeCloseTo(1 / low, 2);
  });

  test('opens with whom it covers', () => {
    expect(described(name, loft())).toMatch(/^Dunlin against Plover, /);
    expect(described(name, opposed(loft()))).toMatch(/^Plover against Dunlin, /);
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
  expect(described('angle-twice', thin)).toContain('×2.00, at the apex that wears ×2.00: together ×4.00');
  // By hand: arctan 0.25 = 14.036°; tan 38.036° / tan 26.036° = 0.7823 / 0.4885 = 1.601.
  const careful = { ...thin, reading: 'careful', slicePush: 0, friction: 0.25 } as const;
  expect(described('angle-twice', careful)).toContain('As a wedge that opens the cut the angle makes ×1.60');
});

test('by the quick sum, which has no band, an answer names that of the careful one', () => {
  const quick = described('all-steel', { ...loft(), reading: 'quick' });
  expect(quick).toMatch(
    /pocket reading: ×[\d.]+ \(no band; the close one’s ×[\d.]+ has ×[\d.]+ to ×[\d.]+\)\./,
  );
});

test('whether the order is sure depends on the band alone', () => {
  const [low, , high] = withBand(described('too-exact', loft())) as [number, number, number];
  expect(described('too-exact', loft())).toContain(low < 1 && high > 1 ? 'It holds 1' : 'It does not hold 1');
  const alike = described('too-exact', alikeBut({}));
  expect(alike).toMatch(/It holds 1, so the order/);
});

test('one difference leaves nothing to add', () => {
  const finer = alikeBut({ finish: { scale: 'FEPA-P', grit: 220 } });
  expect(described('just-add', finer)).toContain('They differ in finish alone');
  expect(described('all-steel', finer)).toContain('none of it is steel');
  expect(described('sharpen-alike', finer)).toContain('no difference');
});

test('the price of a thin edge is owned up to, and not claimed where it is not paid', () => {
  expect(described('thin-rolls', loft())).toContain('So yes, that is the price');
  expect(described('thin-rolls', opposed(loft()))).toContain(
    'this one bends later, and pays for it in slicing',
  );
});

test('the runs it takes are those of the usual formula, to a run or two', () => {
  const [, ratio = '', runs = ''] =
    /says ×([\d.]+)\. .* takes (\d+) runs/.exec(
      described('no-difference', alikeBut({ finish: { scale: 'FEPA-P', grit: 400 } })),
    ) ?? [];
  // n = 2 (1.960 + 0.842)² σ² / ln² ratio, σ² = ln(1 + 0.2²): the normal sum of any textbook; the t test takes a little more.
  const normal = (2 * (1.96 + 0.842) ** 2 * Math.log1p(0.04)) / Math.log(Number(ratio)) ** 2;
  expect(Number(runs)).toBeGreaterThanOrEqual(Math.floor(normal));
  expect(Number(runs)).toBeLessThanOrEqual(Math.ceil(normal) + 2);
});

test('a work that wear does not end is answered with it', () => {
  expect(described('other-work', { ...loft(), work: 'prying' })).toMatch(
    /which this work is not.*Right: in /,
  );
});
