import { describe, expect, test } from 'vitest';
import { compare } from '../../../src/model/chain/compare.ts';
import { costOf, type Offer } from '../../../src/model/solve/cost.ts';
import { exactGrind } from '../../../src/model/quantities.ts';
import type { Knife, Comparison } from '../../../src/model/types.ts';

// Invented knives of an invented harbour rigging loft.
const plover: Knife = {
  id: 'plover',
  angleDeg: 20,
  edgeMm: 0.6,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 20 },
  hrc: 58,
  carbideVolPercent: { CrC: 4 },
  toughness: 20,
};
const avocet: Knife = { ...plover, id: 'avocet', angleDeg: 14, edgeMm: 0.4 };
const loft: Comparison = { knives: [plover, avocet], baseline: 'avocet' };
const ask = (offer: Offer, costs: { minutes?: number; price?: number; removalRateMm3PerMin?: number } = {}) =>
  costOf(loft, { knife: 'plover', against: 'avocet', offer, edgeLengthMm: 100, ...costs });
const ratioOf = (changed: Partial<Knife>): number => {
  const knives = [plover, { ...plover, ...changed, id: 'then' }, avocet];
  return compare({ knives, baseline: 'plover' }).rows[1]?.multiplied ?? NaN;
};
const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** Thickness y above an apex: bevel up to the shoulder, then flanks, the lesser of the two. */
const section = (angleDeg: number, edgeMm: number, shoulderMm: number, apexMm: number) => (y: number) => {
  const { heightMm, spineMm } = exactGrind(plover.grind);
  const flank = edgeMm + (spineMm - edgeMm) * Math.max(0, (y - shoulderMm) / heightMm);
  return Math.max(0, Math.min(2 * (y - apexMm) * tan(angleDeg), flank, spineMm));
};
/** Area between two sections, by strips. */
function between(old: (y: number) => number, now: (y: number) => number): number {
  const [strips, top] = [400_000, 30];
  let sum = 0;
  for (let i = 0; i < strips; i += 1) {
    const y = ((i + 0.5) * top) / strips;
    sum += old(y) - now(y);
  }
  return (sum * top) / strips;
}

describe('steel and height, measured on the sections by strips', () => {
  const shoulder = 0.6 / (2 * tan(20));
  const old = section(20, 0.6, shoulder, 0);

  test('thinning takes a wedge off the flanks', () => {
    const { steelMm3, bladeHeightLostMm } = ask({ kind: 'regrind', edgeMm: 0.4 });
    expect(steelMm3 / 100).toBeCloseTo(between(old, section(20, 0.4, shoulder, 0)), 4);
    expect(bladeHeightLostMm).toBe(0);
  });

  test('a higher angle steps the apex back to the same shoulder', () => {
    const { steelMm3, bladeHeightLostMm } = ask({ kind: 'regrind', angleDeg: 25 });
    const apexMm = shoulder - 0.6 / (2 * tan(25));
    expect(bladeHeightLostMm).toBeCloseTo(apexMm, 12);
    expect(steelMm3 / 100).toBeCloseTo(between(old, section(25, 0.6, shoulder, apexMm)), 4);
  });

  test('a lower angle under parallel flanks', () => {
    // Triangles on one base t: t²/4·(cot 10° − cot 20°) by hand, 0.36/4·(5.671282 − 2.747477).
    expect(ask({ kind: 'regrind', angleDeg: 10 }).steelMm3).toBeCloseTo(26.3142, 4);
    expect(ask({ kind: 'regrind', angleDeg: 10 }).bladeHeightLostMm).toBe(0);
  });

  test('a finish takes a thin layer', () => {
    // 4% of 50 µm is 2 µm, off two faces of 0.6/(2 sin 20°) mm; the apex steps back 2 µm/sin 20°.
    const cost = ask({ kind: 'refinish', finish: { um: 50 } });
    expect(cost.steelMm3).toBeCloseTo((100 * 0.002 * 0.6) / 0.342020143, 8);
    expect(cost.bladeHeightLostMm).toBeCloseTo(0.002 / 0.342020143, 10);
    // Going finer, it is the present scratches that are ground out: 4% of 15 µm.
    expect(ask({ kind: 'refinish', finish: { um: 3 } }).steelMm3).toBeCloseTo(
      (100 * 0.0006 * 0.6) / 0.342020143,
      8,
    );
  });

  test('another steel takes none', () => {
    const cost = ask({ kind: 'steel', hrc: 61, carbideVolPercent: { CrC: 12 } });
    expect([cost.steelMm3, cost.bladeHeightLostMm]).toEqual([0, 0]);
  });
});

describe('what is gained', () => {
  test('is the ratio to the knife as it is, and moves the ratio to the other', () => {
    for (const [offer, changed] of [
      [{ kind: 'refinish', finish: { um: 50 } }, { finish: { um: 50 } }],
      [
        { kind: 'regrind', angleDeg: 15, edgeMm: 0.5 },
        { angleDeg: 15, edgeMm: 0.5 },
      ],
      [
        { kind: 'steel', hrc: 61, carbideVolPercent: { CrC: 12 } },
        { hrc: 61, carbideVolPercent: { CrC: 12 } },
      ],
      [
        { kind: 'service', finish: { um: 5 }, angleDeg: 15 },
        { finish: { um: 5 }, angleDeg: 15 },
      ],
    ] as [Offer, Partial<Knife>][]) {
      const { ratioGained, overAgainst } = ask(offer);
      expect(ratioGained).toBeCloseTo(ratioOf(changed), 12);
      expect(overAgainst.then / overAgainst.now).toBeCloseTo(ratioGained, 12);
    }
  });

  test('per minute and per unit of money, in logarithms and plainly', () => {
    const cost = ask({ kind: 'regrind', angleDeg: 10 }, { removalRateMm3PerMin: 2, price: 8 });
    expect(cost.minutes).toBeCloseTo(26.3142 / 2, 4);
    expect(cost.gainPerMinute?.log).toBeCloseTo(Math.log(cost.ratioGained) / (26.3142 / 2), 6);
    expect(cost.gainPerMoney?.plain).toBeCloseTo((cost.ratioGained - 1) / 8, 12);
    // Minutes given go before minutes derived.
    expect(ask({ kind: 'regrind', angleDeg: 10 }, { removalRateMm3PerMin: 2, minutes: 30 }).minutes).toBe(30);
  });

  test('per nothing is no number; of no gain 0; of a loss below 0', () => {
    const free = ask({ kind: 'regrind', angleDeg: 15 }, { minutes: 0, price: 0 });
    expect([free.gainPerMinute, free.gainPerMoney]).toEqual([null, null]);
    const undescribed = ask({ kind: 'regrind', angleDeg: 15 });
    expect([undescribed.minutes, undescribed.price, undescribed.gainPerMinute]).toEqual([null, null, null]);
    const same = ask({ kind: 'steel', hrc: 58, carbideVolPercent: { CrC: 4 } }, { price: 100 });
    expect(same.gainPerMoney).toEqual({ log: 0, plain: 0 });
    const worse = ask({ kind: 'regrind', angleDeg: 25 }, { minutes: 5 });
    expect(worse.gainPerMinute?.log).toBeLessThan(0);
    expect(worse.gainPerMinute?.plain).toBeLessThan(0);
  });

  test('nobody grinds for a service or a new knife in the user’s own minutes', () => {
    const service = ask({ kind: 'service', angleDeg: 15 }, { removalRateMm3PerMin: 2 });
    expect(service.steelMm3).toBeGreaterThan(0);
    expect(service.minutes).toBeNull();
    expect(ask({ kind: 'service', angleDeg: 15 }, { minutes: 20 }).minutes).toBe(20);
  });
});

describe('what is given up', () => {
  test('side load to rolling and chipping, as ratios to now', () => {
    // HV and K by tan² to tan, by hand.
    const { rolling, chipping } = ask({ kind: 'regrind', angleDeg: 10 });
    const tangents = tan(10) / tan(20);
    const range = { low: expect.closeTo(tangents ** 2, 12), high: expect.closeTo(tangents, 12) };
    expect(rolling).toEqual(range);
    expect(chipping).toEqual(range);
    const steel = ask({ kind: 'steel', hrc: 60, carbideVolPercent: {}, toughness: 10 });
    // ASTM E140: 653 and 697 HV at 58 and 60 HRC.
    for (const end of ['low', 'high'] as const) {
      expect(steel.rolling[end]).toBeCloseTo(697 / 653, 2);
      expect(steel.chipping?.[end]).toBeCloseTo(0.5, 12);
    }
  });

  test('of another steel nothing is known of chipping unless told', () => {
    expect(ask({ kind: 'steel', hrc: 60, carbideVolPercent: {} }).chipping).toBeNull();
  });

  test('an edge below its floor is told', () => {
    // The lower end of tan 5°·(697/653)^k, k ½ to 1, is 5.16° (5° at 60 HRC common practice, no source).
    expect(ask({ kind: 'regrind', angleDeg: 5.1 }).belowFloor).toBe(true);
    expect(ask({ kind: 'regrind', angleDeg: 5.3 }).belowFloor).toBe(false);
  });
});

describe('nonsense is refused', () => {
  const regrind: Offer = { kind: 'regrind', angleDeg: 15 };
  test.each([
    [{ minutes: -1 }, 'minutes -1 is not between 0 and'],
    [{ minutes: Number.NaN }, 'minutes NaN is not between'],
    [{ price: -5 }, 'price -5 is not between 0 and'],
    [{ removalRateMm3PerMin: 0 }, 'removal rate 0 mm³ a minute is not a number above 0'],
    [{ edgeLengthMm: 0 }, 'edge length 0 mm is not between 0.1 mm and 5000 mm'],
    [{ knife: 'heron' }, "knife heron is not one of the comparison's"],
    [{ against: 'heron' }, 'against heron is not one of'],
    [{ against: 'plover' }, 'against plover is the knife itself'],
    [{ offer: { kind: 'regrind' } }, 'offer regrind changes nothing'],
    [{ offer: { kind: 'regrind', edgeMm: 0.8 } }, '0.8 mm, is more than the present 0.6 mm'],
    [{ offer: { kind: 'regrind', angleDeg: 2 } }, '2° is not between 4° and 45° per side'],
    [{ offer: { kind: 'refinish', finish: { um: -1 } } }, '-1 µm is not'],
    [{ offer: { kind: 'polish' } as unknown as Offer }, 'offer polish is not one of refinish, regrind'],
    [{ offer: { kind: 'steel', hrc: 90, carbideVolPercent: {} } }, '90 HRC is not between 20 HRC and 68 HRC'],
  ] as [Partial<Parameters<typeof costOf>[1]>, string][])('%o', (change, message) => {
    const question = { knife: 'plover', against: 'avocet', offer: regrind, edgeLengthMm: 100, ...change };
    expect(() => costOf(loft, question)).toThrow(RangeError);
    expect(() => costOf(loft, question)).toThrow(message);
  });
});
