import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';
import type { Comparison, Row, TermId } from '../../src/model/index.ts';
import { loft } from '../model/loft.ts';
import { random, randomPair } from './random-knives.ts';
import {
  card,
  drivingForce,
  middleWork,
  sevenFactors,
  threeTotals,
  wedging,
  width,
  type PlainKnife,
} from './by-hand.ts';

/*
 * The loft of model 3. Its figures were computed twice, here in plain arithmetic and before that by another hand without
 * this code; both agree on every digit that stands below.
 */
const plover: PlainKnife = {
  angle: 24,
  edge: 0.6,
  // P1200 and P220 by ISO 6344.
  um: 15.3,
  form: 'flat',
  spine: 3,
  height: 14,
  hrc: 57,
  carbide: { CrC: 4 },
};
const dunlin: PlainKnife = {
  angle: 14,
  edge: 0.25,
  um: 68,
  form: 'hollow',
  spine: 2.6,
  height: 18,
  radius: 150,
  hrc: 61,
  carbide: { CrC: 13 },
};
const rope = { ...middleWork, slicePush: 3 };

const dunlinRow = (change: Partial<Comparison> = {}, reading: 'quick' | 'careful' = 'careful'): Row => {
  const row = model.compare({ ...loft, ...change }, { reading }).rows.find(({ knife }) => knife === 'dunlin');
  if (!row) throw new Error('no row');
  return row;
};
const factorsOf = (row: Row) =>
  Object.fromEntries(row.terms.map(({ id, factor }) => [id, factor])) as Record<TermId, number>;
const totalsOf = ({ multiplied, added, toLimit }: Row) => ({ multiplied, added, toLimit });

describe('the loft at the middle settings', () => {
  test.each<[TermId, number]>([
    ['wedge', 1.636],
    ['apex', 1.287],
    ['thickness', 1.549],
    ['grind', 1.493],
    ['finish', 1.564],
    ['hardness', 1.335],
    ['carbide', 1.579],
  ])('%s makes ×%f', (id, factor) => {
    expect(factorsOf(dunlinRow())[id]).toBeCloseTo(factor, 3);
    expect(sevenFactors(dunlin, plover, rope)[id]).toBeCloseTo(factor, 3);
  });

  test('wedging over the ordinary blade’s: 0.721 and 1.126', () => {
    expect(wedging(dunlin, rope)).toBeCloseTo(0.721, 3);
    expect(wedging(plover, rope)).toBeCloseTo(1.126, 3);
    // The same two are what stands between the multiplied and the added total.
    const row = dunlinRow();
    const { wedge, thickness, grind } = factorsOf(row);
    expect(row.added / row.multiplied).toBeCloseTo(1.126094 / 0.720975 / (wedge * thickness * grind), 6);
  });

  test('to the same end point: ×16.06 multiplied, ×6.63 added, ×8.077 to a limit', () => {
    const found = totalsOf(dunlinRow());
    expect(found.multiplied).toBeCloseTo(16.06, 2);
    expect(found.added).toBeCloseTo(6.63, 2);
    expect(found.toLimit).toBeCloseTo(8.077, 3);
  });

  test('in a fixed number of strokes: ×12.53, ×5.17, ×6.298', () => {
    const found = totalsOf(dunlinRow({ outcome: 'fixed-strokes' }));
    expect(found.multiplied).toBeCloseTo(12.53, 2);
    expect(found.added).toBeCloseTo(5.17, 2);
    expect(found.toLimit).toBeCloseTo(6.298, 3);
    const steel = dunlinRow({ outcome: 'fixed-strokes' }).families.steel;
    expect(steel).toBeCloseTo(1.64, 2);
    // Card against card, nothing raised to a power: −157 + 15.8·61 − 534 + 11.2·13 over … 57 and 4 (thomas-2018-card).
    expect(steel).toBeCloseTo(418.4 / 254.4, 10);
  });

  test.each([
    [0, 2.297],
    [0.1, 2.205],
    [0.25, 2.105],
    [0.4, 2.0355],
    [0.8, 1.936],
  ])(
    'the angle alone at friction %f makes ×%f: friction blunts what an angle is worth',
    (friction, factor) => {
      const { wedge, apex } = factorsOf(dunlinRow({ friction }));
      expect(wedge * apex).toBeCloseTo(factor, 3);
    },
  );

  test('the quick sum is ×56', () => {
    const row = dunlinRow({}, 'quick');
    expect(Math.round(row.multiplied)).toBe(56);
    expect([row.added, row.toLimit]).toEqual([row.multiplied, row.multiplied]);
    // In the head: angle twice, thickness, the grind's tenth a halving, grains, hardness squared, carbide by twenties.
    const grind = 1.1 ** Math.log2(grindAngle(plover) / grindAngle(dunlin));
    expect(row.multiplied).toBeCloseTo(
      (24 / 14) ** 2 * (0.6 / 0.25) * grind * (68 / 15.3) * (61 / 57) ** 2 * 2 ** (9 / 20),
      6,
    );
  });

  test('geometry, steel and finish in the same outcome, under all three', () => {
    const { families, added, toLimit } = dunlinRow();
    expect(families.geometry).toBeCloseTo(4.87, 2);
    expect(families.steel).toBeCloseTo(2.11, 2);
    expect(families.finish).toBeCloseTo(1.56, 2);
    // Finish and steel multiply in every structure; what is left is geometry's.
    const others = families.steel * families.finish;
    expect(added / others).toBeCloseTo(2.01, 2);
    expect(toLimit / others).toBeCloseTo(2.45, 2);
    // Added turns geometry under steel at the end point.
    expect(added / others).toBeLessThan(families.steel);
    for (const geometry of [families.geometry, added / others, toLimit / others])
      expect(Math.log(geometry * families.finish)).toBeGreaterThan(Math.log(families.steel));
  });

  test('side load to bend the apex: 0.36 to 0.64', () => {
    const { rolling, chipping } = dunlinRow().sideLoad;
    // HV·tan θ and HV·tan² θ, 720 and 633 HV by ASTM E140 table 1 (statics).
    const tangents = Math.tan((14 * Math.PI) / 180) / Math.tan((24 * Math.PI) / 180);
    expect(rolling.low).toBeCloseTo((720 / 633) * tangents ** 2, 3);
    expect(rolling.high).toBeCloseTo((720 / 633) * tangents, 2);
    expect([rolling.low, rolling.high].map((value) => Number(value.toFixed(2)))).toEqual([0.36, 0.64]);
    expect(chipping).toBeNull();
  });
});

const grindAngle = ({ spine, edge, height, radius }: PlainKnife): number => {
  // 8 mm above the shoulder; the hollow lies inside its chord by its sagitta there.
  const half = height / 2;
  const sag =
    radius === undefined ? 0 : Math.sqrt(radius ** 2 - (8 - half) ** 2) - Math.sqrt(radius ** 2 - half ** 2);
  return Math.atan((((spine - edge) * 8) / height - 2 * sag) / 16);
};

describe('the loft with its own ±', () => {
  const prediction = model.predict(loft, { samples: 100_000, seed: 1 })[1];

  // Sampled by another hand too: the ends are as near as two samplings come.
  test('about ten times, five to thirty', () => {
    expect(prediction?.low).toBeGreaterThan(4.4);
    expect(prediction?.low).toBeLessThan(4.8);
    expect(prediction?.median).toBeGreaterThan(10.0);
    expect(prediction?.median).toBeLessThan(10.8);
    expect(prediction?.high).toBeGreaterThan(30);
    expect(prediction?.high).toBeLessThan(33);
  });

  test('the middles of the structures are near 19, 8 and 8', () => {
    const { multiplied, added, toLimit } = prediction?.byStructure ?? {};
    expect(Math.abs((multiplied?.median ?? NaN) - 19.5)).toBeLessThan(0.5);
    expect(Math.abs((added?.median ?? NaN) - 7.7)).toBeLessThan(0.3);
    expect(Math.abs((toLimit?.median ?? NaN) - 8.4)).toBeLessThan(0.3);
  });

  test('about half the doubt is how the factors combine', () => {
    expect(prediction?.variance['structure']).toBeGreaterThan(0.45);
    expect(prediction?.variance['structure']).toBeLessThan(0.54);
  });
});

describe('any two knives, by own calculation', () => {
  const uniform = random(3);
  const cases = Array.from({ length: 1000 }, () => randomPair(uniform));

  test('the three totals and the seven factors are those of plain arithmetic', () => {
    for (const { comparison, a, b, work } of cases) {
      const [row] = model.compare(comparison).rows;
      const what = JSON.stringify(comparison);
      const totals = threeTotals(a, b, work);
      for (const structure of model.structures)
        expect(Math.log(row?.[structure] ?? NaN) - Math.log(totals[structure]), what).toBeCloseTo(0, 8);
      for (const [id, factor] of Object.entries(sevenFactors(a, b, work)))
        expect(
          Math.log(row?.terms.find((term) => term.id === id)?.factor ?? NaN) - Math.log(factor),
          what,
        ).toBeCloseTo(0, 8);
    }
  });

  test('and reach every part of the law: bent and straight card, both parts of the width, all forms', () => {
    const shares = cases.flatMap(({ a, b, work }) =>
      [a, b].map((knife) => work.wedgingShare * wedging(knife, work)),
    );
    const knives = cases.flatMap(({ a, b }) => [a, b]);
    const among = (...found: boolean[]) => found.filter(Boolean).length;
    expect(among(...shares.map((x) => x > 0.7))).toBeGreaterThan(50);
    expect(among(...shares.map((x) => x < 0.7))).toBeGreaterThan(50);
    for (const form of ['flat', 'hollow', 'convex'])
      expect(among(...knives.map((knife) => knife.form === form))).toBeGreaterThan(200);
    expect(among(...knives.map(({ hrc, carbide }) => card(hrc, carbide) < 200))).toBeGreaterThan(50);
    expect(among(...knives.map(({ hrc }) => hrc < 50))).toBeGreaterThan(50);
    expect(among(...knives.map(({ hrc }) => hrc > 66))).toBeGreaterThan(10);
    expect(among(...knives.map(({ microbevel }) => microbevel !== undefined))).toBeGreaterThan(200);
  });
});

describe('the width the blunt edge may grow to', () => {
  /** The model's own, read off how a life falls with s where nothing else changes. */
  const room = (share: number, edgeMm: number): number => {
    const blade = {
      angleDeg: 20,
      edgeMm,
      finish: { um: 15 },
      grind: { form: 'flat', spineMm: 3, heightMm: 14 },
      hrc: 58,
      carbideVolPercent: {},
    } as const;
    // A knife at s against itself needs two knives alike but in R: thickness alone.
    const thin = { ...blade, id: 'thin', edgeMm: 0.4 };
    const { rows } = model.compare({
      knives: [{ ...blade, id: 'thick' }, thin],
      baseline: 'thin',
      slicePush: 3,
      assumptions: { wedgingShare: share, limitPower: 1 },
    });
    return rows[0]?.toLimit ?? NaN;
  };

  test('has one value and one slope at 0.7, where its two parts meet', () => {
    // By hand: 1 − 0.7 = 0.09/(0.7 − 0.4) = 0.3, and −1 = −0.09/(0.7 − 0.4)².
    expect(width(0.7)).toBeCloseTo(0.3, 12);
    expect(0.09 / (0.7 - 0.4)).toBeCloseTo(0.3, 12);
    expect(-0.09 / (0.7 - 0.4) ** 2).toBeCloseTo(-1, 12);
    // The knife of thickness 0.4 is the ordinary blade, R = 1; the other's R is met where s·R = 0.7.
    const work = { ...middleWork, slicePush: 3 };
    const thick: PlainKnife = { ...plover, angle: 20, edge: 0.9, form: 'flat', spine: 3, height: 14 };
    const meeting = 0.7 / wedging(thick, work);
    const h = 1e-5;
    const lnWidth = (share: number): number => Math.log(room(share, 0.9) * width(share));
    expect(lnWidth(meeting)).toBeCloseTo(Math.log(0.3), 9);
    const before = (lnWidth(meeting) - lnWidth(meeting - h)) / h;
    const after = (lnWidth(meeting + h) - lnWidth(meeting)) / h;
    // d ln u/ds = −R/0.3 from both sides.
    const slope = -wedging(thick, work) / 0.3;
    expect(before / slope).toBeCloseTo(1, 3);
    expect(after / slope).toBeCloseTo(1, 3);
  });

  test('a driving force is the friction angle away from its tangent', () => {
    // Friction opposes the resultant: at ξ 3 and 15°, µ 0.25 is 0.08169 (by hand).
    expect(Math.tan(Math.atan(drivingForce(15, rope)) - (15 * Math.PI) / 180)).toBeCloseTo(0.0816, 4);
  });
});
