import { describe, expect, test } from 'vitest';
import { tally } from '../../../src/topics/ask/guesses.ts';
import { chosenInRange } from '../../../src/topics/ask/chosen.ts';
import { optionSaid, pollOf } from '../../../src/topics/ask/poll.ts';
import type { PollOption } from '../../../src/topics/ask/poll.ts';
import { headlineOf } from '../../../src/scene/headline.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { temptingSum } from '../../../src/scene/terms.ts';
import { loft } from '../../comparison/entries.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { oddComparisons } from '../odd-comparisons.ts';

describe.each(Object.entries(oddComparisons))('the poll of %s', (_name, document) => {
  const checked = validate(document);
  if (!checked.ok) throw new Error('the comparison is not valid');
  const scene = sceneOf(checked.entry);
  const options = pollOf(scene);

  test('offers five spans without gap or overlap, from nothing to any', () => {
    expect(options.map(({ letter }) => letter).join('')).toBe('ABCDE');
    expect(options[0]?.low).toBe(0);
    expect(options.at(-1)?.high).toBe(Infinity);
    options.forEach(({ low, high, at }, index) => {
      expect(low).toBeLessThan(at);
      expect(at).toBeLessThan(high);
      if (index > 0) expect(low).toBe(options[index - 1]?.high);
    });
  });

  test('holds the answer in one of them, and gives each its own thought', () => {
    const answer = headlineOf(scene).middle;
    expect(options.filter(({ low, high }) => low <= answer && answer < high)).toHaveLength(1);
    expect(new Set(options.map(({ thought }) => thought)).size).toBe(5);
    for (const option of options)
      expect(optionSaid(option)).toMatch(/^[A-E]: [\w. ]*[\d.]+ times as long\. \S.+\.$/);
  });
});

describe('a tally', () => {
  const held = { answer: 4, sum: 2.5 };
  test('counts those who added, those who called it and those who took the other knife', () =>
    expect(
      tally(
        [
          { ratio: 2.5, count: 12 },
          { ratio: 2.52, count: 1 },
          { ratio: 4, count: 3 },
          { ratio: 0.5, count: 2 },
          { ratio: 9, count: 1 },
        ],
        held,
      ),
    ).toEqual({ guesses: 19, added: 13, called: 3, otherKnife: 2, median: 2.5 }));

  test('takes the geometric mean of the two in the middle', () =>
    // Worked by hand: the square root of 2 times 8.
    expect(
      tally(
        [1, 2, 8, 9].map((ratio) => ({ ratio, count: 1 })),
        held,
      ).median,
    ).toBeCloseTo(4, 12));

  test('counts nobody as having added where no sum tempts', () => {
    const { added, called } = tally([{ ratio: held.answer, count: 2 }], { ...held, sum: null });
    expect(added).toBeNull();
    expect(called).toBe(2);
  });

  test('refuses to cover nobody', () => expect(() => tally([], held)).toThrow(/guesses are 0/));
});

describe('what is said of a chosen option', () => {
  const scene = sceneOf(loft());
  const options = pollOf(scene);
  const said = options.map((option) => chosenInRange(option, scene));
  const { low, middle, high } = headlineOf(scene);

  test('names its letter, and the middle only where it matters', () =>
    said.forEach((text, index) => {
      expect(text.startsWith(`You chose ${'ABCDE'[index]}. `)).toBe(true);
      for (const sentence of text.split('. ')) expect(sentence.split(' ').length).toBeLessThanOrEqual(25);
    }));

  test('says below, in part, the middle itself, or above, as the spans lie beside the range', () =>
    options.forEach((option, index) => {
      const text = said[index] ?? '';
      if (option.low <= middle && middle < option.high) expect(text).toContain('The middle, 10, lies in it.');
      else if (option.high <= low) expect(text).toContain('It is below the range.');
      else if (option.low > high) expect(text).toContain('It is above the range.');
      else expect(text).toMatch(/Part of the range lies in it, but the middle, 10, is (lower|higher)\./);
    }));

  test('says where the tempting sum lies, once', () => {
    expect(said.filter((text) => text.includes('the answer most people give'))).toHaveLength(1);
    const sum = temptingSum(scene.row.careful);
    const holds = options.findIndex((option) => option.low <= sum && sum < option.high);
    expect(said[holds]).toContain('the answer most people give');
  });

  test('says of work without a slicing estimate that it has no range', () =>
    expect(chosenInRange(options[0] as PollOption, sceneOf({ ...loft(), work: 'prying' }))).toBe(
      'You chose A. It has no range beside it: this work has no slicing estimate.',
    ));
});
