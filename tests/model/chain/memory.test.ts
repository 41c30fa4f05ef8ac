import { describe, expect, test } from 'vitest';
import { createMemory, noMemory } from '../../../src/model/chain/memory.ts';

describe('memory', () => {
  /** Keeps under a key, counting how often it is made. */
  const counted = () => {
    const memory = createMemory();
    const made: unknown[] = [];
    const keep = (key: string, of: readonly unknown[]): number =>
      memory.keep<number>(key, of, (old) => {
        made.push(old);
        return made.length;
      });
    return { memory, made, keep };
  };

  test('makes a thing once for as long as it is made of the same', () => {
    const { keep } = counted();
    const array = [1];
    expect([keep('a', [1, array]), keep('a', [1, array]), keep('a', [1, array])]).toEqual([1, 1, 1]);
    // Another object that looks the same is another.
    expect(keep('a', [1, [1]])).toBe(2);
    expect(keep('a', [1])).toBe(3);
    expect(keep('a', [1, undefined])).toBe(4);
    expect(keep('a', [])).toBe(5);
    expect(keep('a', [])).toBe(5);
  });

  test('tells NaN as itself, and 0 from −0', () => {
    const { keep } = counted();
    expect([keep('a', [NaN]), keep('a', [NaN]), keep('a', [0]), keep('a', [-0])]).toEqual([1, 1, 2, 3]);
  });

  test('keeps keys apart, and hands over what stood under the same one', () => {
    const { keep, made } = counted();
    keep('a', [1]);
    keep('b', [1]);
    keep('a', [2]);
    expect(made).toEqual([undefined, undefined, 1]);
    expect([keep('b', [1]), keep('a', [2])]).toEqual([2, 3]);
  });

  test('keeps nothing of what could not be made', () => {
    const { memory, keep, made } = counted();
    keep('a', [1]);
    expect(() =>
      memory.keep('a', [2], () => {
        throw new RangeError('no');
      }),
    ).toThrow('no');
    keep('a', [1]);
    expect(made).toEqual([undefined, undefined]);
  });

  test('forgets at a sweep what was not asked for since the last', () => {
    const { memory, keep, made } = counted();
    keep('a', [1]);
    keep('b', [1]);
    memory.sweep();
    keep('a', [1]);
    memory.sweep();
    // b was not asked for between the two; a was, without being made anew.
    keep('a', [1]);
    keep('b', [1]);
    expect(made).toHaveLength(3);
    memory.sweep();
    memory.sweep();
    keep('a', [1]);
    expect(made).toEqual([undefined, undefined, undefined, undefined]);
  });

  test('that keeps nothing makes everything anew, from nothing', () => {
    const make = (old: unknown): unknown[] => [old];
    const of = [1];
    expect(noMemory.keep('a', of, make)).toEqual([undefined]);
    expect(noMemory.keep('a', of, make)).not.toBe(noMemory.keep('a', of, make));
    expect(noMemory.sweep()).toBeUndefined();
  });
});
