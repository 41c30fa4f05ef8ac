import { describe, expect, test } from 'vitest';
import { compare, explanations, type Knife, type Comparison } from '../../../src/model/index.ts';
import { withAttribute } from '../../../src/model/solve/attributes.ts';
import { exact, plover } from '../knives.ts';

const dunlin: Knife = { ...plover, id: 'dunlin', angleDeg: 15, edgeMm: 0.4, finish: { um: 20 } };
const loft = (a: Knife = dunlin, b: Knife = plover): Comparison => ({
  knives: [b, a],
  baseline: b.id,
  ...exact,
});
const ratioOf = (comparison: Comparison): number =>
  compare(comparison).rows.find(({ knife }) => knife === 'dunlin')?.multiplied ?? NaN;
const asked = { knife: 'dunlin', against: 'plover' };

describe('what would explain a measured ratio', () => {
  test('put into the comparison alone, each does', () => {
    const comparison = loft();
    const ratio = 1.2 * ratioOf(comparison);
    const all = explanations(comparison, { ...asked, ratio });
    // Six attributes of each knife; no microbevel, since neither has one.
    expect(all.map(({ knife, attribute }) => `${knife} ${attribute}`).toSorted()).toEqual(
      ['dunlin', 'plover']
        .flatMap((knife) =>
          ['angleDeg', 'carbide', 'edgeMm', 'finish', 'grindHeightMm', 'hrc'].map((of) => `${knife} ${of}`),
        )
        .toSorted(),
    );
    const answered = all.filter(({ to }) => to !== null);
    expect(answered.length).toBeGreaterThan(8);
    for (const { knife, attribute, to } of answered)
      expect(ratioOf(withAttribute(comparison, knife, attribute, to ?? NaN)) / ratio).toBeCloseTo(1, 9);
  });

  test('stands as entered beside what it would have to be', () => {
    const all = explanations(loft({ ...dunlin, microbevelAngleDeg: 22 }), { ...asked, ratio: 1.5 });
    const from = (knife: string) =>
      Object.fromEntries(
        all.filter((of) => of.knife === knife).map(({ attribute, from: now }) => [attribute, now]),
      );
    expect(from('dunlin')).toEqual({
      angleDeg: 15,
      microbevelAngleDeg: 22,
      edgeMm: 0.4,
      finish: 20,
      hrc: 58,
      grindHeightMm: 15,
      carbide: 6,
    });
    expect(from('plover')).toEqual({
      angleDeg: 20,
      edgeMm: 0.5,
      finish: 15,
      hrc: 58,
      grindHeightMm: 15,
      carbide: 6,
    });
  });

  test('what lies within its own ± goes first, then what moves least as a ratio', () => {
    const unsure: Knife = {
      ...dunlin,
      angleDeg: { value: 15, plusMinus: 0.001 },
      finish: { um: { value: 20, plusMinus: 15 } },
      carbideVolPercent: { CrC: { value: 4, plusMinus: 2 }, MC: { value: 2, plusMinus: 2 } },
    };
    const comparison = loft(unsure);
    const all = explanations(comparison, { ...asked, ratio: 1.05 * ratioOf(comparison) });
    const within = all.filter(({ withinStated }) => withinStated);
    expect(within.map(({ attribute }) => attribute).toSorted()).toEqual(['carbide', 'finish']);
    expect(all.slice(0, within.length)).toEqual(within);
    const moved = ({ from, to }: { from: number; to: number | null }): number =>
      to === null ? Infinity : Math.abs(Math.log(to / from));
    for (const part of [within, all.slice(within.length)]) {
      const distances = part.map(moved);
      expect(distances).toEqual(distances.toSorted((a, b) => a - b));
    }
  });

  test.each<[string, Partial<Knife>, string]>([
    ['a thickness', { edgeMm: { value: 0.4, plusMinus: 0.1 } }, 'edgeMm'],
    ['a hardness', { hrc: { unknown: true, low: 54, high: 62 } }, 'hrc'],
    ['an angle', { angleDeg: { value: 15, plusMinus: 3 } }, 'angleDeg'],
    ['a microbevel', { angleDeg: 10, microbevelAngleDeg: { value: 22, plusMinus: 4 } }, 'microbevelAngleDeg'],
    ['a grain size', { finish: { um: { value: 20, plusMinus: 8 } } }, 'finish'],
    ['a volume of carbide', { carbideVolPercent: { CrC: { value: 6, plusMinus: 2 } } }, 'carbide'],
  ])('%s counts as stated between its ends, and not past them', (_what, change, attribute) => {
    const knife = { ...dunlin, ...change };
    const comparison = loft(knife);
    const found = (ratio: number) =>
      explanations(comparison, { ...asked, ratio }).find(
        (of) => of.knife === 'dunlin' && of.attribute === attribute,
      );
    const now = found(ratioOf(comparison));
    expect(now?.withinStated).toBe(true);
    const half = { edgeMm: 0.1, hrc: 4, angleDeg: 3, microbevelAngleDeg: 4, finish: 8, carbide: 2 }[
      attribute
    ];
    for (const side of [1, -1])
      for (const [share, stated] of [
        [1, true],
        [1.001, false],
      ] as const) {
        const value = (now?.from ?? NaN) + side * share * (half ?? NaN);
        const ratio = ratioOf(withAttribute(comparison, 'dunlin', attribute as 'hrc', value));
        expect(found(ratio)?.withinStated).toBe(stated);
      }
  });

  test('a grit, a grind and what is known exactly are stated to the point', () => {
    const graded = loft({ ...dunlin, finish: { scale: 'FEPA-P', grit: 400 } });
    const now = ratioOf(graded);
    // As measured, every attribute is what it was entered as; a thousandth off, none is.
    for (const [ratio, stated] of [
      [now, true],
      [1.001 * now, false],
      [now / 1.001, false],
    ] as const) {
      const all = explanations(graded, { ...asked, ratio });
      expect(all.map(({ withinStated }) => withinStated)).toEqual(all.map(() => stated));
    }
  });

  test('where nothing does it, that is said, in the order of the attributes', () => {
    const all = explanations(loft(), { ...asked, ratio: 1e6 });
    expect(all).toHaveLength(12);
    for (const { to, note, withinStated } of all)
      expect({ to, note, withinStated }).toEqual({ to: null, note: 'not in reach', withinStated: false });
    expect(all.map(({ knife }) => knife)).toEqual([
      ...Array<string>(6).fill('dunlin'),
      ...Array<string>(6).fill('plover'),
    ]);
    // What is answered without a word has none.
    const [first] = explanations(loft(), { ...asked, ratio: ratioOf(loft()) });
    expect(first).not.toHaveProperty('note');
  });

  test('a knife that is not there is refused by name', () => {
    expect(() => explanations(loft(), { ...asked, knife: 'heron', ratio: 1 })).toThrow(
      new RangeError("knife heron is not one of the comparison's"),
    );
    expect(() => explanations(loft(), { ...asked, against: 'heron', ratio: 1 })).toThrow(RangeError);
  });
});
