import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';
import type { Knife, Comparison, Term, TermId } from '../../src/model/index.ts';

/** Invented knives; what is checked is the arithmetic, done again here by hand. */
const baseline: Knife = {
  id: 'b',
  angleDeg: 20,
  edgeMm: 0.6,
  finish: { um: 15.3 },
  grind: { form: 'flat', spineMm: 3, heightMm: 12 },
  hrc: 57,
  carbideVolPercent: { CrC: 4 },
};
const slim: Knife = {
  id: 'a',
  angleDeg: 10,
  edgeMm: 0.3,
  finish: { um: 68 },
  grind: { form: 'flat', spineMm: 3, heightMm: 24 },
  hrc: 61,
  carbideVolPercent: { CrC: 14 },
};
const comparison: Comparison = { knives: [baseline, slim], baseline: 'b' };
const row = (reading: 'quick' | 'careful', change: Partial<Comparison> = {}) => {
  const found = model
    .compare({ ...comparison, ...change }, { reading })
    .rows.find(({ knife }) => knife === 'a');
  if (!found) throw new Error('no row');
  return found;
};
const term = (id: TermId, reading: 'quick' | 'careful', change: Partial<Comparison> = {}): Term => {
  const found = row(reading, change).terms.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no term ${id}`);
  return found;
};
const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
const sin = (degrees: number) => Math.sin((degrees * Math.PI) / 180);

describe('the quick sum, in the head', () => {
  test.each<[TermId, number]>([
    ['wedge', 20 / 10],
    ['apex', 20 / 10],
    ['thickness', 0.6 / 0.3],
    ['finish', 68 / 15.3],
    ['hardness', (61 / 57) ** 2],
    // Assumed: twenty volume per cent doubles.
    ['carbide', Math.SQRT2],
  ])('%s', (id, factor) => {
    expect(term(id, 'quick').factor).toBeCloseTo(factor, 12);
  });

  test('the grind: halving its wedge counts a tenth', () => {
    // Common practice, no source. Over 8 mm: flat grinds whose half angle's tangent is (T − t)/2H.
    const halfAngle = (t: number, height: number) => Math.atan((3 - t) / (2 * height));
    const halvings = Math.log2(halfAngle(0.6, 12) / halfAngle(0.3, 24));
    expect(term('grind', 'quick').factor).toBeCloseTo(1.1 ** halvings, 10);
  });
});

describe('the careful estimate', () => {
  test('wedge and grind, by the statics of a wedge with friction', () => {
    // Statics of a driven wedge, any textbook: F = 2 S tan(θ + φ).
    const phi = (Math.atan(0.25) * 180) / Math.PI;
    expect(term('wedge', 'careful').factor).toBeCloseTo(tan(20 + phi) / tan(10 + phi), 12);
    const halfAngle = (t: number, height: number) => (Math.atan((3 - t) / (2 * height)) * 180) / Math.PI;
    expect(term('grind', 'careful').factor).toBeCloseTo(
      tan(halfAngle(0.6, 12) + phi) / tan(halfAngle(0.3, 24) + phi),
      12,
    );
  });

  test('wedge and friction left in a slice', () => {
    expect(term('wedge', 'careful', { slicePush: 3 }).factor).toBeCloseTo(1.774, 3);
    expect(term('wedge', 'careful', { friction: 0 }).factor).toBeCloseTo(2.064, 3);
  });

  test('wedge and apex together have the stated exponent at 15°', () => {
    // The definition of E, by a central difference: at friction 0.25 and slice/push 3, the friction that is left held.
    const friction = 0.25 / Math.sqrt(1 + 9 * Math.cos((15 * Math.PI) / 180) ** 2);
    for (const total of [0.9, 1, 1.3, 2.4]) {
      const knives = [14.999, 15.001].map((angleDeg, i) => ({ ...baseline, id: 'ba'[i] ?? '', angleDeg }));
      const narrow = row('careful', { knives, friction, assumptions: { angleExponent: total } });
      expect(-Math.log(narrow.multiplied) / Math.log(15.001 / 14.999)).toBeCloseTo(total, 5);
    }
  });

  test('the apex is a power of the sines', () => {
    // e = (E − 0.8262)/0.9770, whatever the friction and the slice: so these do change what an angle is worth.
    const exponent = (1.3 - 0.8262) / 0.977;
    for (const change of [{}, { friction: 0.6 }, { slicePush: 3 }, { friction: 0, slicePush: 10 }])
      expect(term('apex', 'careful', change).factor).toBeCloseTo((sin(20) / sin(10)) ** exponent, 3);
    expect(model.apexExponent(1.3)).toBeCloseTo(exponent, 3);
  });

  test('thickness and finish at their assumed exponents, and at the ends of their ranges', () => {
    const [thickness, finish] = [term('thickness', 'careful'), term('finish', 'careful')];
    expect(thickness.factor).toBeCloseTo(Math.SQRT2, 12);
    expect([thickness.low, thickness.high]).toEqual([expect.closeTo(2 ** 0.2, 12), expect.closeTo(2, 12)]);
    expect(finish.factor).toBeCloseTo((68 / 15.3) ** 0.3, 12);
    expect(finish.low).toBeCloseTo(1, 12);
  });

  test('hardness and carbide, by the regression exchanged one way and the other, to the power of a life', () => {
    // thomas-2018-card, its coefficients: 15.8 a point, 11.2 a volume per cent of CrC, −17.8 a degree of 30; below 200 mm
    // the line bends (assumed). p 1.5 (assumed) makes a life of card, 1 leaves it card.
    const line = (hrc: number, crc: number) => -157 + 15.8 * hrc - 17.8 * 30 + 11.2 * crc;
    for (const [outcome, p] of [
      ['end-point', 1.5],
      ['fixed-strokes', 1],
    ] as const) {
      const t = (hrc: number, crc: number) => line(hrc, crc) ** p;
      const hardness = Math.sqrt((t(61, 14) / t(57, 14)) * (t(61, 4) / t(57, 4)));
      const carbide = Math.sqrt((t(61, 14) / t(61, 4)) * (t(57, 14) / t(57, 4)));
      expect(term('hardness', 'careful', { outcome }).factor).toBeCloseTo(hardness, 12);
      expect(term('carbide', 'careful', { outcome }).factor).toBeCloseTo(carbide, 12);
      expect(row('careful', { outcome }).families.steel).toBeCloseTo(t(61, 14) / t(57, 4), 12);
    }
  });

  test("the regression's own exponent of the angle", () => {
    // thomas-2018-card: d ln T/d ln θ = −17.8 · 30/T, −2.2 to −0.64 over the observed 244–835 mm.
    const { perIncludedDegree } = model.regression;
    expect((perIncludedDegree * 30) / 244).toBeCloseTo(-2.2, 1);
    expect((perIncludedDegree * 30) / 835).toBeCloseTo(-0.64, 2);
  });
});

describe('percentages', () => {
  test('the readings of "less"', () => {
    const { faceValue, inverse, damped } = model.percentReadings(50, 0.5);
    expect([faceValue, inverse]).toEqual([1.5, 2]);
    expect(damped).toBeCloseTo(Math.SQRT2, 12);
  });

  test('up and down again is 1 − (p/100)²', () => {
    for (const percent of [5, 40, 80])
      expect(model.compound([percent, -percent])).toBeCloseTo(1 - (percent / 100) ** 2, 12);
    expect(model.compound([40, model.undoPercent(40)])).toBeCloseTo(1, 12);
  });

  test('shares that cancel are refused, then shown with their sign', () => {
    expect(() => model.logShares([2, 0.51])).toThrow('nearly cancel');
    expect(model.logShares([2, 8])).toEqual([expect.closeTo(0.25, 12), expect.closeTo(0.75, 12)]);
    expect(model.signedShares([2, 0.5])).toEqual([0.5, -0.5]);
  });
});

describe('sections of a primary grind', () => {
  const section = { edgeMm: 0.5, spineMm: 3, heightMm: 20 } as const;

  test.each(['hollow', 'convex'] as const)('the %s face runs through both ends of its chord', (form) => {
    const curved = { ...section, form, radiusMm: 120 };
    expect(model.grindThicknessMm(curved, 0)).toBeCloseTo(0.5, 12);
    expect(model.grindThicknessMm(curved, 20)).toBeCloseTo(3, 12);
    expect(model.grindThicknessMm(curved, 25)).toBe(3);
  });

  test('the half angle is that of the thickest place within the contact depth', () => {
    for (const radiusMm of [11, 14, 30, 120])
      for (const contactDepthMm of [3, 8, 19, 30]) {
        const convex = { ...section, form: 'convex', radiusMm } as const;
        const places = Array.from({ length: 20001 }, (_, i) => (contactDepthMm * i) / 20000);
        const thickest = Math.max(...places.map((at) => model.grindThicknessMm(convex, at)));
        const angle = (Math.atan((thickest - 0.5) / (2 * contactDepthMm)) * 180) / Math.PI;
        expect(model.grindHalfAngleDeg({ ...convex, contactDepthMm })).toBeCloseTo(angle, 5);
      }
  });

  test('the least thickness of a hollow is found exactly', () => {
    const hollow = { ...section, form: 'hollow', radiusMm: 120 } as const;
    const places = Array.from({ length: 20001 }, (_, i) => (20 * i) / 20000);
    const thinnest = Math.min(...places.map((at) => model.grindThicknessMm(hollow, at)));
    expect(thinnest).toBeLessThan(0.5);
    expect(model.checkSection(hollow)).toBeCloseTo(thinnest, 6);
  });
});

describe('what a grain leaves on steel', () => {
  test('scratches 3 to 5% of its size deep, and a roughness that goes with its power 1.3 to 1.4', () => {
    // Two published charts of ground and lapped steel, read off.
    expect(model.scratchDepthUm(60)).toEqual({ low: expect.closeTo(1.8, 12), high: expect.closeTo(3, 12) });
    const [fine, coarse] = [model.roughnessRaUm(58.5), model.roughnessRaUm(117)];
    const power = (a: number, b: number): number => Math.log2(b / a);
    expect(power(fine.value, coarse.value)).toBeCloseTo(1.35, 9);
    expect(power(fine.low, coarse.low)).toBeCloseTo(1.3, 9);
    expect(power(fine.high, coarse.high)).toBeCloseTo(1.4, 9);
  });
});

describe('finish', () => {
  test.each([
    // ISO 6344-2/-3; ISO 8486-1/-2 (from memory); JIS R 6001; ANSI B74.18: both ends and one between.
    ['FEPA-P', 80, 201],
    ['FEPA-P', 1200, 15.3],
    ['FEPA-P', 2500, 8.4],
    ['FEPA-F', 80, 185],
    ['FEPA-F', 230, 53],
    ['FEPA-F', 2000, 1.2],
    ['JIS', 240, 57],
    ['JIS', 1000, 11.5],
    ['JIS', 8000, 1.2],
    ['CAMI', 80, 192],
    ['CAMI', 320, 36],
    ['CAMI', 1200, 6.5],
  ] as const)('%s %i is %f µm', (scale, grit, um) => {
    expect(model.grainSizeUm({ scale, grit })).toBe(um);
    expect(model.nearestGrit(scale, um)).toBe(grit);
  });

  test.each(['FEPA-P', 'FEPA-F', 'JIS', 'CAMI'] as const)('%s grows finer all along', (scale) => {
    const { rows } = model.gritTable(scale);
    rows.slice(1).forEach(([grit, um], i) => {
      const [gritBefore, umBefore] = rows[i] ?? [Infinity, 0];
      expect(grit).toBeGreaterThan(gritBefore);
      expect(um).toBeLessThan(umBefore);
      // Log–log between: at the geometric mean of two grits, the geometric mean of their sizes.
      const between = model.grainSizeUm({ scale, grit: Math.sqrt(grit * gritBefore) });
      expect(between).toBeCloseTo(Math.sqrt(um * umBefore), 9);
    });
  });
});

describe('steel', () => {
  test('a point of hardness near 59 HRC', () => {
    // ASTM E140 table 1: 653, 674 and 697 HV at 58, 59 and 60. Common practice, no source: twice the per cent of HRC.
    const perPoint = model.vickersFromRockwellC(59.5) / model.vickersFromRockwellC(58.5) - 1;
    expect(perPoint).toBeCloseTo(0.033, 3);
    expect(perPoint).toBeCloseTo(2 / 59, 2);
    expect((697 / 653 - 1) / 2).toBeCloseTo(perPoint, 2);
  });

  test('carbon in austenite along the Acm line', () => {
    // From memory, ±0.1.
    for (const [celsius, carbon] of [
      [727, 0.76],
      [800, 0.95],
      [900, 1.24],
      [1000, 1.6],
      [1100, 1.97],
    ] as const)
      expect(model.austeniteCarbonPercent(celsius)).toEqual({ value: carbon, plusMinus: 0.1 });
    expect(() => model.austeniteCarbonPercent(700)).toThrow('hardening temperature 700 °C is not between');
  });

  test('the worth of a rich steel depends on the angle, the regression being additive', () => {
    // thomas-2018-card: about ×1.7 at 20° included, ×2.3 at 30°, off the scale at 40°.
    const plain = { hrc: 56, carbideVolPercent: { CrC: 1.25 } };
    const rich = { hrc: 61, carbideVolPercent: { CrC: 18.3 } };
    const worth = (includedAngleDeg: number) =>
      model.cardCutMm({ ...rich, includedAngleDeg }) / model.cardCutMm({ ...plain, includedAngleDeg });
    expect(worth(20)).toBeCloseTo(1.7, 1);
    expect(worth(30)).toBeCloseTo(2.3, 1);
    expect(() => worth(40)).toThrow('is not at least 100 mm');
  });

  test.each([
    [
      { hrc: 49, includedAngleDeg: 30, carbideVolPercent: { CrC: 30 } },
      'hardness 49 HRC is not between 50 HRC and 66 HRC',
    ],
    [
      { hrc: 60, includedAngleDeg: 44, carbideVolPercent: {} },
      'included angle 44° is not between 20° and 40°',
    ],
  ])('outside its range the regression is refused', (input, message) => {
    expect(() => model.cardCutMm(input)).toThrow(message);
  });

  test('a lever outside its ends is refused', () => {
    expect(() => model.leverRule({ whole: 7, poor: 0.022, rich: 6.7 })).toThrow(
      'whole 7 is not between 0.022 and 6.7',
    );
  });

  test('typical volumes are by standard designation, with their ±', () => {
    // From memory: D2 11–15, 440C 10–13, ±30%.
    const d2 = model.carbidesByDesignation['AISI D2']?.CrC;
    expect(d2).toEqual({ value: 13, plusMinus: 3.9 });
    for (const designation of Object.keys(model.carbidesByDesignation))
      expect(designation).toMatch(/^(AISI|EN) /);
  });
});
