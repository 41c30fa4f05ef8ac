import { describe, expect, test } from 'vitest';
import { at, lanes, replaced, roomFor, settled, weightedSum } from '../../../src/model/chain/values.ts';

const three = Float64Array.of(1, 2, 3);

describe('values over a run', () => {
  test('are one for all samples, or one a sample; past the end there is none', () => {
    expect([at(7, 0), at(7, 99), at(three, 0), at(three, 2)]).toEqual([7, 7, 1, 3]);
    expect(at(three, 3)).toBeNaN();
  });

  test('take the room of others of their size, and new room else', () => {
    const old = Float64Array.of(9, 9, 9);
    const room = roomFor(3, old);
    expect(room.buffer).toBe(old.buffer);
    // Another object, so that nothing made of the old one seems unchanged.
    expect(room).not.toBe(old);
    for (const other of [undefined, null, 5, Float64Array.of(1, 2)])
      expect([...roomFor(3, other)]).toEqual([0, 0, 0]);
  });

  test('are read together, one that does not vary at its one place', () => {
    const read = (a: number | Float64Array, b: number | Float64Array): [number, number][] => {
      const { a: left, b: right, out } = lanes(a, b);
      return Array.from(out, (_, i) => [left.data[i * left.step] ?? NaN, right.data[i * right.step] ?? NaN]);
    };
    expect(read(three, Float64Array.of(4, 5, 6))).toEqual([
      [1, 4],
      [2, 5],
      [3, 6],
    ]);
    expect(read(three, 4)).toEqual([
      [1, 4],
      [2, 4],
      [3, 4],
    ]);
    expect(read(4, three)).toEqual([
      [4, 1],
      [4, 2],
      [4, 3],
    ]);
    expect(read(4, 5)).toEqual([[4, 5]]);
  });

  test('of one place only are a number', () => {
    expect(settled(Float64Array.of(4))).toBe(4);
    expect(settled(three)).toBe(three);
  });

  test('add up, each times its weight', () => {
    expect(weightedSum([])).toBe(0);
    expect(
      weightedSum([
        [2, 5],
        [-1, 3],
      ]),
    ).toBe(7);
    expect(
      weightedSum([
        [2, three],
        [-1, 3],
        [10, Float64Array.of(1, 0, 2)],
      ]),
    ).toEqual(Float64Array.of(9, 1, 23));
    const old = Float64Array.of(9, 9, 9);
    const sum = weightedSum([[1, three]], old) as Float64Array;
    expect([sum.buffer === old.buffer, [...sum]]).toEqual([true, [1, 2, 3]]);
    expect([...three]).toEqual([1, 2, 3]);
  });

  test('are replaced in some samples, in a copy', () => {
    const places = Uint32Array.of(2, 0);
    expect(replaced(three, 3, places, Float64Array.of(30, 10))).toEqual(Float64Array.of(10, 2, 30));
    expect(replaced(three, 3, places, 7)).toEqual(Float64Array.of(7, 2, 7));
    expect(replaced(5, 3, places, Float64Array.of(30, 10))).toEqual(Float64Array.of(10, 5, 30));
    // What varies in neither stays a number: what is drawn again then is what it was.
    expect(replaced(5, 3, places, 5)).toBe(5);
    expect([...three]).toEqual([1, 2, 3]);
  });
});
