import { describe, expect, test } from 'vitest';
import {
  carbonWeightPercent,
  compare,
  equivalencePower,
  makeEqual,
  nearestGrade,
  predict,
  rankings,
} from '../../src/model/index.ts';
import type { Knife, Comparison } from '../../src/model/index.ts';
import { fisherTail, noncentralTCdf, studentCdf } from '../../src/model/statistics/distributions.ts';
import { lognormalFit } from '../../src/model/runs/lognormal.ts';
import { refusedSamples } from '../../src/model/uncertainty/lives.ts';

/** Invented, as every knife of these tests. */
const plover: Knife = {
  id: 'plover',
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: 58,
  carbideVolPercent: { CrC: 6 },
};
const dunlin: Knife = { ...plover, id: 'dunlin', angleDeg: 15 };
const loft: Comparison = { knives: [plover, dunlin], baseline: 'plover' };

describe('at the ends of what is taken', () => {
  test('a formula without carbon holds none, and brackets multiply what is in them', () => {
    expect(carbonWeightPercent('Fe')).toBe(0);
    expect(carbonWeightPercent('(FeC)3')).toBeCloseTo(carbonWeightPercent('FeC'), 12);
    expect(carbonWeightPercent('(Fe)3C')).toBeCloseTo(carbonWeightPercent('Fe3C'), 12);
    // From the weights alone: 12.011/(50.9415 + 12.011) of VC is carbon.
    expect(carbonWeightPercent('VC')).toBeCloseTo((100 * 12.011) / 62.9525, 10);
  });

  test('a knife without a name goes by its id', () => {
    expect(rankings(loft).chippingReason).toContain('plover, dunlin');
  });

  test('a knife made equal with a microbevelled baseline takes the microbevel over', () => {
    const comparison: Comparison = {
      knives: [{ ...plover, microbevelAngleDeg: 22 }, dunlin],
      baseline: 'plover',
    };
    const [, equalised] = makeEqual(comparison, 'dunlin', ['angleDeg']).knives;
    expect(equalised).toMatchObject({ angleDeg: 20, microbevelAngleDeg: 22 });
    const [, back] = makeEqual({ ...comparison, baseline: 'dunlin' }, 'plover', ['angleDeg']).knives;
    expect(back).toEqual(dunlin);
    const [bare] = makeEqual({ ...comparison, baseline: 'dunlin' }, 'plover', ['angleDeg']).knives;
    expect(bare).not.toHaveProperty('microbevelAngleDeg');
  });

  test('evening up a knife leaves the others as they are', () => {
    const curlew: Knife = { ...plover, id: 'curlew', angleDeg: 12, hrc: 62 };
    const equalised = makeEqual({ ...loft, knives: [plover, dunlin, curlew] }, 'curlew', ['angleDeg']);
    expect(equalised.knives).toEqual([plover, dunlin, { ...curlew, angleDeg: 20 }]);
  });

  test('the softest and the hardest, the poorest and the richest steel are compared like any other', () => {
    const knives = [20, 50, 66, 68].flatMap((hrc) =>
      [{}, { CrC: 60 }, { MC: 60 }].map((carbideVolPercent, i): Knife => ({
        ...plover,
        id: `${hrc} ${i}`,
        hrc,
        carbideVolPercent,
      })),
    );
    for (const { multiplied, added, toLimit, terms } of compare({ knives, baseline: '20 0' }).rows)
      for (const value of [multiplied, added, toLimit, ...terms.map(({ factor }) => factor)]) {
        expect(Number.isFinite(value)).toBe(true);
        expect(value).toBeGreaterThan(0);
      }
  });

  test('a size beyond the scale gets its last grade, and is said to be beyond', () => {
    const { grit, um, beyond, ratio } = nearestGrade(2000, 'FEPA-P');
    expect(beyond).toBe(true);
    expect(ratio).toBeCloseTo(um / 2000, 12);
    expect(nearestGrade(um, 'FEPA-P')).toMatchObject({ grit, beyond: false, ratio: 1 });
    const finest = nearestGrade(0.1, 'FEPA-P');
    expect(finest.beyond).toBe(true);
    expect(nearestGrade(finest.um, 'FEPA-P')).toEqual({ ...finest, beyond: false, ratio: 1 });
  });

  test('a ± of 0 is a value known exactly', () => {
    const measured = (hrc: Knife['hrc']): Comparison => ({ ...loft, knives: [plover, { ...dunlin, hrc }] });
    const run = { samples: 1000, seed: 1 };
    expect(predict(measured({ value: 60, plusMinus: 0 }), run)).toEqual(predict(measured(60), run));
  });

  test('what is refused at every exact value is refused in every sample', () => {
    const none = { residuals: [], structure: 0 };
    expect([...refusedSamples({ ...none, knives: [Number.NaN] }, 3)]).toEqual([0, 1, 2]);
    expect([...refusedSamples({ ...none, knives: [1, 2] }, 3)]).toEqual([]);
    expect([...refusedSamples({ ...none, knives: [1, Float64Array.of(0, NaN, 1)] }, 3)]).toEqual([1]);
    expect([...refusedSamples({ ...none, knives: [Float64Array.of(NaN, 0, Infinity)] }, 3)]).toEqual([0, 2]);
  });
});

test('a life that was over at the first look counts as its reciprocal that was not over at the last', () => {
  const lives = [
    { low: 0, high: 90 },
    { low: 0, high: 140 },
    ...[100, 150, 170, 220].map((life) => ({ low: life, high: life })),
  ];
  const turned = lives.map(({ low, high }) => ({ low: 1 / high, high: 1 / low }));
  const rows = lives.map(() => [1]);
  const [there, back] = [lognormalFit(lives, rows), lognormalFit(turned, rows)];
  expect(back.beta[0]).toBeCloseTo(-(there.beta[0] ?? NaN), 8);
  expect(back.sigma).toBeCloseTo(there.sigma, 8);
  // Over by the first look they pull the middle below that of the four that were read.
  expect(Math.exp(there.beta[0] ?? NaN)).toBeLessThan((100 * 150 * 170 * 220) ** 0.25);
});

describe('distributions at their ends', () => {
  test('F of 0 is always reached and F without end never', () => {
    expect(fisherTail(0, 3, 4)).toBe(1);
    expect(fisherTail(Infinity, 3, 4)).toBe(0);
  });

  // With 2 degrees of freedom above, the incomplete beta function is a power: I_x(b/2, 1) = x^(b/2).
  test.each([0.3, 0.5, 2, 7])('F with 2 over %s degrees of freedom is a power', (df) => {
    for (const f of [0.1, 1, 8])
      expect(fisherTail(f, 2, df)).toBeCloseTo((df / (df + 2 * f)) ** (df / 2), 12);
  });

  test('the noncentral t without a shift is Student’s', () => {
    for (const t of [-2, -0.5, 0.5, 2]) expect(noncentralTCdf(t, 7, 0)).toBeCloseTo(studentCdf(t, 7), 12);
    // At 1 degree of freedom Student's t is Cauchy's: 1/2 + arctan(1)/π.
    expect(noncentralTCdf(1, 1, 0)).toBeCloseTo(0.75, 12);
  });

  test('far bounds are always held, and bounds nearer than the test’s own limit never', () => {
    for (const df of [1, 2, 5]) expect(equivalencePower(1e9, 1e9, df, 0.05)).toBeCloseTo(1, 6);
    expect(equivalencePower(1, 1, 5000, 0.05)).toBe(0);
  });
});
