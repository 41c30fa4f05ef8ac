import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quantiles, shareAbove } from '../../../src/model/statistics/quantiles.ts';
import { sorted } from '../../../src/model/statistics/sorted.ts';

const results = fc.oneof(
  // Few different values, so that many are equal; any at all; and most in one place with some far out.
  fc.array(fc.integer({ min: -3, max: 3 }), { maxLength: 40 }),
  fc.array(fc.double({ noNaN: true, noDefaultInfinity: true })),
  fc
    .tuple(
      fc.array(fc.double({ min: 0, max: 1e-3, noNaN: true }), { minLength: 100, maxLength: 300 }),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
    )
    .map(([careful, far]) => [far, ...careful]),
);

/** Where two zeros stand among each other does not matter. */
const plain = (values: Iterable<number>): number[] => [...values].map((value) => value + 0);

test('sorted gives what the language sorts, and leaves the values as they were', () => {
  fc.assert(
    fc.property(results, (values) => {
      const given = Float64Array.from(values);
      expect(plain(sorted(given))).toEqual(plain(given.toSorted()));
      expect([...given]).toEqual(values);
    }),
    { numRuns: 500 },
  );
});

test('quantiles lie straight between neighbours, at p·(n − 1) counted from 0', () => {
  // Hyndman & Fan 1996, definition 7: p(k) = (k − 1)/(n − 1).
  const inOrder = Float64Array.of(2, 3, 5, 7, 11);
  inOrder.forEach((value, k) => expect(quantiles(inOrder, [k / 4])).toEqual([value]));
  expect(quantiles(inOrder, [0.9, 0.125, 0.125])).toEqual(
    [7 + 0.6 * 4, 2.5, 2.5].map((value) => expect.closeTo(value, 12) as number),
  );
  expect(quantiles(Float64Array.of(7), [0, 0.3, 1])).toEqual([7, 7, 7]);
});

test('a share that is none is refused', () => {
  const of = Float64Array.of(1, 2);
  for (const share of [-0.1, Number.NaN, 1.1])
    expect(() => quantiles(of, [0.5, share])).toThrow(
      new RangeError(`share ${share} is not between 0 and 1`),
    );
});

test('the share above a value counts those above it, and not those that are it', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 1 }), (values) => {
      const inOrder = sorted(Float64Array.from(values));
      for (let value = -4; value <= 4; value += 1)
        expect(shareAbove(inOrder, value)).toBe(values.filter((v) => v > value).length / values.length);
    }),
  );
  expect(() => shareAbove(new Float64Array(0), 0)).toThrow('values are none');
});
