import { describe, expect, test } from 'vitest';
import { tally } from '../../../src/topics/ask/guesses.ts';
import { optionSaid, pollOf } from '../../../src/topics/ask/poll.ts';
import { headlineOf } from '../../../src/scene/headline.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
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
      expect(optionSaid(option)).toMatch(/^[A-E]: [\w. ]*[\d.]+ times as long.*, because .+\.$/);
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
