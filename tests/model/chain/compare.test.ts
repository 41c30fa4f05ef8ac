import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compare, compareBoth, makeEqual, structures } from '../../../src/model/index.ts';
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
  test('of a knife against itself every factor and every total is exactly 1', () => {
    fc.assert(
      fc.property(three, (knives) => {
        const self = row({ knives, baseline: 'a' }, 'a', reading);
        expect(self.terms.map(({ factor }) => factor)).toEqual(self.terms.map(() => 1));
        expect([self.multiplied, self.added, self.toLimit]).toEqual([1, 1, 1]);
        expect(self.families).toEqual({ geometry: 1, finish: 1, steel: 1 });
      }),
      { numRuns: 200 },
    );
  });

  test('every total agrees there and back and through a third knife, whichever is the baseline', () => {
    fc.assert(
      fc.property(three, (knives) => {
        const ln = (a: string, b: string, of: (typeof structures)[number]): number =>
          Math.log(row({ knives, baseline: b }, a, reading)[of]);
        for (const of of structures) {
          expect(Math.abs(ln('a', 'b', of) + ln('b', 'a', of))).toBeLessThan(1e-12);
          expect(Math.abs(ln('a', 'b', of) + ln('b', 'c', of) - ln('a', 'c', of))).toBeLessThan(1e-12);
        }
      }),
      { numRuns: 100 },
    );
  });

  test('what the other knives are moves no ratio', () => {
    fc.assert(
      fc.property(three, (knives) => {
        const two = knives.filter(({ id }) => id !== 'c');
        expect(row({ knives: two, baseline: 'b' }, 'a', reading)).toEqual(
          row({ knives, baseline: 'b' }, 'a', reading),
        );
      }),
      { numRuns: 100 },
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
          expect(Math.abs(Math.log(found.multiplied))).toBeLessThan(
            0.1 * found.terms.reduce((sum, { factor }) => sum + Math.abs(Math.log(factor)), 0) + 1e-12,
          );
        expect(row({ ...comparison, knives: [...knives].reverse() }, 'a', reading)).toEqual(found);
        const equalised = row(makeEqual(comparison, 'a', ['geometry', 'finish', 'steel']), 'a', reading);
        expect(structures.map((of) => equalised[of])).toEqual([1, 1, 1]);
      }),
      { numRuns: 200 },
    );
  });
});

test('the three totals are of the seven factors: all multiplied, and the same by the quick sum', () => {
  fc.assert(
    fc.property(three, (knives) => {
      const comparison: Comparison = { knives, baseline: 'b' };
      const product = ({ terms }: Row): number => terms.reduce((all, { factor }) => all * factor, 1);
      const [quick, careful] = readings.map((reading) => row(comparison, 'a', reading));
      if (!quick || !careful) throw new Error('no row');
      expect(Math.abs(Math.log(careful.multiplied / product(careful)))).toBeLessThan(1e-12);
      expect([quick.multiplied, quick.added, quick.toLimit]).toEqual(Array(3).fill(product(quick)));
    }),
    { numRuns: 100 },
  );
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
      'a share of carbide there is no room for',
      { carbideVolPercent: { CrC: 30, MC: 31 } },
      'Plain: carbide volume of all kinds together 61% is not between 0% and 60%',
    ],
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

  test('an outcome there is none of', () => {
    const outcome = 'so far' as 'end-point';
    expect(() => compare({ knives: [plain], baseline: 'plain', outcome })).toThrow(
      'outcome so far is not one of end-point, fixed-strokes',
    );
  });
});
