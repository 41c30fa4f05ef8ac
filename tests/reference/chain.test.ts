import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';

describe('ratios', () => {
  test.each([
    // chen-2007-percentages: Chen & Rao, J. Consumer Research 34(3): 327–340 (2007), and its press reports.
    [[-20, -25], 0.6],
    [[25, 25], 1.5625],
    [[40, -30], 0.98],
    // amc-2002-problem: AMC 8 2002, problem 14, 30% then 20% off is 44% off.
    [[-30, -20], 0.56],
  ])('%j makes %f', (percents, multiplier) => {
    expect(model.compound(percents)).toBeCloseTo(multiplier, 12);
  });

  test('compound interest', () => {
    // openstax-contemporary-mathematics 6.4 and openstax-college-algebra 6.1.
    expect(1000 * model.compound([4, 4, 4])).toBeCloseTo(1124.86, 2);
    expect(1000 * model.additiveGuess([4, 4, 4])).toBeCloseTo(1120, 10);
    expect(3000 * model.compound(Array<number>(40).fill(0.75))).toBeCloseTo(4045.05, 2);
  });

  test('three halves-again with three tenths-again', () => {
    // Common practice, no source: ×4.49, not the ×2.8 of the sum.
    expect(model.compound([50, 50, 50, 10, 10, 10])).toBeCloseTo(4.49, 2);
    expect(model.additiveGuess([50, 50, 50, 10, 10, 10])).toBeCloseTo(2.8, 12);
  });
});

describe('geometry', () => {
  // Trigonometry by hand.
  test('bevel, per side', () => {
    expect(model.edgeAngleDeg({ thicknessMm: 0.5, slantWidthMm: 1.2 })).toBeCloseTo(12.025, 3);
    expect(model.edgeAngleDeg({ thicknessMm: 0.5, heightMm: 1.2 })).toBeCloseTo(11.77, 2);
    // Put back: t = 2 w sin θ = 2 h tan θ.
    const rad = Math.PI / 180;
    expect(2 * 1.2 * Math.sin(12.0247 * rad)).toBeCloseTo(0.5, 5);
    expect(2 * 1.2 * Math.tan(11.7683 * rad)).toBeCloseTo(0.5, 5);
  });

  test('the angle of friction is its arctangent', () => {
    expect(model.frictionAngleDeg(0.25)).toBeCloseTo(14.036, 3);
    expect(model.frictionAngleDeg(1)).toBeCloseTo(45, 12);
    expect(model.frictionAngleDeg(0)).toBe(0);
  });

  test.each([
    [0, 2.064],
    [0.2, 1.559],
    [0.25, 1.514],
    [0.3, 1.48],
  ])('wedge 20° to 10° at friction %f', (friction, factor) => {
    expect(model.wedgeFactor({ angleDeg: 10, baselineAngleDeg: 20, friction })).toBeCloseTo(factor, 2);
  });

  test('the range of the equal spread force', () => {
    const range = model.wedgeFactorRange({ angleDeg: 10, baselineAngleDeg: 20, friction: 0.25 });
    expect(range.elasticBed).toBeCloseTo(3.13, 2);
    expect(range.buriedBevel).toBeCloseTo(0.73, 2);
  });

  test.each([
    [0, 1.514],
    [1, 1.598],
    [3, 1.774],
    [10, 1.947],
  ])('friction in a slice, ξ = %f', (slicePush, factor) => {
    const at = (angleDeg: number) =>
      Math.tan(
        (angleDeg * Math.PI) / 180 +
          Math.atan(model.effectiveFriction({ friction: 0.25, slicePush, angleDeg })),
      );
    expect(at(20) / at(10)).toBeCloseTo(factor, 3);
  });

  test('push force', () => {
    // Atkins, Xu & Jeronimidis 2004, J. Mater. Sci. 39: 2761.
    expect(model.pushForceShare(3)).toBeCloseTo(0.1, 12);
  });

  test('apex', () => {
    expect(model.toothFactor({ angleDeg: 10, baselineAngleDeg: 20 })).toBeCloseTo(1.97, 3);
    expect(model.toothFactor({ angleDeg: 15, baselineAngleDeg: 20 })).toBeCloseTo(1.321, 3);
    expect(model.toothFactor({ angleDeg: 12, baselineAngleDeg: 20 })).toBeCloseTo(1.645, 3);
    expect(model.apexFactors({ angleDeg: 10, baselineAngleDeg: 20 }).wear).toBeCloseTo(2.064, 3);
    expect(model.wearAreaUm2({ flatUm: 10, angleDeg: 15 })).toBeCloseTo(93.3, 1);
  });

  test('sagitta of a grind', () => {
    const hollow = { form: 'hollow', spineMm: 5, heightMm: 25, radiusMm: 127 } as const;
    expect(model.flankSagMm(hollow, 12.5)).toBeCloseTo(0.6167, 4);
    expect(model.flankSagMm({ ...hollow, heightMm: 20, radiusMm: 15 }, 10)).toBeCloseTo(3.8197, 4);
  });

  test('steel to remove goes with the square of the thickness', () => {
    const angles = { fromAngleDeg: 20, toAngleDeg: 10 };
    expect(model.steelRemovedMm2({ edgeMm: 0.5, ...angles })).toBeCloseTo(0.183, 3);
    expect(
      model.steelRemovedMm2({ edgeMm: 1, ...angles }) / model.steelRemovedMm2({ edgeMm: 0.5, ...angles }),
    ).toBeCloseTo(4, 12);
  });
});

describe('finish', () => {
  test('one number on four scales', () => {
    // ISO 6344, ISO 8486 (from memory), JIS R 6001, ANSI B74.18.
    const um = (['FEPA-P', 'FEPA-F', 'JIS', 'CAMI'] as const).map((scale) =>
      model.grainSizeUm({ scale, grit: 400 }),
    );
    expect(um).toEqual([35.0, 17.3, 30.0, 23.6]);
  });

  test('a hundred against a thousand', () => {
    const ratio = (scale: 'FEPA-P' | 'CAMI') =>
      model.grainSizeUm({ scale, grit: 100 }) / model.grainSizeUm({ scale, grit: 1000 });
    expect(ratio('FEPA-P')).toBeCloseTo(8.85, 2);
    expect(ratio('CAMI')).toBeCloseTo(15.3, 1);
  });

  test('outside a table is refused', () => {
    expect(() => model.grainSizeUm({ scale: 'FEPA-P', grit: 3000 })).toThrow(
      'grit 3000 is not between 80 and 2500 on the FEPA-P scale',
    );
  });
});

describe('hardness', () => {
  // ASTM E140 table 1.
  const rows = [
    [20, 238],
    [25, 266],
    [30, 302],
    [35, 345],
    [40, 392],
    [45, 446],
    [46, 458],
    [48, 484],
    [50, 513],
    [51, 528],
    [52, 544],
    [53, 560],
    [54, 577],
    [55, 595],
    [56, 613],
    [57, 633],
    [58, 653],
    [59, 674],
    [60, 697],
    [61, 720],
    [62, 746],
    [63, 772],
    [64, 800],
    [65, 832],
    [66, 865],
    [67, 900],
    [68, 940],
  ] as const;
  test.each(rows)('%i HRC is %i HV', (hrc, vickers) => {
    const tolerance = hrc < 46 ? 0.009 : hrc <= 64 ? 0.0015 : 0.014;
    expect(Math.abs(model.vickersFromRockwellC(hrc) / vickers - 1)).toBeLessThanOrEqual(tolerance);
  });

  // ISO 18265:2013 table A.1.
  test.each([
    [250, 800],
    [300, 965],
    [350, 1125],
    [400, 1290],
    [450, 1455],
    [500, 1630],
    [550, 1810],
    [600, 1995],
    [620, 2070],
    [640, 2145],
    [650, 2180],
  ])('%i HV is %i MPa', (vickers, mpa) => {
    expect(model.tensileStrengthMpa(vickers)).toBeCloseTo(mpa, 9);
  });
});

describe('carbide', () => {
  test('card-test regression', () => {
    // Thomas 2018, restated 2019: its printed results.
    expect(
      model.cardCutMm({ hrc: 62, includedAngleDeg: 30, carbideVolPercent: { CrVC: 13, MC: 9 } }),
    ).toBeCloseTo(714, 0);
    expect(
      Math.round(model.cardCutMm({ hrc: 56, includedAngleDeg: 30, carbideVolPercent: { CrC: 3 } })),
    ).toBe(227);
  });
});

describe('limits', () => {
  // Common practice, no source, for 5° at 60 HRC; tan θf = tan 5°·(697/HV)^k, k ½ to 1, HV by ASTM E140 table 1.
  test.each([
    [57, 5.25, 5.5],
    [61, 4.84, 4.92],
    [66, 4.06, 4.51],
  ])('the floor at %i HRC is %f° to %f° per side', (hrc, low, high) => {
    const floor = model.angleFloorDeg(model.vickersFromRockwellC(hrc));
    // The closed form of the conversion is good to 0.15%, and to 1% at 66 HRC.
    const digits = hrc > 64 ? 1 : 2;
    expect(floor.low).toBeCloseTo(low, digits);
    expect(floor.high).toBeCloseTo(high, digits);
  });

  test('the floor is 5° at 697 HV, whatever the power', () => {
    const { low, high } = model.angleFloorDeg(697);
    expect([low, high]).toEqual([expect.closeTo(5, 12), expect.closeTo(5, 12)]);
  });

  test('side load to bend the apex, by tan θ to tan² θ at one hardness', () => {
    const rolling = (angleDeg: number) => {
      const knife = {
        angleDeg: 15,
        edgeMm: 0.4,
        finish: { um: 15 },
        grind: { form: 'flat', spineMm: 3, heightMm: 14 },
        hrc: 60,
        carbideVolPercent: {},
      } as const;
      const { rows } = model.compare({
        knives: [
          { ...knife, id: 'a', angleDeg },
          { ...knife, id: 'b', carbideVolPercent: { MC: 9 } },
        ],
        baseline: 'b',
      });
      return rows[0]?.sideLoad.rolling;
    };
    // Statics of a wedge, σ = 1.5 F/(w x tan² θ) at equal depth: tan² 10°/tan² 15° = 0.433, tan² 20°/tan² 15° = 1.845;
    // at equal width of the apex the tangents alone. Carbide has no part in it.
    expect(rolling(10)).toEqual({ low: expect.closeTo(0.433, 3), high: expect.closeTo(0.658, 3) });
    expect(rolling(20)).toEqual({ low: expect.closeTo(1.358, 3), high: expect.closeTo(1.845, 3) });
    expect(rolling(15)).toEqual({ low: 1, high: 1 });
  });
});
