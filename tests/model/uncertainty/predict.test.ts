import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/model/chain/compare.ts';
import type { Knife, Comparison, Structure } from '../../../src/model/types.ts';
import { predict } from '../../../src/model/uncertainty/predict.ts';
import { createPredictor } from '../../../src/model/uncertainty/predictor.ts';
import { structures } from '../../../src/model/chain/structures.ts';
import { exact as fixed } from '../knives.ts';

// Invented knives of an invented harbour rigging loft.
const plover: Knife = {
  id: 'plover',
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: 58,
  carbideVolPercent: { CrC: 4 },
};
const curlew: Knife = {
  ...plover,
  id: 'curlew',
  angleDeg: 14,
  edgeMm: 0.3,
  hrc: 61,
  carbideVolPercent: { CrC: 8, MC: 3 },
};
const loft = (a: Knife = curlew, b: Knife = plover, more: Partial<Comparison> = fixed): Comparison => ({
  knives: [b, a],
  baseline: b.id,
  ...more,
});
const run = { samples: 4000, seed: 7 };
const of = <T extends { knife: string }>(rows: T[], id: string): T => {
  const row = rows.find((r) => r.knife === id);
  if (row === undefined) throw new Error(`no row for ${id}`);
  return row;
};
const within = (value: number, plusMinus: number) => ({ value, plusMinus });

describe('a prediction', () => {
  it('collapses to the close value where nothing varies', () => {
    const exact = of(compare(loft()).rows, 'curlew').multiplied;
    for (const comparison of [loft(), loft({ ...curlew, angleDeg: within(14, 0), hrc: within(61, 0) })]) {
      const { low, median, high, beatsBaseline, variance, redrawn } = of(predict(comparison, run), 'curlew');
      for (const value of [low, median, high]) expect(value / exact).toBeCloseTo(1, 12);
      expect(beatsBaseline).toBe(1);
      expect(variance).toEqual({});
      expect(redrawn).toBe(0);
    }
  });

  it('has for each structure the total of compare where nothing varies, and so where the structure is fixed', () => {
    const { structureWeights: _held, ...assumptions } = fixed.assumptions;
    const open = loft(curlew, plover, { ...fixed, assumptions });
    const exact = of(compare(open).rows, 'curlew');
    const found = of(predict(open, run), 'curlew');
    for (const structure of structures) {
      const { low, median, high } = found.byStructure[structure];
      for (const value of [low, median, high]) expect(value / exact[structure]).toBeCloseTo(1, 12);
    }
    expect(found.variance).toEqual({
      structure: expect.closeTo(1, 2) as number,
      together: expect.closeTo(0, 2) as number,
    });
    structures.forEach((structure, place) => {
      const structureWeights: [number, number, number] = [0, 0, 0];
      structureWeights[place] = 7;
      const held = loft(curlew, plover, { ...fixed, assumptions: { ...assumptions, structureWeights } });
      const { low, median, high, variance } = of(predict(held, run), 'curlew');
      for (const value of [low, median, high]) expect(value / exact[structure]).toBeCloseTo(1, 12);
      expect(variance).toEqual({});
    });
  });

  it('draws the structures by their weights, the same for all knives', () => {
    const knives = [plover, curlew, { ...curlew, id: 'avocet', edgeMm: 0.25 }];
    const structureWeights: [number, number, number] = [1, 2, 1];
    const comparison: Comparison = {
      knives,
      baseline: 'plover',
      ...fixed,
      assumptions: { ...fixed.assumptions, structureWeights },
    };
    const logs = createPredictor(run).logRatios(comparison, 'curlew');
    const exact = of(compare(comparison).rows, 'curlew');
    const share = (structure: Structure): number =>
      logs.filter((log) => Math.abs(log - Math.log(exact[structure])) < 1e-9).length / run.samples;
    // Within three standard errors of 4000 draws.
    for (const [structure, weight] of [
      ['multiplied', 0.25],
      ['added', 0.5],
      ['toLimit', 0.25],
    ] as const)
      expect(Math.abs(share(structure) - weight)).toBeLessThan(
        3 * Math.sqrt((weight * (1 - weight)) / run.samples),
      );
    // One structure for all in a sample: the two knives alike but for thickness keep their order in every one.
    const [a, b] = ['curlew', 'avocet'].map((id) => createPredictor(run).logRatios(comparison, id));
    expect(a?.length).toBe(b?.length);
    expect(of(predict({ ...comparison, baseline: 'curlew' }, run), 'avocet').beatsBaseline).toBe(1);
  });

  it('runs the very factors of the careful estimate: microbevel, graded finish, hardness beyond the line', () => {
    const awkward: Knife = {
      ...curlew,
      microbevelAngleDeg: 18,
      finish: { scale: 'JIS', grit: 1000 },
      hrc: 49,
    };
    for (const comparison of [
      loft(awkward),
      loft(awkward, plover, { ...fixed, slicePush: 3, contactDepthMm: 12 }),
    ]) {
      const exact = of(compare(comparison).rows, 'curlew');
      expect(
        of(predict(comparison, { samples: 100, seed: 1 }), 'curlew').median / exact.multiplied,
      ).toBeCloseTo(1, 12);
    }
    const blunt = { ...curlew, microbevelAngleDeg: within(14.5, 1) };
    expect(of(predict(loft(blunt), run), 'curlew').redrawn).toBeGreaterThan(500);
  });

  it('is the same for the same seed and another for another', () => {
    const comparison = loft({ ...curlew, angleDeg: within(14, 2) }, plover, {});
    expect(predict(comparison, run)).toEqual(predict(comparison, run));
    expect(predict(comparison, { ...run, seed: 8 })).not.toEqual(predict(comparison, run));
  });

  it('holds the baseline at exactly one, whatever varies', () => {
    const comparison = loft(curlew, { ...plover, angleDeg: within(20, 3), hrc: within(58, 1) }, {});
    expect(of(predict(comparison, run), 'plover')).toMatchObject({
      low: 1,
      median: 1,
      high: 1,
      beatsBaseline: 0,
      variance: {},
    });
  });

  it('puts the 90% points of one uniform input where that input has its own', () => {
    // The ratio falls as the angle grows, so its 5% point is that of the angle's 95% point, 14 + 0.9·2.
    const comparison = loft({ ...curlew, angleDeg: within(14, 2) });
    const at = (angleDeg: number): number =>
      of(compare(loft({ ...curlew, angleDeg })).rows, 'curlew').multiplied;
    const { low, median, high, variance } = of(predict(comparison, { samples: 20_000, seed: 1 }), 'curlew');
    expect(Math.abs(low / at(15.8) - 1)).toBeLessThan(0.005);
    expect(Math.abs(median / at(14) - 1)).toBeLessThan(0.01);
    expect(Math.abs(high / at(12.2) - 1)).toBeLessThan(0.005);
    expect(variance['angleDeg']).toBeGreaterThan(0.98);
  });

  it('draws the disputed parameters once for all knives: two equal knives stay equal', () => {
    const comparison: Comparison = {
      knives: [plover, curlew, { ...curlew, id: 'avocet' }],
      baseline: 'plover',
    };
    const rows = predict(comparison, run);
    expect(of(rows, 'avocet')).toEqual({ ...of(rows, 'curlew'), knife: 'avocet' });
    const level = predict(loft({ ...plover, id: 'dunlin' }, plover, {}), run);
    expect(of(level, 'dunlin')).toMatchObject({ low: 1, high: 1, beatsBaseline: 0 });
  });

  it('widens with the ± and shares out its variance to one', () => {
    const widths = [0.5, 1, 2, 3].map((h) => {
      const { low, high, variance } = of(
        predict(loft({ ...curlew, angleDeg: within(14, h) }, plover, {}), run),
        'curlew',
      );
      const shares = Object.values(variance);
      expect(shares.reduce((sum, v) => sum + v, 0)).toBeCloseTo(1, 12);
      expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
      return high / low;
    });
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  });

  it('gives the baseline, the knife and the shared parameters each their own share', () => {
    const comparison = loft(
      { ...curlew, edgeMm: within(0.3, 0.05), carbideVolPercent: { CrC: within(8, 2), MC: 3 } },
      { ...plover, angleDeg: within(20, 4) },
      { ...fixed, friction: { value: 0.25, plusMinus: 0.1 } },
    );
    const { variance } = of(predict(comparison, { samples: 20_000, seed: 2 }), 'curlew');
    expect(Object.keys(variance).sort()).toEqual(
      ['baseline.angleDeg', 'carbideVolPercent.CrC', 'edgeMm', 'friction', 'together'].sort(),
    );
    expect(variance['baseline.angleDeg']).toBeGreaterThan(variance['edgeMm'] ?? 1);
    expect(variance['together']).toBeLessThan(0.05);
  });

  it('takes an unknown as its whole stated range', () => {
    const unknown = of(
      predict(loft({ ...curlew, edgeMm: { unknown: true, low: 0.2, high: 0.6 } }), run),
      'curlew',
    );
    const same = of(predict(loft({ ...curlew, edgeMm: within(0.4, 0.2) }), run), 'curlew');
    expect(unknown.low / same.low).toBeCloseTo(1, 12);
    expect(unknown.high / unknown.low).toBeGreaterThan(1.3);
  });

  it('redraws and counts what the model does not accept', () => {
    const comparison = loft({ ...curlew, angleDeg: within(5, 3) });
    const { redrawn, high } = of(predict(comparison, run), 'curlew');
    expect(redrawn).toBeGreaterThan(500);
    expect(high).toBeLessThanOrEqual(of(compare(loft({ ...curlew, angleDeg: 4 })).rows, 'curlew').multiplied);
    // An edge that may be drawn thicker than its spine: two inputs that do not fit each other.
    const thick = { ...curlew, edgeMm: within(2.5, 0.6), grind: { ...curlew.grind, spineMm: 2.8 } };
    expect(of(predict(loft(thick), run), 'curlew').redrawn).toBeGreaterThan(100);
  });

  it('refuses what it cannot run', () => {
    expect(() => predict(loft(), { samples: 10, seed: 1 })).toThrow(
      'samples 10 is not a whole number from 100 to 1000000',
    );
    expect(() => predict(loft(), { samples: 1000, seed: -1 })).toThrow(
      'seed -1 is not a whole number from 0 to 4294967295',
    );
    expect(() => predict(loft({ ...curlew, angleDeg: 95 }), run)).toThrow(RangeError);
  });
});
