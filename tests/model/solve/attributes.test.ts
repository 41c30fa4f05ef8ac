import { describe, expect, test } from 'vitest';
import { compare } from '../../../src/model/chain/compare.ts';
import {
  attributeSearch,
  attributeValue,
  changedKnife,
  withAttribute,
  type SolvableAttribute,
} from '../../../src/model/solve/attributes.ts';
import { gapOf } from '../../../src/model/solve/gap.ts';
import { breaksAway, checkQuestion } from '../../../src/model/solve/what-it-takes.ts';
import type { Knife, Comparison, Structure } from '../../../src/model/types.ts';
import { structures } from '../../../src/model/chain/structures.ts';
import { exact, plover } from '../knives.ts';

const tern: Knife = {
  ...plover,
  id: 'tern',
  angleDeg: { value: 14, plusMinus: 1 },
  microbevelAngleDeg: { unknown: true, low: 18, high: 24 },
  edgeMm: 0.4,
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'hollow', spineMm: 3.2, heightMm: 20, radiusMm: 120 },
  hrc: { value: 61, plusMinus: 1 },
  carbideVolPercent: { CrC: 6, MC: { value: 2, plusMinus: 1 } },
};

describe('an attribute', () => {
  test.each<[SolvableAttribute, number, number]>([
    ['angleDeg', 14, 12],
    ['microbevelAngleDeg', 21, 25],
    ['edgeMm', 0.4, 0.3],
    // P400 is 35.0 µm (FEPA P, ISO 6344-3).
    ['finish', 35, 20],
    ['hrc', 61, 63],
    ['grindHeightMm', 20, 25],
    ['carbide', 8, 12],
  ])('%s reads as %f, and after it is changed as what it is changed to', (attribute, now, then) => {
    expect(attributeValue(tern, attribute)).toBe(now);
    const changed = changedKnife(tern, attribute, then);
    expect(attributeValue(changed, attribute)).toBe(then);
    const others = (
      ['angleDeg', 'microbevelAngleDeg', 'edgeMm', 'finish', 'hrc', 'grindHeightMm', 'carbide'] as const
    ).filter((other) => other !== attribute);
    for (const other of others) expect(attributeValue(changed, other)).toBe(attributeValue(tern, other));
    expect(changed.grind.spineMm).toBe(3.2);
  });

  test('carbide scales every kind alike, and is CrC where there is none', () => {
    expect(changedKnife(tern, 'carbide', 12).carbideVolPercent).toEqual({ CrC: 9, MC: 3 });
    for (const carbideVolPercent of [{}, { MC: 0 }]) {
      const bare = { ...tern, carbideVolPercent };
      expect(attributeValue(bare, 'carbide')).toBe(0);
      expect(changedKnife(bare, 'carbide', 5).carbideVolPercent).toEqual({ CrC: 5 });
    }
  });

  test('is looked for where the model takes it and the knife’s other measures leave room', () => {
    const range = (attribute: SolvableAttribute, knife = tern) => {
      const { low, high, ratio } = attributeSearch(knife, attribute);
      return [low, high, ratio];
    };
    // No bevel above its microbevel, no microbevel below its bevel.
    expect(range('angleDeg')).toEqual([4, 21, true]);
    expect(range('angleDeg', plover)).toEqual([4, 45, true]);
    expect(range('microbevelAngleDeg')).toEqual([14, 45, true]);
    // No edge thicker than the spine.
    expect(range('edgeMm')).toEqual([0.001, 3.2, true]);
    expect(range('edgeMm', { ...tern, grind: { ...tern.grind, spineMm: 30 } })).toEqual([0.001, 20, true]);
    expect(range('finish')).toEqual([0.01, 2000, true]);
    // No curved face higher than its circle.
    expect(range('grindHeightMm')).toEqual([0.1, 240, true]);
    expect(range('grindHeightMm', { ...tern, grind: { ...tern.grind, radiusMm: 300 } })).toEqual([
      0.1,
      500,
      true,
    ]);
    expect(range('grindHeightMm', { ...plover, grind: { ...plover.grind, radiusMm: 10 } })).toEqual([
      0.1,
      500,
      true,
    ]);
    expect(range('grindHeightMm', plover)).toEqual([0.1, 500, true]);
    expect(range('hrc')).toEqual([20, 68, false]);
    expect(range('carbide')).toEqual([0, 60, false]);
  });

  test('of one knife is put into a comparison and leaves the other knives', () => {
    const comparison: Comparison = { knives: [plover, tern], baseline: 'plover' };
    const changed = withAttribute(comparison, 'tern', 'hrc', 63);
    expect(changed).toEqual({ ...comparison, knives: [plover, { ...tern, hrc: 63 }] });
    expect(comparison.knives[1]).toBe(tern);
  });

  test('there is none of is refused', () => {
    for (const attribute of ['name', 'toString'] as unknown as SolvableAttribute[])
      for (const ask of [
        () => attributeValue(tern, attribute),
        () => attributeSearch(tern, attribute),
        () => changedKnife(tern, attribute, 1),
      ])
        expect(ask).toThrow(
          new RangeError(
            `attribute ${attribute} is not one of angleDeg, microbevelAngleDeg, edgeMm, finish, hrc, grindHeightMm, carbide`,
          ),
        );
    expect(() => attributeValue(plover, 'microbevelAngleDeg')).toThrow(
      new RangeError('microbevelAngleDeg of plover is not given, the knife has no microbevel to change'),
    );
  });
});

describe('the gap', () => {
  const dunlin: Knife = { ...plover, id: 'dunlin', angleDeg: 15, hrc: 61, carbideVolPercent: { CrC: 9 } };
  const loft: Comparison = {
    knives: [plover, dunlin, { ...tern, angleDeg: 14 }],
    baseline: 'tern',
    ...exact,
  };
  const life = (comparison: Comparison, id: string, structure: Structure = 'multiplied'): number =>
    compare(comparison).rows.find(({ knife }) => knife === id)?.[structure] ?? NaN;
  const asked = { knife: 'plover', against: 'dunlin', target: 1.5 } as const;

  test.each<[SolvableAttribute, number[]]>([
    ['angleDeg', [10, 20, 40]],
    ['edgeMm', [0.2, 0.5, 2.9]],
    ['finish', [3, 100]],
    ['hrc', [30, 49.9, 52, 58, 68]],
    ['grindHeightMm', [5, 15, 60]],
    ['carbide', [0, 6, 60]],
  ])('of %s is ln of the ratio that compare gives, over the target', (attribute, values) => {
    for (const structure of [undefined, ...structures]) {
      const gap = gapOf(loft, { ...asked, attribute, structure });
      for (const value of values) {
        const changed = withAttribute(loft, 'plover', attribute, value);
        const ratio = life(changed, 'plover', structure) / life(changed, 'dunlin', structure);
        expect(gap(value)).toBeCloseTo(Math.log(ratio / 1.5), 10);
      }
    }
  });

  test('also where one of both is the baseline', () => {
    for (const [knife, against, baseline] of [
      ['plover', 'dunlin', 'plover'],
      ['plover', 'dunlin', 'dunlin'],
    ] as const) {
      const comparison = { ...loft, baseline };
      const changed = withAttribute(comparison, 'plover', 'angleDeg', 12);
      const ratio = life(changed, knife) / life(changed, against);
      expect(gapOf(comparison, { knife, against, attribute: 'angleDeg', target: 1 })(12)).toBeCloseTo(
        Math.log(ratio),
        10,
      );
    }
  });

  test('is none where the model refuses the value', () => {
    for (const [attribute, value] of [
      ['angleDeg', 3],
      ['angleDeg', 46],
      ['edgeMm', 3.1],
      ['hrc', 69],
      ['grindHeightMm', 0],
    ] as const)
      expect(gapOf(loft, { ...asked, attribute })(value)).toBeNull();
    // A bevel above its microbevel, or the other way round; level they may be.
    const turned = gapOf({ ...loft, baseline: 'dunlin' }, { ...asked, knife: 'tern', attribute: 'angleDeg' });
    expect([turned(20.9) === null, turned(21) === null, turned(21.1)]).toEqual([false, false, null]);
  });

  test('of carbide is none above 60 per cent in all', () => {
    const rich: Comparison = {
      ...loft,
      knives: [{ ...plover, carbideVolPercent: { CrC: 20, MC: 10 } }, dunlin],
      baseline: 'plover',
    };
    const gap = gapOf(rich, { ...asked, attribute: 'carbide' });
    expect([gap(60) === null, gap(60.1)]).toEqual([false, null]);
  });

  test('of a knife that is not there is refused', () => {
    for (const change of [{ knife: 'heron' }, { against: 'heron' }])
      expect(() => gapOf(loft, { ...asked, attribute: 'hrc', ...change })).toThrow(
        new RangeError("knife heron is not one of the comparison's"),
      );
  });
});

describe('a question', () => {
  const comparison: Comparison = { knives: [plover, tern], baseline: 'plover' };
  const asked = { knife: 'plover', against: 'tern', attribute: 'hrc' } as const;

  test('is about the knife that changes, and about drawing level if not told otherwise', () => {
    expect(checkQuestion(comparison, asked)).toEqual({ changing: plover, target: 1 });
    expect(checkQuestion(comparison, { ...asked, knife: 'tern', against: 'plover', target: 2 })).toEqual({
      changing: tern,
      target: 2,
    });
  });

  test.each<[object, string]>([
    [{ target: 0 }, 'target 0 is not a number above 0'],
    [{ target: -1 }, 'target -1 is not a number above 0'],
    [{ target: Infinity }, 'target Infinity is not a number above 0'],
    [{ target: NaN }, 'target NaN is not a number above 0'],
    [{ structure: 'divided' }, 'structure divided is not one of multiplied, added, toLimit'],
    [{ knife: 'heron' }, "knife heron is not one of the comparison's"],
    [{ against: 'heron' }, "against heron is not one of the comparison's knives"],
    [{ against: 'plover' }, 'against plover is the knife itself, another is needed'],
    [
      { attribute: 'microbevelAngleDeg' },
      'microbevelAngleDeg of plover is not given, the knife has no microbevel to change',
    ],
  ])('with %o is refused', (change, says) => {
    expect(() => checkQuestion(comparison, { ...asked, ...change })).toThrow(new RangeError(says));
  });
});

describe('an edge breaks away', () => {
  // The lower end of tan 5°·(697/HV)^k, k ½ to 1, common practice, no source: 5° at 60 HRC, where E140 has 697 HV.
  const slim = (change: Partial<Knife>): Knife => ({ ...plover, angleDeg: 5.1, hrc: 60, ...change });

  test('below the floor of its hardness, if the change has to do with it', () => {
    expect(breaksAway(slim({}), 'angleDeg')).toBe(false);
    expect(breaksAway(slim({ angleDeg: 4.9 }), 'angleDeg')).toBe(true);
    expect(breaksAway(slim({ angleDeg: 4.9 }), 'hrc')).toBe(true);
    expect(breaksAway(slim({ hrc: 55 }), 'hrc')).toBe(true);
    for (const attribute of ['edgeMm', 'finish', 'grindHeightMm', 'carbide'] as const)
      expect(breaksAway(slim({ angleDeg: 4.5 }), attribute)).toBe(false);
  });

  test('at its microbevel, where it has one: the bevel behind it is no matter', () => {
    expect(breaksAway(slim({ angleDeg: 4.5, microbevelAngleDeg: 4.9 }), 'microbevelAngleDeg')).toBe(true);
    expect(breaksAway(slim({ angleDeg: 4.5, microbevelAngleDeg: 5.1 }), 'microbevelAngleDeg')).toBe(false);
    expect(breaksAway(slim({ angleDeg: 4.5, microbevelAngleDeg: 4.9 }), 'angleDeg')).toBe(false);
    expect(breaksAway(slim({ angleDeg: 4.5, microbevelAngleDeg: 5.1, hrc: 55 }), 'hrc')).toBe(true);
  });
});
