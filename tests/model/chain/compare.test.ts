import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carryRivalShares, compare, compareBoth, makeEqual } from '../../../src/model/index.ts';
import type { Knife, Comparison, Reading, Row } from '../../../src/model/index.ts';

const knife = (id: string): fc.Arbitrary<Knife> =>
  fc.record({
    id: fc.constant(id),
    angleDeg: fc.double({ min: 8, max: 30, noNaN: true }),
    edgeMm: fc.double({ min: 0.1, max: 1, noNaN: true }),
    finish: fc.record({ um: fc.double({ min: 1, max: 200, noNaN: true }) }),
    grind: fc.record({
      form: fc.constant('flat' as const),
      spineMm: fc.double({ min: 2, max: 5, noNaN: true }),
      heightMm: fc.double({ min: 8, max: 40, noNaN: true }),
    }),
    hrc: fc.double({ min: 54, max: 66, noNaN: true }),
    carbideVolPercent: fc.record({ CrC: fc.double({ min: 0, max: 18, noNaN: true }) }),
  });
const readings: Reading[] = ['quick', 'careful'];
const row = (comparison: Comparison, id: string, reading: Reading): Row => {
  const found = compare(comparison, { reading }).rows.find((candidate) => candidate.knife === id);
  if (!found) throw new Error(`no row ${id}`);
  return found;
};
const three = fc.tuple(knife('a'), knife('b'), knife('c'));

test('both readings at once are each by itself', () => {
  fc.assert(
    fc.property(three, (knives) => {
      const comparison: Comparison = { knives, baseline: 'b' };
      expect(compareBoth(comparison)).toEqual({
        quick: compare(comparison, { reading: 'quick' }).rows,
        careful: compare(comparison, { reading: 'careful' }).rows,
      });
    }),
  );
});

describe.each(readings)('the %s reading', (reading) => {
  test('identity is exactly 1, a/b · b/a = 1, a/b · b/c = a/c, the rival too', () => {
    fc.assert(
      fc.property(three, (knives) => {
        const against = (baseline: string): Comparison => ({ knives, baseline });
        const self = row(against('a'), 'a', reading);
        expect(self.terms.map(({ factor }) => factor)).toEqual(self.terms.map(() => 1));
        expect([self.product, self.rival]).toEqual([1, 1]);
        const ab = row(against('b'), 'a', reading).product;
        expect(ab * row(against('a'), 'b', reading).product).toBeCloseTo(1, 9);
        expect(
          (ab * row(against('c'), 'b', reading).product) / row(against('c'), 'a', reading).product,
        ).toBeCloseTo(1, 9);
        // The rival's shares were stated for baseline c; carried over to b they must tell the same ratios.
        if (reading === 'careful') {
          const fromB = row(carryRivalShares(against('c'), 'b'), 'a', reading).rival;
          const fromC = row(against('c'), 'a', reading).rival / row(against('c'), 'b', reading).rival;
          const others = (r: Row) => r.rival / r.product;
          expect(Number.isFinite(others(row(against('c'), 'a', reading)))).toBe(true);
          expect(fromB / fromC).toBeCloseTo(1, 6);
        }
      }),
      { numRuns: 200 },
    );
  });

  test('shares sum to 1 or are withheld, order is free, evening up everything leaves exactly 1', () => {
    fc.assert(
      fc.property(three, (knives) => {
        const comparison: Comparison = { knives, baseline: 'b' };
        const found = row(comparison, 'a', reading);
        if (found.logShares)
          expect(Object.values(found.logShares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        else
          expect(Math.abs(Math.log(found.product))).toBeLessThan(
            0.1 * found.terms.reduce((sum, { factor }) => sum + Math.abs(Math.log(factor ?? 1)), 0) + 1e-12,
          );
        expect(row({ ...comparison, knives: [...knives].reverse() }, 'a', reading)).toEqual(found);
        expect(row(makeEqual(comparison, 'a', ['geometry', 'finish', 'steel']), 'a', reading).product).toBe(
          1,
        );
      }),
      { numRuns: 200 },
    );
  });

  test('a lower angle, a thinner edge, a coarser finish, a harder or richer steel is never worse', () => {
    fc.assert(
      fc.property(knife('a'), knife('b'), (a, b) => {
        const product = (change: Partial<Knife>) =>
          row({ knives: [{ ...a, ...change }, b], baseline: 'b' }, 'a', reading).product;
        const now = product({});
        const least = now * (1 - 1e-12);
        expect(product({ angleDeg: (a.angleDeg as number) * 0.9 })).toBeGreaterThanOrEqual(least);
        expect(
          product({ finish: { um: ('um' in a.finish ? (a.finish.um as number) : 1) * 1.2 } }),
        ).toBeGreaterThanOrEqual(least);
        expect(product({ hrc: Math.min(66, (a.hrc as number) + 1) })).toBeGreaterThanOrEqual(least);
        expect(
          product({ carbideVolPercent: { CrC: (a.carbideVolPercent.CrC as number) + 1 } }),
        ).toBeGreaterThanOrEqual(least);
      }),
      { numRuns: 200 },
    );
  });
});

const plain: Knife = {
  id: 'plain',
  name: 'Plain',
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'flat', spineMm: 3, heightMm: 15 },
  hrc: 58,
  carbideVolPercent: { Fe3C: 3 },
};

describe('what cannot be compared', () => {
  test.each<[string, Partial<Knife>, string]>([
    ['an angle of 95°', { angleDeg: 95 }, 'Plain: edge angle 95° is not between 4° and 45° per side'],
    ['an angle of 0', { angleDeg: 0 }, 'Plain: edge angle 0° is not between 4° and 45° per side'],
    ['not a number', { hrc: Number.NaN }, 'Plain: hardness NaN HRC is not a finite number'],
    [
      'an edge thicker than the spine',
      { edgeMm: 4 },
      'Plain: thickness behind the edge 4 mm is not at most the spine thickness 3 mm',
    ],
    [
      'a hollow ground through',
      { grind: { form: 'hollow', spineMm: 3, heightMm: 20, radiusMm: 15 } },
      'grinds the blade through',
    ],
    [
      'a radius below half the height',
      { grind: { form: 'convex', spineMm: 3, heightMm: 20, radiusMm: 9 } },
      'grind radius 9 mm is not at least half the grind height',
    ],
  ])('%s', (_what, change, message) => {
    expect(() => compare({ knives: [{ ...plain, ...change }], baseline: 'plain' })).toThrow(message);
  });
});
