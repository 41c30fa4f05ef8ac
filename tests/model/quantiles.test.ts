import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quantiles } from '../../src/model/quantiles.ts';

/** By the definition, on a sorted copy: place p·(n − 1), straight between neighbours. */
function bySorting(results: Float64Array, share: number): number {
  const sorted = results.toSorted();
  const place = share * (sorted.length - 1);
  const [low = NaN, high = low] = sorted.subarray(Math.floor(place), Math.floor(place) + 2);
  return place === Math.floor(place) ? low : low + (place - Math.floor(place)) * (high - low);
}

const results = fc.oneof(
  // Few different values, so that many are equal; and any at all.
  fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 1, maxLength: 40 }),
  fc.array(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }), { minLength: 1 }),
);
const shares = fc.array(fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0, 0.5, 1)));

test('quantiles are those of the sorted results, which are left as they were', () => {
  fc.assert(
    fc.property(results, shares, (values, unsorted) => {
      const given = Float64Array.from(values);
      const rising = unsorted.toSorted((a, b) => a - b);
      expect(quantiles(given, rising)).toEqual(rising.map((share) => bySorting(given, share)));
      expect([...given]).toEqual(values);
    }),
    { numRuns: 300 },
  );
});

test('a share may be met twice, and the ends are the least and the greatest', () => {
  expect(quantiles(Float64Array.of(4, 1, 3, 2), [0, 0, 0.5, 0.5, 1, 1])).toEqual([1, 1, 2.5, 2.5, 4, 4]);
  expect(quantiles(Float64Array.of(7), [0, 0.3, 1])).toEqual([7, 7, 7]);
});

test('room to sort in is used, and what stood there before does not count', () => {
  const room = Float64Array.of(-100, 100, 0);
  expect(quantiles(Float64Array.of(3, 1, 2), [0.5], room)).toEqual([2]);
  expect(room.toSorted()).toEqual(Float64Array.of(1, 2, 3));
});

test('a share that is none is refused', () => {
  const of = Float64Array.of(1, 2);
  expect(() => quantiles(of, [-0.1])).toThrow(new RangeError('share -0.1 is not between 0 and 1'));
  expect(() => quantiles(of, [NaN])).toThrow(new RangeError('share NaN is not between 0 and 1'));
  expect(() => quantiles(of, [0.5, 1.1])).toThrow(new RangeError('share 1.1 is not between 0.5 and 1'));
});
