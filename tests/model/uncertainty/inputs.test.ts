import { describe, expect, test } from 'vitest';
import { gaugeOf, inputsOf, steelOwners } from '../../../src/model/uncertainty/inputs.ts';
import {
  mayLeave,
  spreadOf,
  valueAt,
  valuesAt,
  type Spread,
} from '../../../src/model/uncertainty/sampling.ts';
import type { Knife, Comparison, Quantity } from '../../../src/model/types.ts';
import { exact, plover } from '../knives.ts';

const curlew: Knife = {
  ...plover,
  id: 'curlew',
  angleDeg: { value: 14, plusMinus: 1, shape: 'normal' },
  microbevelAngleDeg: { value: 18, plusMinus: 2, shape: 'triangular' },
  finish: { scale: 'JIS', grit: 1000 },
  hrc: { unknown: true, low: 58, high: 62 },
  carbideVolPercent: { CrC: 8, MC: { value: 3, plusMinus: 1 } },
};
const loft: Comparison = { knives: [plover, curlew], baseline: 'plover' };
const named = (comparison: Comparison): Record<string, Spread> =>
  Object.fromEntries(
    inputsOf(comparison).map(({ knife, name, spread }) => [`${knife ?? ''}/${name}`, spread]),
  );
const anything = { low: -Infinity, high: Infinity };

describe('the inputs of a comparison', () => {
  test('are every measure of every knife, what all share, a residual for every steel, and how the factors combine', () => {
    expect(inputsOf(loft).map(({ knife, name }) => [knife, name])).toEqual([
      ['plover', 'angleDeg'],
      ['plover', 'edgeMm'],
      ['plover', 'spineMm'],
      ['plover', 'heightMm'],
      ['plover', 'finish'],
      ['plover', 'hrc'],
      ['plover', 'carbideVolPercent.CrC'],
      ['curlew', 'angleDeg'],
      ['curlew', 'microbevelAngleDeg'],
      ['curlew', 'edgeMm'],
      ['curlew', 'spineMm'],
      ['curlew', 'heightMm'],
      ['curlew', 'hrc'],
      ['curlew', 'carbideVolPercent.CrC'],
      ['curlew', 'carbideVolPercent.MC'],
      [null, 'contactDepthMm'],
      [null, 'friction'],
      [null, 'angleExponent'],
      [null, 'thicknessExponent'],
      [null, 'finishExponent'],
      [null, 'hardnessExponent'],
      [null, 'lifeExponent'],
      [null, 'wedgingShare'],
      [null, 'limitPower'],
      [null, 'residualCv'],
      ['plover', 'residual'],
      ['curlew', 'residual'],
      [null, 'structure'],
    ]);
  });

  test('scatter as they are stated, within what the model takes', () => {
    const of = named(loft);
    expect(of['plover/angleDeg']).toEqual({
      shape: 'uniform',
      low: 20,
      middle: 20,
      high: 20,
      allowed: expect.objectContaining({ low: 4, high: 45 }) as unknown,
    });
    expect(of['curlew/angleDeg']).toMatchObject({ shape: 'normal', low: 13, middle: 14, high: 15 });
    expect(of['curlew/microbevelAngleDeg']).toMatchObject({ shape: 'triangular', low: 16, high: 20 });
    expect(of['curlew/hrc']).toMatchObject({ shape: 'uniform', low: 58, middle: 60, high: 62 });
    expect(of['curlew/carbideVolPercent.MC']).toMatchObject({
      low: 2,
      high: 4,
      allowed: { low: 0, high: 60 },
    });
    expect(of['plover/finish']?.allowed).toMatchObject({ low: 0.01, high: 2000 });
    expect(of['plover/edgeMm']?.allowed).toMatchObject({ low: 0.001, high: 20 });
    // What is left out is a triangle over its usual range; a ± of one without a shape is a triangle too.
    expect(of['/friction']).toEqual({
      shape: 'triangular',
      low: 0.1,
      middle: 0.25,
      high: 0.4,
      allowed: { low: 0, high: 2 },
    });
    const given = named({
      ...loft,
      friction: { value: 0.3, plusMinus: 0.05 },
      assumptions: { finishExponent: 0.2 },
    });
    expect(given['/friction']).toMatchObject({ shape: 'triangular', low: 0.25, middle: 0.3, high: 0.35 });
    expect(given['/finishExponent']).toMatchObject({ low: 0.2, middle: 0.2, high: 0.2 });
    expect(given['/angleExponent']).toMatchObject({ shape: 'triangular', low: 1, middle: 1.3, high: 2.4 });
    expect(given['/lifeExponent']).toMatchObject({ shape: 'triangular', low: 0.5, middle: 1.5, high: 2.2 });
    // These two are even over their range, and so is a ± of theirs without a shape.
    expect(given['/wedgingShare']).toMatchObject({ shape: 'uniform', low: 0.1, middle: 0.35, high: 0.6 });
    expect(given['/limitPower']).toMatchObject({ shape: 'uniform', low: 1, middle: 1.5, high: 2 });
    const own = named({ ...loft, assumptions: { limitPower: { value: 1.5, plusMinus: 0.2 } } });
    expect(own['/limitPower']).toMatchObject({ shape: 'uniform', low: 1.3, high: 1.7 });
  });

  test('of hardness may lie anywhere the model takes it', () => {
    expect(named(loft)['curlew/hrc']?.allowed).toMatchObject({ low: 20, high: 68 });
  });

  test('in a fixed number of strokes have no power of a life', () => {
    const strokes = named({ ...loft, outcome: 'fixed-strokes', assumptions: { lifeExponent: 2 } });
    expect(strokes['/lifeExponent']).toMatchObject({ low: 1, middle: 1, high: 1 });
  });

  test('have an exponent on HV only where a knife may leave the published line', () => {
    const exponent = (hrc: Quantity, more: Partial<Comparison> = {}) => {
      const { low, high } = named({ ...loft, knives: [plover, { ...curlew, hrc }], ...more })[
        '/hardnessExponent'
      ] ?? { low: NaN, high: NaN };
      return [low, high];
    };
    const [none, all] = [
      [1.2, 1.2],
      [0.6, 2],
    ];
    expect(exponent({ value: 51, plusMinus: 1 })).toEqual(none);
    expect(exponent({ value: 51, plusMinus: 1.1 })).toEqual(all);
    expect(exponent({ value: 65, plusMinus: 1 })).toEqual(none);
    expect(exponent(66.1)).toEqual(all);
    expect(exponent({ unknown: true, low: 49, high: 60 })).toEqual(all);
    // A normal one has tails, and a gauge may read off.
    expect(exponent({ value: 58, plusMinus: 1, shape: 'normal' })).toEqual(none);
    expect(exponent({ value: 52, plusMinus: 1, shape: 'normal' })).toEqual(all);
    expect(exponent(65, { gaugeBias: { hrc: 1 } })).toEqual(none);
    expect(exponent(65, { gaugeBias: { hrc: 1.1 } })).toEqual(all);
    // What is stated of it does not matter where it moves nothing.
    const assumptions = { hardnessExponent: { value: 1, plusMinus: 0.2 } };
    expect(exponent(60, { assumptions })).toEqual([1, 1]);
    expect(exponent(67, { assumptions })).toEqual([0.8, 1.2]);
  });

  test('have no residual where it has no size', () => {
    const residuals = (comparison: Comparison) =>
      inputsOf(comparison)
        .filter(({ name }) => name === 'residual')
        .map(({ knife, spread }) => [knife, spread.shape, spread.middle, spread.high]);
    // A standard normal draw: its 95% half width is 1.959964 standard deviations.
    expect(residuals(loft)).toEqual([
      ['plover', 'normal', 0, 1.959964],
      ['curlew', 'normal', 0, 1.959964],
    ]);
    expect(residuals({ ...loft, assumptions: exact.assumptions })).toEqual([]);
    // 0 in the middle is not none.
    const about = { value: 0, plusMinus: 0.1 };
    expect(residuals({ ...loft, assumptions: { residualCv: about } })).toHaveLength(2);
    // Its size is 10% unless a comparison says how well it is known.
    expect(named(loft)['/residualCv']).toMatchObject({ low: 0.1, middle: 0.1, high: 0.1 });
    expect(named({ ...loft, assumptions: { residualCv: about } })['/residualCv']).toMatchObject({
      high: 0.1,
    });
  });
});

describe('a gauge', () => {
  const biased: Comparison = { ...loft, gaugeBias: { angleDeg: 0.5, hrc: 1 } };

  test('is an input of its own, even about 0, and sets the readings free', () => {
    const of = named(biased);
    expect(of['/gauge.angleDeg']).toEqual({
      shape: 'uniform',
      low: -0.5,
      middle: 0,
      high: 0.5,
      allowed: anything,
    });
    expect(of['/gauge.hrc']).toMatchObject({ low: -1, high: 1 });
    expect(of).not.toHaveProperty('/gauge.edgeMm');
    for (const read of ['plover/angleDeg', 'curlew/angleDeg', 'curlew/microbevelAngleDeg', 'plover/hrc'])
      expect(of[read]?.allowed).toEqual(anything);
    // What was not measured stays within its limits.
    expect(of['curlew/hrc']?.allowed).toMatchObject({ low: 20 });
    expect(of['plover/edgeMm']?.allowed).toMatchObject({ low: 0.001 });
  });

  test('belongs to its measure, the angle’s to the microbevel too', () => {
    expect(gaugeOf(biased, 'angleDeg', 20)).toBe('angleDeg');
    expect(gaugeOf(biased, 'microbevelAngleDeg', { value: 18, plusMinus: 2 })).toBe('angleDeg');
    expect(gaugeOf(biased, 'hrc', 58)).toBe('hrc');
    expect(gaugeOf(biased, 'hrc', { unknown: true, low: 58, high: 62 })).toBeNull();
    expect(gaugeOf(biased, 'edgeMm', 0.5)).toBeNull();
    expect(gaugeOf(biased, 'finish', 15)).toBeNull();
    expect(gaugeOf(loft, 'angleDeg', 20)).toBeNull();
    expect(gaugeOf({ ...loft, gaugeBias: { angleDeg: 0 } }, 'angleDeg', 20)).toBeNull();
  });

  test.each<[Comparison['gaugeBias'], string]>([
    [{ angleDeg: -0.1 }, 'gauge bias of edge angle ± -0.1° is not between 0 and 45°'],
    [{ angleDeg: 45.1 }, 'gauge bias of edge angle ± 45.1° is not between 0 and 45°'],
    [{ edgeMm: NaN }, 'gauge bias of thickness behind the edge ± NaN mm is not between 0 and 20 mm'],
    [{ hrc: 69 }, 'gauge bias of hardness ± 69 HRC is not between 0 and 68 HRC'],
  ])('of %o is refused', (gaugeBias, says) => {
    expect(() => inputsOf({ ...loft, ...(gaugeBias && { gaugeBias }) })).toThrow(new RangeError(says));
  });

  test('may be as far off as its measure goes', () => {
    expect(() => inputsOf({ ...loft, gaugeBias: { angleDeg: 45, edgeMm: 20, hrc: 68 } })).not.toThrow();
  });
});

test('knives of one steel are those with the same entries, whatever their order and what is not there', () => {
  const knives: Knife[] = [
    { ...plover, id: 'a', carbideVolPercent: { CrC: 8, MC: 3 } },
    { ...plover, id: 'b', carbideVolPercent: { MC: 3, CrC: 8 } },
    { ...plover, id: 'c', carbideVolPercent: { MC: 3, CrC: 8, CrN: 0 } },
    { ...plover, id: 'd', hrc: 60, carbideVolPercent: { CrC: 8, MC: 3 } },
    { ...plover, id: 'e', carbideVolPercent: { CrC: 8 } },
    { ...plover, id: 'f', hrc: 60, carbideVolPercent: { MC: 3, CrC: 8 } },
    { ...plover, id: 'g', carbideVolPercent: { CrC: 3, MC: 8 } },
    { ...plover, id: 'h', carbideVolPercent: { CrC: { value: 8, plusMinus: 1 }, MC: 3 } },
  ];
  expect(steelOwners({ knives, baseline: 'a' })).toEqual(['a', 'a', 'a', 'd', 'e', 'd', 'g', 'h']);
});

describe('a spread', () => {
  const spread = (shape: Spread['shape'], low: number, middle: number, high: number): Spread => ({
    shape,
    low,
    middle,
    high,
    allowed: anything,
  });

  test('of a quantity has its ends', () => {
    expect(spreadOf(5, anything)).toEqual(spread('uniform', 5, 5, 5));
    expect(spreadOf({ unknown: true, low: 2, high: 8 }, anything, 'triangular')).toEqual(
      spread('uniform', 2, 5, 8),
    );
    expect(spreadOf({ value: 5, plusMinus: 2 }, anything)).toEqual(spread('uniform', 3, 5, 7));
    expect(spreadOf({ value: 5, plusMinus: 2 }, anything, 'triangular')).toEqual(
      spread('triangular', 3, 5, 7),
    );
    expect(spreadOf({ value: 5, plusMinus: 2, shape: 'normal' }, anything, 'triangular')).toEqual(
      spread('normal', 3, 5, 7),
    );
  });

  // The distribution functions by hand: (x − a)²/((b − a)(c − a)) up to the peak of a triangle, 1 − … behind it.
  test.each<[string, Spread, (x: number) => number]>([
    ['uniform', spread('uniform', 2, 5, 8), (x) => (x - 2) / 6],
    [
      'lopsided triangle',
      spread('triangular', 1, 1.3, 1.8),
      (x) => (x < 1.3 ? (x - 1) ** 2 / (0.8 * 0.3) : 1 - (1.8 - x) ** 2 / (0.8 * 0.5)),
    ],
    ['triangle with its peak at the low end', spread('triangular', 0, 0, 3), (x) => 1 - (3 - x) ** 2 / 9],
  ])('%s has a share u below its value at u', (_what, of, share) => {
    for (const u of [1e-6, 0.1, 0.375, 0.3750001, 0.5, 0.9, 1 - 1e-6])
      expect(share(valueAt(of, u))).toBeCloseTo(u, 10);
    expect(valuesAt(of, Float64Array.of(0.2, 0.7), new Float64Array(2))).toEqual(
      Float64Array.of(valueAt(of, 0.2), valueAt(of, 0.7)),
    );
  });

  test('that is normal has 95% within its ±', () => {
    const of = spread('normal', 3, 5, 7);
    // Standard tables: 2.5, 50 and 97.5% points.
    expect(valueAt(of, 0.025)).toBeCloseTo(3, 6);
    expect(valueAt(of, 0.5)).toBeCloseTo(5, 12);
    expect(valueAt(of, 0.975)).toBeCloseTo(7, 6);
  });

  test('may leave what is allowed by its ends, a normal one by either end there is', () => {
    const leaves = (shape: Spread['shape'], low: number, high: number): boolean =>
      mayLeave({ shape, low: 3, middle: 5, high: 7, allowed: { low, high } });
    for (const shape of ['uniform', 'triangular'] as const) {
      expect(leaves(shape, 3, 7)).toBe(false);
      expect(leaves(shape, 3.1, 7)).toBe(true);
      expect(leaves(shape, 3, 6.9)).toBe(true);
    }
    expect(leaves('normal', -Infinity, Infinity)).toBe(false);
    expect(leaves('normal', -1e9, Infinity)).toBe(true);
    expect(leaves('normal', -Infinity, 1e9)).toBe(true);
  });
});
