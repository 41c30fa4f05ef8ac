import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelledTicks, scaleFor, smallTicks } from '../../../src/topics/ruler/log-scale.ts';
import { placeLabels } from '../../../src/topics/ruler/place-labels.ts';
import { brief } from '../../../src/scene/show.ts';

const ratio = () => fc.double({ min: Math.log(1e-4), max: Math.log(1e4), noNaN: true }).map(Math.exp);

test('a ruler holds 1 and all that claims room on it, and its labels stand clear', () => {
  fc.assert(
    fc.property(
      fc.array(ratio(), { minLength: 1, maxLength: 6 }),
      fc.constantFrom(200, 350),
      (at, length) => {
        const claims = at.map((value) => ({ at: value, leftPx: 40, rightPx: 40 }));
        const scale = scaleFor(claims, [100, 100 + length], [90, 110 + length]);
        for (const value of [...at, 1]) {
          expect(scale.px(value)).toBeGreaterThanOrEqual(100 - 1e-6);
          expect(scale.px(value)).toBeLessThanOrEqual(100 + length + 1e-6);
        }
        for (const value of at) {
          expect(scale.px(value) - 40).toBeGreaterThanOrEqual(90);
          expect(scale.px(value) + 40).toBeLessThanOrEqual(110 + length);
          expect(scale.ratio(scale.px(value)) / value).toBeCloseTo(1, 9);
        }
        const ticks = labelledTicks(scale, 12.5);
        expect(ticks).toContain(1);
        expect(ticks.length).toBeLessThanOrEqual(12);
        // Figures of the face are 0.6 of its size; a point is narrower.
        const half = (tick: number) => (brief(tick).length * 0.6 * 12.5) / 2;
        ticks.slice(1).forEach((tick, index) => {
          const before = ticks[index] ?? 1;
          expect(scale.px(tick) - half(tick)).toBeGreaterThan(scale.px(before) + half(before));
        });
      },
    ),
    { numRuns: 300 },
  );
});

test('the ticks of a plain ruler are those of a slide rule', () => {
  // Common practice, no source: 1, 2, 3 and 5 in every power of ten.
  const scale = scaleFor([{ at: 30, leftPx: 0, rightPx: 30 }], [160, 500], [152, 508]);
  expect(labelledTicks(scale, 13.5).slice(0, 6)).toEqual([1, 2, 3, 5, 10, 20]);
  const small = smallTicks(scale, [1, 2, 3, 5, 10, 20]).map(({ at }) => at);
  expect(small).toContain(4);
  expect(small).toContain(1.5);
  expect(new Set(small).size).toBe(small.length);
});

test('labels below the ruler run neither into each other nor through a stem', () => {
  const wanted = fc.array(
    fc.record({ x: fc.double({ min: 20, max: 310, noNaN: true }), widthPx: fc.constantFrom(60, 90, 120) }),
    {
      minLength: 1,
      maxLength: 4,
    },
  );
  fc.assert(
    fc.property(wanted, (unsorted) => {
      const sorted = [...unsorted].sort((a, b) => a.x - b.x);
      const placed = placeLabels(sorted, 330);
      if (!placed) return;
      const boxes = sorted.map(({ x, widthPx }, index) => {
        const { row, side } = placed[index] ?? { row: 0, side: 'left' };
        return {
          x,
          row,
          from: side === 'left' ? x - 6 - widthPx : x + 6,
          to: side === 'left' ? x - 6 : x + 6 + widthPx,
        };
      });
      boxes.forEach((a, i) => {
        expect(a.from).toBeGreaterThanOrEqual(0);
        expect(a.to).toBeLessThanOrEqual(330);
        boxes.forEach((b, j) => {
          if (i === j) return;
          if (a.row === b.row) expect(a.to <= b.from || b.to <= a.from).toBe(true);
          // A stem passes all rows above its own label.
          if (b.row > a.row) expect(b.x > a.from && b.x < a.to).toBe(false);
        });
      });
    }),
  );
});
