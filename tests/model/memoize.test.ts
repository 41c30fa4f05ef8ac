import { expect, test } from 'vitest';
import { memoizeByObject, memoize } from '../../src/model/memoize.ts';

test('what was computed is not computed again, until there is too much of it', () => {
  const asked: string[] = [];
  const sum = memoize(2, (a: number, b: number) => {
    asked.push(`${a}+${b}`);
    return a + b;
  });
  expect([sum(1, 23), sum(12, 3), sum(1, 23), sum(12, 3)]).toEqual([24, 15, 24, 15]);
  expect(asked).toEqual(['1+23', '12+3']);
  expect([sum(1, 2), sum(1, 23)]).toEqual([3, 24]);
  expect(asked).toEqual(['1+23', '12+3', '1+2', '1+23']);
});

test('numbers that differ in the last digit are not taken for each other', () => {
  const same = memoize(10, (a: number) => a);
  expect([same(0.1 + 0.2), same(0.3)]).toEqual([0.1 + 0.2, 0.3]);
});

test('of an object it is computed once, nothing included', () => {
  let times = 0;
  const none = memoizeByObject((of: { answer: null }) => {
    times += 1;
    return of.answer;
  });
  const asked = { answer: null };
  expect([none(asked), none(asked), times]).toEqual([null, null, 1]);
  none({ answer: null });
  expect(times).toBe(2);
});
