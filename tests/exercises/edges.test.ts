import { describe, expect, test } from 'vitest';
import { isAdditive, judge, kinds, makeProblem, workedExample } from '../../src/exercises/index.ts';
import type { Problem } from '../../src/exercises/index.ts';
import { modeOf } from '../../src/exercises/asks.ts';
import { diceFor } from '../../src/exercises/random.ts';
import { readAnswer } from '../../src/exercises/reader/index.ts';
import { amountOf } from '../../src/exercises/reader/amount.ts';
import { makeSet } from '../../src/exercises/set/index.ts';

describe('numbers no problem can be made of', () => {
  test.each([
    [
      'two fair pairs',
      () =>
        workedExample('fair-pair', {
          wanted: 0,
          pairs: [
            { first: [0, 0, 1], second: [2, 0, 1] },
            { first: [1, 0, 1], second: [2, 0, 1] },
          ],
        }),
      'number of fair pairs 2 is not 1',
    ],
    [
      'no fair pair',
      () => workedExample('fair-pair', { wanted: 0, pairs: [{ first: [0, 0], second: [0, 1] }] }),
      'number of fair pairs 0 is not 1',
    ],
    [
      'four percentages to take a mean of',
      () => workedExample('mean-growth', { percents: [10, 20, 30, 40] }),
      'number of percentages 4 is not between 2 and 3',
    ],
    [
      'parts above the whole',
      () => workedExample('multiply-or-add', { percents: [60, 40] }),
      'shares 60, 40 are not two above 0 and below 100% together',
    ],
    [
      'one helper alone',
      () => workedExample('multiply-or-add', { percents: [60] }, { level: 3 }),
      'percentages 60 are not 2 to ',
    ],
    [
      'no range',
      () => workedExample('range-product', { geometry: [], steel: [{ low: 1, high: 2 }] }),
      'number of ranges 0 is not between 1 and ',
    ],
    [
      'amounts whose rounding may hide the difference',
      () => workedExample('rounding-bands', { own: 50, other: 40 }),
      'amounts 50 and 40 are not more than 10 apart and above 10',
    ],
    [
      'not even once',
      () => workedExample('times-or-more', { times: 1 }),
      'number of times 1 is not between 1 and 1000',
    ],
    [
      'more draws than there is to draw from',
      () => diceFor('words', 1).several([1, 2], 3),
      'there is nothing left to draw from',
    ],
  ])('%s', (_, make, message) => {
    expect(make).toThrow(RangeError);
    expect(make).toThrow(message);
  });
});

test('a third knife that is not named is half as good again', () => {
  // 240% of it against 50% more than it: 2.4/1.5.
  expect(workedExample('times-or-more', { times: 2.4 }, { level: 3 }).answer).toBeCloseTo(2.4 / 1.5, 12);
});

describe('the right number in the wrong dress', () => {
  const made: Problem[] = kinds.flatMap((kind) =>
    ([1, 2, 3] as const).flatMap((level) => [1, 2, 3].map((seed) => makeProblem(kind, seed, { level }))),
  );
  const asking = (mode: string): Problem[] => made.filter(({ unit }) => modeOf(unit) === mode);
  // An answer is kept as a ratio where a ratio is asked for in per cent, and so the bare number is that of times.
  test.each([
    ['more', 'Right as a number of times. Asked is per cent more'],
    ['less', 'Right as a number of times. Asked is per cent less'],
    ['share', 'Right as a part of 1.'],
  ])('a ratio where per cent %s is asked for', (mode, says) => {
    const problems = asking(mode);
    expect(problems.length).toBeGreaterThan(0);
    let told = 0;
    for (const problem of problems) {
      const { verdict, message } = judge(problem, problem.answer.toFixed(4));
      if (verdict === 'right') continue;
      expect(message).toContain(says);
      told += 1;
      // Twice that is no slip of writing.
      expect(judge(problem, (2 * problem.answer).toFixed(4)).message).not.toContain(says);
    }
    expect(told).toBeGreaterThan(0);
  });
});

describe('amounts', () => {
  // Groups of thousands as they are written in English, German, French and Swiss texts.
  test.each([
    ['1 000 000', 1e6],
    ["1'000'000", 1e6],
    ['1,000.5', 1000.5],
    ['1.000,5', 1000.5],
    ['1 000,5', 1000.5],
    ['2 1/4', 2.25],
    ['9/4', 2.25],
  ])('%s', (text, value) => {
    expect(amountOf(text)).toBe(value);
  });

  test.each(['x/2', '2/x', '1/0', '1/2/3', '2 5/4', '1 00', '1.000.5', ''])('“%s” is none', (text) => {
    expect(amountOf(text)).toBeUndefined();
  });
});

test('the largest and the smallest number there is room for are kept', () => {
  for (const typed of ['9'.repeat(200), `${'9'.repeat(99)}/0.${'0'.repeat(97)}1`, `1/${'9'.repeat(198)}`]) {
    const read = readAnswer(typed, 'times');
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(Number.isFinite(read.value) && read.value > 0).toBe(true);
  }
});

describe('a set', () => {
  test('of one problem may be of any kind', () => {
    const made = Array.from({ length: 60 }, (_, seed) => makeSet({ seed, count: 1 }).items);
    expect(made.every((items) => items.length === 1)).toBe(true);
    const additive = made.filter(([item]) => item && isAdditive(item.problem.kind));
    // One in four of one problem is none.
    expect(additive).toHaveLength(0);
  });

  test('of kinds that all add, or all multiply, is of those alone', () => {
    const adding = kinds.filter(isAdditive);
    const multiplying = kinds.filter((kind) => !isAdditive(kind));
    for (const some of [adding, multiplying]) {
      const used = makeSet({ seed: 5, kinds: some, count: 9 }).items.map(({ problem }) => problem.kind);
      expect(used).toHaveLength(9);
      expect(used.every((kind) => some.includes(kind))).toBe(true);
    }
  });
});
