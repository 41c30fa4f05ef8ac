import { describe, expect, it, test } from 'vitest';
import { bandRounding } from '../../../src/model/uncertainty/band-rounding.ts';

describe('rounding to what the band supports', () => {
  // After JCGM 100, 7.2.6: a result is written to the decimal place of its uncertainty.
  test.each([
    [1.2, 1.6378, 2.3, 2, 1.6],
    [2.1, 3.04, 4.3, 1, 3],
    [2.98, 3.04, 3.11, 3, 3.04],
    [5, 28, 160, 1, 30],
    [1, 8, 60, 1, 8],
    [0.7, 0.85, 1.0, 1, 0.8],
    [9.3, 9.97, 10.6, 3, 10],
    [99.2, 99.97, 100.5, 4, 100],
    [0.000998, 0.001003, 0.001008, 4, 0.001003],
    [6, 9.97, 13, 2, 10],
    [1.9999999, 2.00000001, 2.0000001, 6, 2],
    [1.23456789, 1.23456789, 1.23456789, 6, 1.23457],
  ])('%f … %f … %f supports %i: %f', (low, median, high, figures, rounded) => {
    expect({ ...bandRounding({ low, median, high }) }).toEqual({
      figures,
      median: expect.closeTo(rounded, 9),
    });
  });

  it('never rounds the middle out of the band by more than the band is wide', () => {
    for (let k = 1; k < 400; k += 1) {
      const median = 0.02 * 1.03 ** k;
      const wide = 1 + ((k * 7) % 50) / 40 + 0.001;
      const band = { low: median / wide, median, high: median * wide };
      expect(Math.abs(bandRounding(band).median - median)).toBeLessThanOrEqual(band.high - band.low);
    }
  });

  it('refuses what is no band', () => {
    for (const [low, median, high] of [
      [2, 1, 3],
      [1, 3, 2],
      [0, 1, 2],
      [1, 2, Infinity],
      [Number.NaN, 1, 2],
    ] as const)
      expect(() => bandRounding({ low, median, high })).toThrow(
        new RangeError(`band ${low}, ${median}, ${high} is not rising from above 0`),
      );
  });
});
