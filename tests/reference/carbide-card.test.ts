import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';

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
