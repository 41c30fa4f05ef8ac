import { describe, expect, test } from 'vitest';
import { kindFor } from '../../../src/teach/check/next.ts';
import {
  dayOf,
  dueOn,
  nothingDone,
  readProgress,
  withMisstep,
  withRight,
  writeProgress,
} from '../../../src/teach/check/progress.ts';
import { progressKeeper } from '../../../src/teach/check/progress-kept.ts';

const at = { page: 'lessons/forty-and-forty/', kind: 'forward-chain' };
const missed = withMisstep(nothingDone, { ...at, anchor: 'check', misstep: 'added the percentages' }, 100);

describe('a misstep comes back', () => {
  test('on the day after, not on the same day', () => {
    expect(dueOn(missed, 100)).toEqual([]);
    expect(dueOn(missed, 101)).toHaveLength(1);
  });

  test('after longer and longer waits, and then no more', () => {
    let progress = missed;
    const met: number[] = [];
    for (let day = 100; day < 200; day += 1) {
      if (dueOn(progress, day).length === 0) continue;
      met.push(day);
      progress = withRight(progress, at, day);
    }
    // 1, 3, 7 and 21 days after one another.
    expect(met).toEqual([101, 104, 111, 132]);
    expect(progress.notes).toEqual([]);
  });

  test('from the beginning when it is made again', () => {
    const later = withRight(missed, at, 101);
    const again = withMisstep(later, { ...at, anchor: 'check', misstep: 'inverted' }, 103);
    expect(again.notes).toHaveLength(1);
    expect(dueOn(again, 104)).toMatchObject([{ misstep: 'inverted', rung: 0 }]);
  });

  test('and a right answer before its day, or to another kind, leaves it', () => {
    expect(withRight(missed, at, 100).notes).toEqual(missed.notes);
    expect(withRight(missed, { ...at, kind: 'undo' }, 105).notes).toEqual(missed.notes);
  });
});

test('right answers are counted by page', () => {
  expect(withRight(withRight(missed, at, 100), at, 100).right).toEqual({ [at.page]: 2 });
});

test('a day is that of the clock on the wall', () => {
  const date = new Date(2026, 0, 1, 23, 59);
  expect(dayOf(new Date(2026, 0, 2, 0, 1)) - dayOf(date)).toBe(1);
});

describe('what is kept', () => {
  test('comes back equal', () => expect(readProgress(writeProgress(missed))).toEqual(missed));

  test.each(['', 'x', 'null', '[]', '3', '{"notes":[{"page":1}],"right":{"a":"b","c":-1}}'])(
    'is nothing where %s was found',
    (text) => expect(readProgress(text)).toEqual(nothingDone),
  );

  const shelf = () => {
    const kept = new Map<string, string>();
    return {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
      removeItem: (key: string) => void kept.delete(key),
    };
  };

  test('is kept, recalled and erased', () => {
    const own = shelf();
    const storage = progressKeeper(() => own);
    expect(storage.keep((progress) => withRight(progress, at, 5))).toBe(true);
    expect(storage.load()?.right).toEqual({ [at.page]: 1 });
    expect(storage.erase()).toBe(true);
    expect(storage.load()).toEqual(nothingDone);
  });

  test('is not kept, and nothing breaks, where storage is denied', () => {
    const storage = progressKeeper(() => {
      throw new DOMException('no', 'SecurityError');
    });
    expect(storage.load()).toBeNull();
    expect(storage.keep((progress) => progress)).toBe(false);
    expect(storage.erase()).toBe(false);
  });
});

test('mixed kinds all come, in an order given by the seed', () => {
  const kinds = ['a', 'b', 'c'] as const;
  const drawn = Array.from({ length: 30 }, (_, seed) => kindFor(kinds, seed));
  expect(new Set(drawn)).toEqual(new Set(kinds));
  expect(drawn).toEqual(Array.from({ length: 30 }, (_, seed) => kindFor(kinds, seed)));
  expect(drawn.slice(0, 6)).not.toEqual(['a', 'b', 'c', 'a', 'b', 'c']);
  expect(kindFor(kinds, 2 ** 32 - 1)).toMatch(/[abc]/);
  expect(() => kindFor([], 1)).toThrow(RangeError);
});
