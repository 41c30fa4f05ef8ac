import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitPower } from '../../../src/model/runs/fit.ts';

/** Residual sum of squares of y = a·x^b. */
const rssOf = (x: readonly number[], y: readonly number[], a: number, b: number): number =>
  x.reduce((sum, v, i) => sum + ((y[i] ?? NaN) - a * v ** b) ** 2, 0);

/** The best a for a b is that of a straight line through 0 in x^b: so the least of all is found by looking along b. */
function leastRss(x: readonly number[], y: readonly number[]): number {
  const at = (b: number): number => {
    const shape = x.map((v) => v ** b);
    const a =
      shape.reduce((sum, s, i) => sum + s * (y[i] ?? NaN), 0) / shape.reduce((sum, s) => sum + s * s, 0);
    return rssOf(x, y, a, b);
  };
  return Math.min(...Array.from({ length: 1001 }, (_, i) => at(-10 + i / 50)));
}

const readings = fc
  .record({
    a: fc.double({ min: 0.1, max: 50, noNaN: true }),
    b: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
    x: fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 4, maxLength: 10 }),
    off: fc.array(fc.double({ min: -0.2, max: 0.2, noNaN: true }), { minLength: 10, maxLength: 10 }),
  })
  .map(({ a, b, x, off }) => ({ x, y: x.map((v, i) => a * v ** b * (1 + (off[i] ?? 0))) }));

describe('the power law', () => {
  test('is the best of all exponents', () => {
    fc.assert(
      fc.property(readings, ({ x, y }) => {
        const { a, b, rss } = fitPower(x, y);
        const rounding = 1e-12 * y.reduce((sum, v) => sum + v * v, 0);
        expect(rss).toBeLessThanOrEqual(leastRss(x, y) + rounding);
        expect(Math.abs(rssOf(x, y, a, b) - rss)).toBeLessThanOrEqual(rounding);
      }),
      { numRuns: 60 },
    );
  });

  test.each<[string, number[], number[]]>([
    // The straight proportion it then begins with has a slope of exactly 0: 1·2 + 2·1 − 4·1.
    ['readings that cancel about the line begun with', [1, 2, 4], [2, 1, -1]],
    ['readings below 0', [1, 2, 4], [-1, -2, -4.1]],
    ['a reading of 0', [1, 2, 3, 4], [0, 0, 1, 5]],
    ['readings that fall below 0', [1, 2, 3, 5], [5, 2, -0.3, 0.2]],
    ['steep ones', [1, 1.01, 1.02, 1.03], [1, 1.6, 2.4, 3.8]],
  ])('is the best for %s', (_what, x, y) => {
    const { a, b, rss } = fitPower(x, y);
    expect(rss).toBeCloseTo(rssOf(x, y, a, b), 12);
    expect(rss).toBeLessThanOrEqual(leastRss(x, y) * (1 + 1e-6));
    for (const [da, db] of [
      [1e-4, 0],
      [-1e-4, 0],
      [0, 1e-4],
      [0, -1e-4],
    ] as const)
      expect(rssOf(x, y, a * (1 + da), b + db)).toBeGreaterThanOrEqual(rss);
  });

  test('has standard deviations as least squares gives them', () => {
    // s²·(JᵀJ)⁻¹ with J by differences, s² = rss/(n − 2).
    fc.assert(
      fc.property(readings, ({ x, y }) => {
        const { a, b, aSd, bSd, rss } = fitPower(x, y);
        const byA = x.map((v) => v ** b);
        const h = 1e-5;
        const byB = x.map((v) => (a * v ** (b + h) - a * v ** (b - h)) / (2 * h));
        const sum = (p: number[], q: number[]) => p.reduce((total, v, i) => total + v * (q[i] ?? NaN), 0);
        const [aa, ab, bb] = [sum(byA, byA), sum(byA, byB), sum(byB, byB)];
        const s2 = rss / (x.length - 2) / (aa * bb - ab * ab);
        fc.pre(rss > 1e-9);
        expect(aSd / Math.sqrt(s2 * bb)).toBeCloseTo(1, 5);
        expect(bSd / Math.sqrt(s2 * aa)).toBeCloseTo(1, 5);
      }),
      { numRuns: 60 },
    );
  });

  test('in other units is the same law', () => {
    const [x, y] = [
      [1, 2, 3, 5, 8, 13],
      [2.2, 2.9, 3.2, 4.6, 5.1, 7.4],
    ];
    const plain = fitPower(x, y);
    for (const [ux, uy] of [
      [1e-4, 1],
      [1, 1e6],
      [2.54, 9.81],
      [1e5, 1e-9],
    ] as const) {
      const { a, b, aSd, bSd, rss } = fitPower(
        x.map((v) => v * ux),
        y.map((v) => v * uy),
      );
      expect(b).toBeCloseTo(plain.b, 9);
      expect(bSd / plain.bSd).toBeCloseTo(1, 8);
      expect((a * ux ** b) / uy / plain.a).toBeCloseTo(1, 8);
      expect(rss / uy ** 2 / plain.rss).toBeCloseTo(1, 8);
      // How well a is known depends on where x = 1 lies: at the same place as before the two agree.
      if (ux === 1) expect(aSd / uy / plain.aSd).toBeCloseTo(1, 8);
    }
  });
});

describe('is refused', () => {
  const noBest = 'y follows no power law in x: no best exponent b was found between -50 and 50';
  test.each<[string, number[], number[], string]>([
    ['too few readings', [1, 2], [1, 2], 'x has 2 readings, at least 3 are needed'],
    ['unlike numbers of them', [1, 2, 3], [1, 2], 'y has 2 readings, as many as x (3) are needed'],
    ['an x of 0', [1, 0, 3], [1, 2, 3], 'x[1] 0 is not a finite number above 0'],
    ['an x without end', [1, 2, Infinity], [1, 2, 3], 'x[2] Infinity is not a finite number above 0'],
    ['a y without end', [1, 2, 3], [1, 2, -Infinity], 'y[2] -Infinity is not a finite number'],
    ['one x throughout', [2, 2, 2], [1, 2, 3], 'x is 2 throughout, at least 2 different are needed'],
    ['a y of 0 throughout', [1, 2, 4], [0, 0, 0], 'y is 0 throughout, at least one other reading is needed'],
    ['what only an endless exponent would fit', [1, 2, 4], [0, 0, 1], noBest],
    ['what only an exponent endless the other way would', [1, 2, 4], [1, 0, 0], noBest],
    ['an exponent of 60', [1, 1.01, 1.02], [1, 1.01 ** 60, 1.02 ** 60], noBest],
    ['one of −60', [1, 1.01, 1.02], [1, 1.01 ** -60, 1.02 ** -60], noBest],
  ])('%s', (_what, x, y, says) => {
    expect(() => fitPower(x, y)).toThrow(new RangeError(says));
  });

  test('but not an exponent of 45, or −45', () => {
    for (const b of [45, -45]) {
      const x = [1, 1.01, 1.02];
      expect(
        fitPower(
          x,
          x.map((v) => v ** b),
        ).b,
      ).toBeCloseTo(b, 8);
    }
  });
});
