import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';
import { cardForChain } from '../../src/model/steel/card-for-chain.ts';

describe('the published card-test regression beyond its printed results', () => {
  test.each([
    [244, -2.2, 1],
    [835, -0.64, 2],
  ])('local exponent of the angle where %i mm are cut', (cardMm, exponent, digits) => {
    // thomas-2018-card: the span it observed at 30° included.
    expect(model.cardAngleExponent({ cardMm, includedAngleDeg: 30 })).toBeCloseTo(exponent, digits);
  });

  test('the local exponent is the slope of the regression itself', () => {
    const steel = { hrc: 60, carbideVolPercent: { CrC: 8 } };
    const card = (includedAngleDeg: number) => model.cardCutMm({ ...steel, includedAngleDeg });
    const slope = Math.log(card(30.01) / card(29.99)) / Math.log(30.01 / 29.99);
    const exponent = model.cardAngleExponent({ cardMm: card(30), includedAngleDeg: 30 });
    expect(exponent).toBeCloseTo(slope, 5);
  });
});

describe('the card line as the chain takes it', () => {
  const card = (hrc: number, carbideVolPercent: Partial<Record<model.CarbideKind, number>> = {}) =>
    model.cardForChainMm({ hrc, carbideVolPercent });

  // Own calculation by −157 + 15.8 HRC − 17.8 · 30 + carbide (thomas-2018-card), bent below 200 mm and continued beyond
  // 50–66 HRC by Vickers^1.2 (both assumed).
  test.each([
    [60, { CrC: 4 }, 301.8, 1],
    [50, {}, 120.7, 2],
    [49.9, {}, 120.29, 2],
    [45, {}, 102.07, 2],
    [66, { MC: 9 }, 587.6, 1],
    [68, { MC: 9 }, 643.5, 1],
  ] as const)('%d HRC with %o cuts %d mm', (hrc, carbide, mm, digits) => {
    expect(card(hrc, carbide)).toBeCloseTo(mm, digits);
  });

  test('is the printed line within its hardness and from 200 mm on', () => {
    // thomas-2018-card: its two printed results.
    expect(Math.round(card(62, { CrVC: 13, MC: 9 }))).toBe(714);
    expect(Math.round(card(56, { CrC: 3 }))).toBe(227);
    const steel = { hrc: 60, carbideVolPercent: { Fe3C: 3, M6C: 2 } };
    expect(model.cardForChainMm(steel)).toBe(model.cardCutMm({ ...steel, includedAngleDeg: 30 }));
  });

  test('is continuous, rises with hardness and carbide, and never reaches nothing', () => {
    const steps = 480;
    for (const CrC of [0, 2, 20, 60]) {
      let before = 0;
      for (let step = 0; step <= steps; step += 1) {
        const mm = card(20 + (48 * step) / steps, { CrC });
        expect(mm).toBeGreaterThan(before);
        // A tenth of a point is worth 2% at most.
        if (step > 0) expect(mm / before).toBeLessThan(1.02);
        before = mm;
      }
    }
    for (const hrc of [50, 66, 56.7722])
      for (const carbide of [{}, { MC: 9 }])
        expect(Math.log(card(hrc + 1e-7, carbide) / card(hrc - 1e-7, carbide))).toBeLessThan(1e-6);
    for (const hrc of [20, 50, 60, 68]) expect(card(hrc, { Fe3C: 1 })).toBeGreaterThan(card(hrc));
  });

  test('another exponent moves only what lies beyond the line', () => {
    const at = (hrc: number, hardnessExponent: number) =>
      model.cardForChainMm({ hrc, carbideVolPercent: { MC: 9 }, hardnessExponent });
    expect(at(60, 2)).toBe(at(60, 0.6));
    // Own calculation: HV by (223 HRC + 14500)/(100 − HRC).
    const hv = (hrc: number) => (223 * hrc + 14500) / (100 - hrc);
    expect(at(68, 2) / at(66, 2)).toBeCloseTo((hv(68) / hv(66)) ** 2, 12);
    expect(at(45, 0.6) / at(50, 0.6)).toBeCloseTo((hv(45) / hv(50)) ** 0.6, 12);
  });

  test('on plain numbers for the sampler it is the same', () => {
    for (const hrc of [20, 45, 50, 58, 66, 68])
      expect(cardForChain(hrc, 4 * 11.2, 1.2)).toBeCloseTo(card(hrc, { CrC: 4 }), 12);
  });

  test('carbide above 60% in all is refused, 60% is not', () => {
    expect(() => card(60, { MC: 40, CrC: 30 })).toThrow(
      new RangeError('carbide volume in all 70% is not between 0% and 60%'),
    );
    expect(() => card(60, { MC: 61 })).toThrow('MC volume 61% is not between 0% and 60%');
    expect(card(60, { MC: 20.1, CrC: 19.9, MN: 20 })).toBeGreaterThan(0);
    expect(() => card(60, { WC: 3 } as object)).toThrow('carbide kind WC is not one of');
    expect(() => card(19)).toThrow('hardness 19 HRC is not between 20 HRC and 68 HRC');
    expect(() => model.cardForChainMm({ hrc: 60, carbideVolPercent: {}, hardnessExponent: 6 })).toThrow(
      'hardness exponent 6 is not between 0 and 5',
    );
  });
});

describe('quartz over a phase', () => {
  // Quartz 900–1280 HV, cementite about 1000, Cr7C3 1300–1800, VC about 2800 (memory); 60 HRC is 697 HV (ASTM E140).
  test.each([
    ['steel60Hrc', 900 / 697, 1280 / 697],
    ['cementite', 0.9, 1.28],
    ['Cr7C3', 900 / 1800, 1280 / 1300],
    ['VC', 900 / 2800, 1280 / 2800],
  ] as const)('%s', (phase, low, high) => {
    expect(model.abrasiveOverPhase[phase].low).toBeCloseTo(low, 3);
    expect(model.abrasiveOverPhase[phase].high).toBeCloseTo(high, 3);
  });

  test('of a range of hardness the softest quartz meets the hardest phase', () => {
    expect(model.quartzOver({ low: 640, high: 900 })).toEqual({ low: 1, high: 2 });
    expect(() => model.quartzOver(0)).toThrow('hardness of the phase 0 HV is not a number above 0 HV');
    expect(() => model.quartzOver({ low: 900, high: 800 })).toThrow(
      'hardness of the phase 900–800 HV is not from a lower to a higher number',
    );
  });
});

describe('the share of carbon in a carbide', () => {
  // IUPAC standard atomic weights.
  test.each([
    ['Fe3C', 6.69],
    ['Cr7C3', 9.008],
    ['(Cr4Fe3)C3', 8.755],
    ['(Fe3.5Cr3.5)C3', 8.715],
    ['Cr23C6', 5.684],
    ['VC', 19.079],
    ['NbC', 11.448],
    ['Mo2C', 5.89],
    ['WC', 6.133],
    ['Fe3W3C', 1.643],
    ['VN', 0],
  ])('%s', (formula, percent) => {
    expect(Math.abs(model.carbonWeightPercent(formula) - percent)).toBeLessThan(0.0006);
  });

  test('a decimal stoichiometry is that of whole numbers ten times as large', () => {
    expect(model.carbonWeightPercent('(V0.7Nb0.3)(C0.9N0.1)')).toBeCloseTo(
      model.carbonWeightPercent('V7Nb3C9N'),
      12,
    );
    expect(model.carbonWeightPercent('Fe1.5W1.5C0.5')).toBeCloseTo(model.carbonWeightPercent('Fe3W3C'), 12);
  });

  test.each(['C0', 'Fe3C0', '(Fe3)0C', 'Fe3.C', 'Fe.5C', 'Fe-3C', 'Fe3,5C', 'Fe3 C'])(
    '%s is no formula',
    (formula) => {
      expect(() => model.carbonWeightPercent(formula)).toThrow(
        `formula ${formula} is not a chemical formula such as Cr7C3`,
      );
    },
  );
});

describe('the lever rule', () => {
  test('refuses a whole outside its ends, where the carbide function has none', () => {
    for (const whole of [0.021, 6.71, Number.NaN])
      expect(() => model.leverRule({ whole, poor: 0.022, rich: 6.7 })).toThrow(
        `whole ${whole} is not between 0.022 and 6.7`,
      );
    expect(model.leverRule({ whole: 0.022, poor: 0.022, rich: 6.7 })).toBe(0);
    expect(model.leverRule({ whole: 6.7, poor: 0.022, rich: 6.7 })).toBe(1);
    for (const carbon of [0, 0.4, 0.5])
      expect(model.carbideVolumePercent({ carbon, austeniteCarbon: 0.5, carbide: 'Cr7C3' })).toBe(0);
    expect(() =>
      model.carbideVolumePercent({ carbon: 5.9, austeniteCarbon: 0.5, carbide: 'Cr23C6' }),
    ).toThrow('whole 5.9 is not between 0.5 and 5.68');
  });

  test('the worked examples of a textbook', () => {
    // callister-lever: ferrite 0.022, eutectoid 0.76, cementite 6.70% C.
    const mass = (whole: number, rich: number, poor = 0.022) => model.leverRule({ whole, poor, rich });
    expect(1 - mass(0.35, 6.7)).toBeCloseTo(0.95, 2);
    expect(mass(0.35, 0.76)).toBeCloseTo(0.44, 2);
    expect(1 - mass(0.35, 0.76)).toBeCloseTo(0.56, 2);
    expect(100 * mass(0.4, 6.7)).toBeCloseTo(5.7, 1);
    expect(100 * mass(0.4, 0.76)).toBeCloseTo(51.2, 1);
    expect(mass(1.15, 6.7)).toBeCloseTo(0.17, 2);
    expect(1 - mass(1.15, 6.7, 0.76)).toBeCloseTo(0.93, 2);
    // Ferrite 0.88 by mass has 0.823% C.
    expect(0.022 + 0.12 * (6.7 - 0.022)).toBeCloseTo(0.823, 3);
    expect(1 - mass(0.823, 6.7)).toBeCloseTo(0.88, 2);
  });

  test('a published carbon balance: 17Cr-1.075C-0.8Mo', () => {
    // Published calculation: austenite 0.32 C at 1000 °C and 0.52 C at 1100 °C; Cr23C6, densities 6.97 and 7.75.
    for (const [austeniteCarbon, volume] of [
      [0.32, 15.4],
      [0.52, 11.8],
    ] as const)
      expect(model.carbideVolumePercent({ carbon: 1.075, austeniteCarbon, carbide: 'Cr23C6' })).toBeCloseTo(
        volume,
        1,
      );
  });
});

describe('life to a stop from card in a fixed number of cycles', () => {
  test('250 against 500 mm is ×4.45', () => {
    // By hand: 4·(2700 − 250)/(2700 − 500), card per cycle as 1/(1 + kX) from 45 mm.
    expect(model.lifeRatioFromCardMm({ mm: 500, baselineMm: 250 })).toBeCloseTo(4.45, 2);
    expect(model.lifeRatioFromCardMm({ mm: 250, baselineMm: 500 })).toBeCloseTo(1 / 4.45, 3);
  });

  test('counting the cycles one by one gives the same', () => {
    /** Card when an edge of this blunting has cut for 60 cycles, and when a cycle gives a third of the first. */
    const cut = (k: number): { counted: number; life: number } => {
      const steps = 20_000;
      let [card, counted, life] = [0, 0, 0];
      for (let i = 0; life === 0 || i < 60 * steps; i += 1) {
        const half = card + 45 / (1 + k * card) / (2 * steps);
        card += 45 / (1 + k * half) / steps;
        if (i === 60 * steps - 1) counted = card;
        if (life === 0 && k * card >= 2) life = card;
      }
      return { counted, life };
    };
    const [good, poor] = [cut(0.01), cut(0.05)];
    expect(good.life / poor.life).toBeCloseTo(5, 2);
    expect(model.lifeRatioFromCardMm({ mm: good.counted, baselineMm: poor.counted })).toBeCloseTo(5, 3);
  });

  test('a start without limit squares the ratio; an edge that never blunts is refused', () => {
    const checkPrediction = model.lifeRatioFromCardMm({ mm: 500, baselineMm: 250, firstMm: 1e6 });
    expect(checkPrediction).toBeCloseTo(4, 4);
    expect(() => model.lifeRatioFromCardMm({ mm: 2700, baselineMm: 250 })).toThrow(
      'card 2700 mm is not between 0 mm and 2673 mm',
    );
    expect(() => model.lifeRatioFromCardMm({ mm: 300, baselineMm: 0 })).toThrow(
      'card of the baseline 0 mm is not a number above 0',
    );
  });
});

describe('finish', () => {
  test('roughness goes as d to 1.3–1.4 within a factor 2', () => {
    // Two published charts; the height of the line is from memory.
    const { value, low, high } = model.roughnessRaUm(117);
    expect(Math.log2(value / 0.5)).toBeCloseTo(1.35, 9);
    expect([low, high]).toEqual([(0.5 * 2 ** 1.3) / 2, 0.5 * 2 ** 1.4 * 2]);
    const fine = model.roughnessRaUm(58.5 / 4);
    expect(Math.log2(fine.low / 0.25)).toBeCloseTo(-2.8, 9);
    expect(Math.log2(fine.high)).toBeCloseTo(-2.6, 9);
    expect(() => model.roughnessRaUm(0.5)).toThrow('grain size 0.5 µm is not between 1 µm and 250 µm');
  });

  test.each([
    ['FEPA-P', 34, 'P400', 35, false],
    ['FEPA-F', 18, 'F400', 17.3, false],
    ['JIS', 29, '#400', 30, false],
    ['CAMI', 24, '400', 23.6, false],
    ['FEPA-P', 2, 'P2500', 8.4, true],
    ['CAMI', 400, '80', 192, true],
  ] as const)('nearest grade on %s to %d µm', (scale, um, name, own, beyond) => {
    // ISO 6344-3, ISO 8486-2 (memory), JIS R 6001, ANSI B74.18: the grade's own size.
    expect(model.nearestGrade(um, scale)).toMatchObject({ name, um: own, beyond });
    expect(model.nearestGrade(um, scale).ratio).toBeCloseTo(own / um, 12);
  });
});
