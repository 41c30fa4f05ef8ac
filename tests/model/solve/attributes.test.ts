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
import type { Knife, Comparison } from '../../../src/model/types.ts';
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
    // The law of hardness changes where the regression is used from and to.
    expect(attributeSearch(tern, 'hrc').seams).toEqual([50, 66]);
    for (const attribute of ['angleDeg', 'finish', 'carbide'] as const)
      expect(attributeSearch(tern, attribute).seams).toEqual([]);
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
  const product = (comparison: Comparison, id: string): number =>
    compare(comparison).rows.find(({ knife }) => knife === id)?.product ?? NaN;
  const asked = { knife: 'plover', against: 'dunlin', target: 1.5 } as const;

  test.each<[SolvableAttribute, number[]]>([
    ['angleDeg', [10, 20, 40]],
    ['edgeMm', [0.2, 0.5, 2.9]],
    ['finish', [3, 100]],
    ['hrc', [52, 58, 65]],
    ['grindHeightMm', [5, 15, 60]],
    ['carbide', [2, 6, 20]],
  ])('of %s is ln of the ratio that compare gives, over the target', (attribute, values) => {
    const gap = gapOf(loft, { ...asked, attribute });
    for (const value of values) {
      const changed = withAttribute(loft, 'plover', attribute, value);
      const ratio = product(changed, 'plover') / product(changed, 'dunlin');
      expect(gap(value)?.short).toBeCloseTo(Math.log(ratio / 1.5), 10);
      expect(gap(value)?.regression).toBe(true);
    }
  });

  test('also where one of both is the baseline', () => {
    for (const [knife, against, baseline] of [
      ['plover', 'dunlin', 'plover'],
      ['plover', 'dunlin', 'dunlin'],
    ] as const) {
      const comparison = { ...loft, baseline };
      const changed = withAttribute(comparison, 'plover', 'angleDeg', 12);
      const ratio = product(changed, knife) / product(changed, against);
      expect(gapOf(comparison, { knife, against, attribute: 'angleDeg', target: 1 })(12)?.short).toBeCloseTo(
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

  test('says whether the regression speaks, and is none where carbide falls out with it', () => {
    const alike: Comparison = { ...loft, baseline: 'plover', knives: [plover, { ...plover, id: 'dunlin' }] };
    const hardness = gapOf(alike, { ...asked, attribute: 'hrc' });
    expect([hardness(49)?.regression, hardness(50)?.regression, hardness(66)?.regression]).toEqual([
      false,
      true,
      true,
    ]);
    expect(hardness(66.1)?.regression).toBe(false);
    // Of unlike carbide the total is whole only where the regression speaks.
    expect(gapOf(loft, { ...asked, attribute: 'hrc' })(49)).toBeNull();
    // Nor is a value an answer at which the other knife of the question would lose its carbide.
    const third: Comparison = { ...alike, knives: [...alike.knives, { ...tern, angleDeg: 14 }] };
    const other = gapOf(third, { knife: 'plover', against: 'tern', attribute: 'hrc', target: 1 });
    expect([other(49), other(60) === null]).toEqual([null, false]);
  });

  test('of carbide is none where too little is left for the regression to cover two that are unlike', () => {
    // −157 + 15.8·50 − 17.8·30 is 99 mm of card; each per cent of CrC adds 11.2, and it is used from 100 mm.
    const soft: Comparison = {
      ...loft,
      baseline: 'plover',
      knives: [
        { ...plover, hrc: 50 },
        { ...dunlin, hrc: 50 },
      ],
    };
    const gap = gapOf(soft, { ...asked, attribute: 'carbide' });
    expect([gap(0.05), gap(0.1)?.regression]).toEqual([null, true]);
  });

  test('of a knife that is not there is refused', () => {
    for (const change of [{ knife: 'heron' }, { against: 'heron' }])
      expect(() => gapOf(loft, { ...asked, attribute: 'hrc', ...change })).toThrow(
        new RangeError('a knife of the question is not one of the line-up'),
      );
    expect(() => gapOf({ ...loft, baseline: 'heron' }, { ...asked, attribute: 'hrc' })).toThrow(RangeError);
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
    [{ knife: 'heron' }, "knife heron is not one of the line-up's"],
    [{ against: 'heron' }, "against heron is not one of the line-up's knives"],
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
  // tan 5°·√(697/HV), common practice, no source: 5° at 60 HRC, where E140 has 697 HV.
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
