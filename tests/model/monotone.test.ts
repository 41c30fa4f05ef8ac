import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compare } from '../../src/model/index.ts';
import type { Knife, Reading } from '../../src/model/index.ts';

/** Thickness to 1 mm and grinds of 8 mm or more: see the last test for why a thinner edge needs that. */
const knife = fc.record({
  angleDeg: fc.double({ min: 4, max: 44, noNaN: true }),
  edgeMm: fc.double({ min: 0.05, max: 1, noNaN: true }),
  um: fc.double({ min: 0.5, max: 300, noNaN: true }),
  spineMm: fc.double({ min: 2, max: 6, noNaN: true }),
  heightMm: fc.double({ min: 8, max: 40, noNaN: true }),
  hrc: fc.double({ min: 50, max: 65, noNaN: true }),
  crc: fc.double({ min: 6, max: 20, noNaN: true }),
});
type Values = typeof knife extends fc.Arbitrary<infer T> ? T : never;
const made = (id: string, v: Values, microbevelAngleDeg?: number): Knife => ({
  id,
  angleDeg: v.angleDeg,
  ...(microbevelAngleDeg === undefined ? {} : { microbevelAngleDeg }),
  edgeMm: v.edgeMm,
  finish: { um: v.um },
  grind: { form: 'flat', spineMm: v.spineMm, heightMm: v.heightMm },
  hrc: v.hrc,
  carbideVolPercent: { CrC: v.crc },
});
const row = (a: Knife, b: Knife, reading: Reading) => {
  const found = compare({ knives: [a, b], baseline: b.id }, { reading }).rows[0];
  if (!found) throw new Error('no row');
  return found;
};

describe.each<Reading>(['quick', 'careful'])('the %s reading', (reading) => {
  test.each<[string, (v: Values) => Values]>([
    ['a lower angle', (v) => ({ ...v, angleDeg: 4 + (v.angleDeg - 4) * 0.8 })],
    ['a thinner edge', (v) => ({ ...v, edgeMm: v.edgeMm * 0.8 })],
    ['a coarser finish', (v) => ({ ...v, um: v.um * 1.3 })],
    ['a higher grind', (v) => ({ ...v, heightMm: v.heightMm * 1.2 })],
    ['a thinner blade', (v) => ({ ...v, spineMm: 1.5 + (v.spineMm - 1.5) * 0.9 })],
    ['more hardness', (v) => ({ ...v, hrc: v.hrc + 1 })],
    ['more carbide', (v) => ({ ...v, crc: v.crc + 1 })],
  ])('%s never cuts shorter, and somewhere longer', (_what, better) => {
    let longer = 0;
    fc.assert(
      fc.property(knife, knife, (a, b) => {
        const [before, after] = [a, better(a)].map(
          (v) => row(made('a', v), made('b', b), reading).multiplied,
        );
        expect(after).toBeGreaterThanOrEqual((before ?? Number.NaN) * (1 - 1e-12));
        if ((after ?? 0) > (before ?? 0) * (1 + 1e-9)) longer += 1;
      }),
      { numRuns: 150 },
    );
    expect(longer).toBeGreaterThan(100);
  });

  test('a steeper microbevel never cuts longer, and always stands more side load', () => {
    fc.assert(
      fc.property(knife, knife, fc.double({ min: 0.01, max: 1, noNaN: true }), (a, b, part) => {
        const plain = row(made('a', a), made('b', b), reading);
        const steeper = row(made('a', a, a.angleDeg + part * (45 - a.angleDeg)), made('b', b), reading);
        expect(steeper.multiplied).toBeLessThanOrEqual(plain.multiplied * (1 + 1e-12));
        for (const end of ['low', 'high'] as const)
          expect(steeper.sideLoad.rolling[end]).toBeGreaterThanOrEqual(plain.sideLoad.rolling[end]);
      }),
      { numRuns: 150 },
    );
  });

  test('every number is finite and above 0', () => {
    fc.assert(
      fc.property(knife, knife, (a, b) => {
        const { terms, multiplied, added, toLimit, sideLoad } = row(made('a', a), made('b', b), reading);
        const { low: least, high: most } = sideLoad.rolling;
        const factors = terms.map(({ factor }) => factor);
        expect(least).toBeLessThanOrEqual(most);
        for (const value of [multiplied, added, toLimit, least, most, ...factors]) {
          expect(Number.isFinite(value)).toBe(true);
          expect(value).toBeGreaterThan(0);
        }
        for (const { low, factor, high } of terms) {
          expect(low).toBeLessThanOrEqual(factor);
          expect(high).toBeGreaterThanOrEqual(factor);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('a thinner edge alone is better by its own factor and worse by the grind behind it', () => {
    // Under one spine a thinner edge leaves the grind a wider wedge: the two factors pull against each other.
    const thick: Values = { angleDeg: 20, edgeMm: 1.5, um: 35, spineMm: 2, heightMm: 8, hrc: 58, crc: 8 };
    const { terms } = row(made('a', { ...thick, edgeMm: 0.5 }), made('b', thick), reading);
    const factor = (id: string) => terms.find((term) => term.id === id)?.factor ?? Number.NaN;
    expect(factor('thickness')).toBeGreaterThan(1);
    expect(factor('grind')).toBeLessThan(1);
  });
});
