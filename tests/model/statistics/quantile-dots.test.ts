import { describe, expect, it } from 'vitest';
import { quantileDots } from '../../../src/model/statistics/quantile-dots.ts';

describe('dots', () => {
  const even = Float64Array.from({ length: 1001 }, (_, i) => i / 1000);

  it.each([20, 50, 100])('%i of them stand each for one in as many chances', (count) => {
    const dots = quantileDots(even, count);
    expect(dots).toHaveLength(count);
    // Of an even distribution on 0…1 the dot i is its own share, (i + ½)/count.
    dots.forEach((dot, i) => expect(dot).toBeCloseTo((i + 0.5) / count, 12));
  });

  it('of one ratio are all that ratio', () => {
    expect(quantileDots(Float64Array.of(1.4), 20)).toEqual(Array<number>(20).fill(1.4));
  });

  it('are refused for a count that is none, and for nothing', () => {
    for (const count of [19, 101, 20.5, Number.NaN])
      expect(() => quantileDots(even, count)).toThrow(
        `count of dots ${count} is not a whole number from 20 to 100`,
      );
    expect(() => quantileDots(new Float64Array(), 20)).toThrow('values are none');
  });
});
