import { describe, expect, test } from 'vitest';
import { loft } from '../../../src/components/scene.ts';
import { nominal } from '../../../src/model/index.ts';
import { readsAsOne } from '../../../src/scene/show.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { Scene } from '../../../src/scene/scene.ts';
import { everything } from '../../../src/topics/all.ts';
import { biggestReasons, reasonsOf, restOf } from '../../../src/topics/reasons/reasons.ts';
import { carbidePercent } from '../../../src/topics/reasons/measures.ts';
import { dentPx, grainsOf } from '../../../src/topics/reasons/steel-picture.ts';
import { oddComparisons, pair } from '../odd-comparisons.ts';

const loftScene = sceneOf(loft());
const all: [string, Scene][] = [
  ['the loft', loftScene],
  ...Object.entries(oddComparisons).map(([name, entry]): [string, Scene] => [name, sceneOf(entry)]),
];
const names = [
  'reasons-heading',
  ...[1, 2, 3].flatMap((at) => [`reason-${at}-title`, `reason-${at}`]),
  'reasons-rest',
  'reasons-note',
];
const said = (name: string, scene: Scene): string => everything.words(name)(scene).join(' ');
const scene = (...sides: Parameters<typeof pair>): Scene => sceneOf(pair(...sides));

describe.each(all)('the reasons of %s', (_name, scene) => {
  test('come by their size, and none of them reads as one', () => {
    const sizes = reasonsOf(scene).map(({ factor }) => Math.abs(Math.log(factor)));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    for (const { factor } of reasonsOf(scene)) expect(readsAsOne(factor)).toBe(false);
  });

  test('make the product with the rest', () => {
    const told = biggestReasons(scene).reduce((product, { factor }) => product * factor, 1);
    expect(told * restOf(scene)).toBeCloseTo(scene.row.careful.multiplied, 9);
    // Each factor of the table belongs to one reason.
    const { terms } = scene.row.careful;
    for (const { id, parts, factor } of reasonsOf(scene)) {
      const own = terms.filter((term) => Object.hasOwn(parts, term.id));
      expect(
        own.reduce((product, term) => product * term.factor, 1),
        id,
      ).toBeCloseTo(factor, 12);
    }
  });

  test('are told in whole sentences of 25 words at most', () => {
    for (const name of names) {
      for (const sentence of everything
        .words(name)(scene)
        .flatMap((text) => text.split(/(?<=[.?!]) /))) {
        expect(sentence).not.toMatch(/NaN|undefined|Infinity|null| {2}|^ | $|×/);
        // Names of up to eighty letters are not the sentence's own words.
        const own = sentence.replaceAll(scene.subject.name, 'X').replaceAll(scene.baseline.name, 'X');
        expect(own.split(' ').length, sentence).toBeLessThanOrEqual(25);
        expect(sentence).toMatch(/^[A-Z\u2068]|^\p{L}/u);
        if (name.endsWith('-title'))
          expect(sentence).toMatch(/: (?:[\d.]+ times as long|[\d.]+% (?:more|less))$/);
        else if (name !== 'reasons-heading') expect(sentence).toMatch(/\.$/);
      }
    }
  });

  test('have a title and a text in each place or in neither', () => {
    for (const at of [1, 2, 3]) {
      const told = at <= reasonsOf(scene).length;
      expect(said(`reason-${at}-title`, scene) !== '').toBe(told);
      if (at > 1 || told) expect(said(`reason-${at}`, scene) !== '').toBe(told);
    }
  });
});

describe('the loft', () => {
  // Plover: 24°, P1200, 57 HRC with 4% carbide. Dunlin: 14°, P220, 61 HRC with the carbide of AISI D2.
  test('has five reasons, of which steel, angle and finish are the biggest', () => {
    expect(reasonsOf(loftScene)).toHaveLength(5);
    expect(biggestReasons(loftScene).map(({ id }) => id)).toEqual(['steel', 'angle', 'finish']);
    expect(said('reasons-heading', loftScene)).toBe('The three biggest reasons');
    expect(said('reason-2-title', loftScene)).toMatch(/^A slimmer angle: 2\.1 times as long$/);
    expect(said('reason-3-title', loftScene)).toMatch(/^A coarser finish: 1\.6 times as long$/);
  });
});

describe('a loss', () => {
  test('takes some back where the knife gains in all', () => {
    const mixed = scene({ angle: { deg: 15 }, finish: { scale: 'FEPA-P', grit: 1500 } });
    expect(said('reason-2-title', mixed)).toMatch(/^A finer finish takes some back: 0\.\d+ times as long$/);
  });
  test('gives its own name where the knife loses in all', () => {
    const duller = scene({ angle: { deg: 27 } });
    expect(said('reason-1-title', duller)).toMatch(/^A wider angle: 0\.\d+ times as long$/);
    expect(said('reasons-heading', duller)).toBe('The reason');
  });
  test('of the whole has gains that win some back', () => {
    const mixed = scene({ angle: { deg: 18 }, edgeMm: 1.5 });
    expect(said('reason-1-title', mixed)).toMatch(/^Thicker behind the edge: 0\./);
    expect(`${said('reason-2-title', mixed)} ${said('reason-3-title', mixed)}`).toMatch(
      /wins some back: 1\.\d+ times/,
    );
  });
  test('on every count is said to be one', () => {
    const worse = sceneOf(oddComparisons['loses-everywhere'] ?? pair({}));
    expect(said('reasons-note', worse)).toBe('All of them count against Dunlin.');
    for (const { factor } of reasonsOf(worse)) expect(factor).toBeLessThan(1);
  });
});

test('a tie has no reason, and says so', () => {
  const tie = scene({});
  expect(reasonsOf(tie)).toEqual([]);
  expect(said('reasons-heading', tie)).toBe('');
  expect(said('reason-1', tie)).toBe(
    'Nothing sets Dunlin apart from Plover: no reason makes a difference of its own.',
  );
});

describe('the steel', () => {
  const steel = (hrc: number, CrC: number): string =>
    said('reason-1', scene({ hrc, carbide: { volPercent: { CrC } } }));
  // Plover has 59 HRC and 6% of chromium carbide.
  test.each([
    [62, 12, /^It’s harder and holds more carbide/],
    [62, 6, /^It’s harder, so it gives way less/],
    [59, 12, /^It holds more carbide, hard grains/],
    [56, 2, /^It’s softer and holds less carbide/],
    [56, 6, /^It’s softer, so it gives way sooner/],
    [59, 2, /^It holds less carbide/],
    [64, 5, /^It’s harder, and that counts for more here than having less carbide\.$/],
    [60, 1, /^It’s harder, but it holds less carbide/],
    [54, 7, /^It’s softer, and that counts for more here than having more carbide\.$/],
    [58, 16, /^It’s softer, but it holds more carbide, hard grains/],
  ])('of %d HRC with %d %% of carbide reads right', (hrc, volume, reads) =>
    expect(steel(hrc, volume)).toMatch(reads),
  );

  test('is dented less where it is harder, and its grains take the carbide’s share of the block', () => {
    const { subjectKnife, baselineKnife } = loftScene;
    expect(dentPx(subjectKnife)).toBeLessThan(dentPx(baselineKnife));
    for (const knife of [subjectKnife, baselineKnife]) {
      // Area of a polygon by the shoelace formula.
      const area = grainsOf(knife, 0)
        .map((points) =>
          Math.abs(
            points.slice(1).reduce((sum, [x, y], at) => {
              const [lastX, lastY] = points[at] ?? [0, 0];
              return sum + lastX * y - x * lastY;
            }, 0) / 2,
          ),
        )
        .reduce((sum, one) => sum + one, 0);
      expect((100 * area) / (148 * 84)).toBeCloseTo(carbidePercent(knife), 6);
    }
    expect(nominal(subjectKnife.hrc)).toBe(61);
  });
});

describe('what is not known', () => {
  const unknown = { unknown: true as const, low: 54, high: 66 };
  test('of one knife is named, and that a middle value stands in', () =>
    expect(said('reason-1', scene({ hrc: unknown, carbide: { volPercent: { CrC: 16 } } }))).toContain(
      'Dunlin’s hardness isn’t known, so a middle value stands in.',
    ));
  test('of both is said once', () =>
    expect(
      said('reason-1', scene({ hrc: unknown, carbide: { volPercent: { CrC: 16 } } }, { hrc: unknown })),
    ).toContain('Neither Plover’s nor Dunlin’s hardness is known, so middle values stand in.'));
});

test('a work that is no slicing is said to be none', () =>
  expect(said('reasons-note', scene({ angle: { deg: 14 }, edgeMm: 0.2 }, {}, { work: 'prying' }))).toBe(
    'All this holds for Dunlin and Plover in clean slicing, which this work is not.',
  ));
