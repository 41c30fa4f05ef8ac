import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';
import type { CarbideVolPercent, Comparison, Knife } from '../../src/model/index.ts';
import { loft } from '../model/loft.ts';
import { card, middleWork, wedging, width, type PlainKnife } from './by-hand.ts';

/** Flat, 3 mm over 14 mm: the ordinary blade but for what a test changes. */
const blade: Knife = {
  id: 'blade',
  angleDeg: 20,
  edgeMm: 0.4,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 14 },
  hrc: 60,
  carbideVolPercent: { CrC: 4 },
};
const pair = (a: Partial<Knife>, b: Partial<Knife> = {}, more: Partial<Comparison> = {}): Comparison => ({
  knives: [
    { ...blade, ...a, id: 'a', name: 'Dunlin' },
    { ...blade, ...b, id: 'b', name: 'Plover' },
  ],
  baseline: 'b',
  ...more,
});
const rowOf = (comparison: Comparison) => {
  const [row] = model.compare(comparison).rows;
  if (!row) throw new Error('no row');
  return row;
};

describe('card for the chain', () => {
  /** Card in a fixed number of strokes, in mm: read off against 60 HRC with 4% of CrC, where the line is straight. */
  const mm = (hrc: number, carbideVolPercent: CarbideVolPercent): number =>
    rowOf(pair({ hrc, carbideVolPercent }, {}, { outcome: 'fixed-strokes' })).families.steel * 301.8;

  test.each<[number, CarbideVolPercent, number]>([
    // thomas-2018-card: −157 + 15.8·60 − 534 + 11.2·4.
    [60, { CrC: 4 }, 301.8],
    // Bent below 200 mm: 200·exp((99 − 200)/200) (assumed).
    [50, {}, 120.7],
    // Beyond 50–66 HRC by (HV/HV at the end)^1.2 (assumed), 513 and 446 HV at 50 and 45 by ASTM E140 table 1.
    [49.9, {}, 120.29],
    [45, {}, 102.07],
    [66, { MC: 9 }, 587.6],
    [68, { MC: 9 }, 643.5],
  ])('%f HRC with %j cuts %f mm', (hrc, volumes, expected) => {
    expect(Math.abs(mm(hrc, volumes) / expected - 1)).toBeLessThan(1e-4);
    expect(Math.abs(card(hrc, volumes as Record<string, number>) / expected - 1)).toBeLessThan(1e-4);
  });

  test('49.9 and 50 HRC side by side: nothing jumps where the line ends', () => {
    expect(mm(49.9, {}) / mm(50, {})).toBeCloseTo(120.29 / 120.7, 4);
    for (const end of [50, 66])
      for (const carbideVolPercent of [{}, { MC: 9 }])
        for (const outcome of ['end-point', 'fixed-strokes'] as const) {
          const steel = (hrc: number): number =>
            Math.log(rowOf(pair({ hrc, carbideVolPercent }, {}, { outcome })).families.steel);
          expect(Math.abs(steel(end + 1e-7) - steel(end - 1e-7))).toBeLessThan(1e-6);
        }
  });

  test('it bends at 200 mm with one slope, and never reaches nothing', () => {
    // At 56 HRC: −157 + 884.8 − 534 + 11.2·V = 200 at V = 0.5536; the slope is 11.2/200 a volume per cent from both sides.
    const lnMm = (crc: number): number => Math.log(mm(56, { CrC: crc }));
    const [at, h] = [(200 - 193.8) / 11.2, 1e-5];
    expect(Math.exp(lnMm(at))).toBeCloseTo(200, 6);
    expect((lnMm(at) - lnMm(at - h)) / h).toBeCloseTo(11.2 / 200, 5);
    expect((lnMm(at + h) - lnMm(at)) / h).toBeCloseTo(11.2 / 200, 5);
    for (const hrc of [20, 30, 40, 50]) expect(mm(hrc, {})).toBeGreaterThan(10);
  });

  test('a life is card to the power 1.5, and 250 against 500 mm would be 4.45 by the law of card per stroke', () => {
    const steel = (outcome: Comparison['outcome']): number =>
      rowOf(pair({ hrc: 62 }, {}, outcome === undefined ? {} : { outcome })).families.steel;
    expect(steel('end-point')).toBeCloseTo(steel('fixed-strokes') ** 1.5, 12);
    // An end point is what is meant where nothing is said.
    expect(steel(undefined)).toBe(steel('end-point'));
    // X²/(2700 − X), both starting alike at 45 mm (derived): an upper view, 2.15 as a power of two.
    const upper = 500 ** 2 / 2200 / (250 ** 2 / 2450);
    expect(upper).toBeCloseTo(4.45, 2);
    expect(model.lifeRatioFromCardMm({ mm: 500, baselineMm: 250 })).toBeCloseTo(upper, 9);
    expect(Math.log2(upper)).toBeGreaterThan(2.1);
    expect(Math.log2(upper)).toBeLessThan(2.4);
  });
});

describe('what the article of 26 November 2018 reports of the edge', () => {
  test('23 µm at 20° included is 750 µm² of section, 17 µm at 50° is 155', () => {
    // thomas-2018-card; b²/(4 tan θ), θ half the included angle.
    expect(Math.round(model.wearAreaUm2({ flatUm: 23, angleDeg: 10 }) / 10) * 10).toBe(750);
    expect(Math.round(model.wearAreaUm2({ flatUm: 17, angleDeg: 25 }))).toBe(155);
  });
});

describe('the angle', () => {
  test('E below 0.8262 is refused, and at 0.8262 the apex tells nothing', () => {
    expect(model.apexExponent(0.8262)).toBeCloseTo(0, 4);
    for (const angleExponent of [0.8261, 0.5, 0, -1])
      expect(() => rowOf(pair({}, {}, { assumptions: { angleExponent } }))).toThrow(
        `local exponent of the angle in all at 15° ${angleExponent} is not between 0.8262 and 4`,
      );
    expect(() => rowOf(pair({}, {}, { assumptions: { angleExponent: 0.8262 } }))).not.toThrow();
    // e = (E − 0.8262)/0.9770.
    for (const total of [1, 1.3, 2.4])
      expect(model.apexExponent(total)).toBeCloseTo((total - 0.8262) / 0.977, 3);
  });

  test('to a limit E is not used: the apex counts as steel to wear away', () => {
    const at = (angleExponent: number) =>
      rowOf(pair({ angleDeg: 12 }, {}, { assumptions: { angleExponent } }));
    expect(at(1).toLimit).toBe(at(2.4).toLimit);
    expect(at(1).multiplied).toBeLessThan(at(2.4).multiplied);
    // A microbevel alone leaves the wedging: what is left is cot θ at the apex (b²/(4 tan θ) of steel).
    const micro = rowOf(pair({ microbevelAngleDeg: 30 }));
    expect(micro.toLimit).toBeCloseTo(Math.tan((20 * Math.PI) / 180) / Math.tan((30 * Math.PI) / 180), 12);
  });
});

describe('a thicker edge', () => {
  const rope = { slicePush: 3 };
  const thicknesses = Array.from({ length: 2600 }, (_, i) => 0.4 + i / 1000);
  const curve = (structure: 'multiplied' | 'added' | 'toLimit', more: Partial<Comparison> = {}): number[] =>
    model
      .ratioCurve(pair({}, {}, { ...rope, ...more }), {
        knife: 'a',
        against: 'b',
        attribute: 'edgeMm',
        values: thicknesses,
        structure,
      })
      .map((ratio) => ratio ?? NaN);

  test('turns better at 1.72 mm under 3 mm over 14 mm, where all factors multiply', () => {
    const ratios = curve('multiplied');
    expect(thicknesses[ratios.indexOf(Math.min(...ratios))]).toBeCloseTo(1.72, 2);
    // By hand: d/dt of 0.5 ln t + ln tan(α + φ) is 0, tan α = (3 − t)/28, φ the friction left at ξ 3.
    const slope = (t: number): number => {
      const ln = (x: number): number => {
        const alpha = Math.atan((3 - x) / 28);
        return (
          0.5 * Math.log(x) + Math.log(Math.tan(alpha + Math.atan(0.25 / Math.hypot(1, 3 * Math.cos(alpha)))))
        );
      };
      return (ln(t + 1e-6) - ln(t - 1e-6)) / 2e-6;
    };
    expect(slope(1.71)).toBeGreaterThan(0);
    expect(slope(1.73)).toBeLessThan(0);
  });

  test('turns in no other structure at the middle settings, and in them too where thickness counts for little', () => {
    const turns = (ratios: readonly number[]): boolean =>
      ratios.some((ratio, i) => i > 0 && ratio > (ratios[i - 1] ?? NaN));
    expect(turns(curve('added'))).toBe(false);
    expect(turns(curve('toLimit'))).toBe(false);
    const little = { assumptions: { thicknessExponent: 0.2 } };
    expect(turns(curve('added', little))).toBe(true);
    expect(turns(curve('toLimit', little))).toBe(true);
  });

  test('is solved for at the root nearest today’s value, and the reader is told', () => {
    const at = (edgeMm: number) => pair({ edgeMm }, {}, rope);
    const ask = (edgeMm: number, target: number): number =>
      model.whatItTakes(at(edgeMm), { knife: 'a', against: 'b', attribute: 'edgeMm', target }).value ?? NaN;
    const now = rowOf(at(2.2)).multiplied;
    const [below, above] = [ask(0.5, now), ask(2.4, now)];
    expect(above).toBeCloseTo(2.2, 9);
    expect(below).toBeLessThan(1.72);
    expect(rowOf(at(below)).multiplied).toBeCloseTo(now, 9);
    const noted = (edgeMm: number): boolean =>
      rowOf(at(edgeMm)).notes.join().includes('so thick behind the edge');
    expect([1.6, 1.71, 1.73, 2.4].map(noted)).toEqual([false, false, true, true]);
  });
});

describe('the edges of what is taken', () => {
  test('22 ± 40 per cent of carbide is refused at its field, and more than 60 in all', () => {
    expect(() => rowOf(pair({ carbideVolPercent: { CrC: { value: 22, plusMinus: 40 } } }))).toThrow(
      'Dunlin: CrC volume -18 to 62% leaves 0% to 60% by more than a quarter of that range',
    );
    // Up to a quarter of the range outside: what is drawn there is drawn again.
    expect(() => rowOf(pair({ carbideVolPercent: { CrC: { value: 22, plusMinus: 37 } } }))).not.toThrow();
    expect(() => rowOf(pair({ carbideVolPercent: { CrC: 40, MC: 20.5 } }))).toThrow(
      'Dunlin: carbide volume of all kinds together 60.5% is not between 0% and 60%',
    );
    expect(() => rowOf(pair({ carbideVolPercent: { CrC: 40, MC: 20 } }))).not.toThrow();
  });

  test('thickness 0 and a microbevel below the bevel are refused', () => {
    expect(() => rowOf(pair({ edgeMm: 0 }))).toThrow('thickness behind the edge 0 mm is not between');
    expect(() => rowOf(pair({ microbevelAngleDeg: 19 }))).toThrow("is not between the bevel's 20° and 45°");
  });

  test('a grind flatter than 0.5° counts as 0.5° in both readings, and is noted', () => {
    const parallel = { edgeMm: 0.4, grind: { form: 'flat', spineMm: 0.4, heightMm: 14 } } as const;
    // tan 0.5° = (T − t)/2H: T − t = 0.24435 mm over 14 mm.
    const barely = { edgeMm: 0.4, grind: { form: 'flat', spineMm: 0.64435, heightMm: 14 } } as const;
    for (const reading of ['quick', 'careful'] as const) {
      const [row] = model.compare(pair(parallel, barely), { reading }).rows;
      expect(row?.terms.find(({ id }) => id === 'grind')?.factor).toBeCloseTo(1, 4);
      expect(row?.notes.join()).toContain('is flatter than 0.5° a side');
    }
  });

  test('where wedging alone is nearly the end point, from 0.95 of the force on, the reader is told', () => {
    const plain = (edge: number): PlainKnife => ({
      angle: 20,
      edge,
      um: 15,
      form: 'flat',
      spine: 3,
      height: 14,
      hrc: 60,
      carbide: { CrC: 4 },
    });
    const share = 0.8;
    const told = (edgeMm: number): boolean =>
      rowOf(pair({ edgeMm }, {}, { assumptions: { wedgingShare: share } }))
        .notes.join()
        .includes('wedging alone is nearly the end point');
    const edges = Array.from({ length: 26 }, (_, i) => 0.4 + i / 10);
    const expected = edges.map((edge) => share * wedging(plain(edge), middleWork) >= 0.95);
    expect(edges.map(told)).toEqual(expected);
    expect(new Set(expected)).toEqual(new Set([true, false]));
    expect(width(0.95)).toBeCloseTo(0.164, 3);
  });
});

describe('how the structures are held', () => {
  const bands = (structureWeights: [number, number, number]) =>
    model.predict({ ...loft, assumptions: { structureWeights } }, { samples: 20_000, seed: 4 })[1];

  test('equal thirds are a choice: all the weight on one gives that one alone', () => {
    const even = model.predict(loft, { samples: 20_000, seed: 4 })[1];
    expect(bands([5, 5, 5])).toEqual(even);
    model.structures.forEach((structure, place) => {
      const weights: [number, number, number] = [0, 0, 0];
      weights[place] = 1;
      const alone = bands(weights);
      expect(alone?.variance).not.toHaveProperty('structure');
      expect(alone?.median).toBe(alone?.byStructure[structure].median);
      // A third of the samples is as good a sample of it.
      expect(
        Math.abs(Math.log((alone?.median ?? NaN) / (even?.byStructure[structure].median ?? NaN))),
      ).toBeLessThan(0.03);
    });
  });
});
