import { describe, expect, test } from 'vitest';
import { rankings } from '../../../src/model/index.ts';
import type { Comparison, Knife } from '../../../src/model/index.ts';
import { plover } from '../knives.ts';

const against = (change: Partial<Knife>): Comparison => ({
  knives: [plover, { ...plover, id: 'dunlin', name: 'Dunlin', ...change }],
  baseline: 'plover',
});

describe('rankings', () => {
  test('the keener knife slices longest and rolls first', () => {
    const comparison = against({ angleDeg: 12 });
    const { slicing, rolling, chipping, chippingReason } = rankings(comparison);
    expect(slicing.map(({ knife }) => knife)).toEqual(['dunlin', 'plover']);
    expect(rolling.map(({ knife }) => knife)).toEqual(['plover', 'dunlin']);
    expect(chipping).toBeNull();
    expect(chippingReason).toContain('Plover, Dunlin');
    // Slicing is one number, side load a range about its middle in the logarithm: tan 12°/tan 20° and its square.
    const [, dunlin] = rolling;
    const tangents = Math.tan((12 * Math.PI) / 180) / Math.tan((20 * Math.PI) / 180);
    expect(dunlin?.low).toBeCloseTo(tangents ** 2, 12);
    expect(dunlin?.high).toBeCloseTo(tangents, 12);
    expect(dunlin?.value).toBeCloseTo(tangents ** 1.5, 12);
    for (const { value, low, high } of slicing) expect([low, high]).toEqual([value, value]);
  });

  test('chipping stands once every toughness is known', () => {
    const comparison = against({ toughness: 30 });
    const known = { ...comparison, knives: comparison.knives.map((knife) => ({ toughness: 15, ...knife })) };
    const { chipping, chippingReason } = rankings(known);
    // At one angle both ends of the range are the ratio of the toughnesses, 30/15.
    expect(chipping?.[0]).toEqual({
      knife: 'dunlin',
      value: expect.closeTo(2, 12) as number,
      low: expect.closeTo(2, 12) as number,
      high: expect.closeTo(2, 12) as number,
    });
    expect(chippingReason).toBeNull();
  });
});
