import { expect, test } from 'vitest';
import { pageWords } from '../../../src/topics/forty-and-forty/page-words.ts';
import { guessOfSum } from '../../../src/phrases/guess-in-range.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { loft } from '../../comparison/entries.ts';

const said = (name: string, faceValues: number[]): string =>
  pageWords[name]?.(sceneOf({ ...loft(), faceValues })).join(' ') ?? '';

test('percentages are asked for, answered and explained by hand', () => {
  // 1.4 · 1.3 · 1.15 = 2.093 and 1 + 0.4 + 0.3 + 0.15 = 1.85; own calculation.
  expect(said('percentages-question', [40, 30, 15])).toBe('What do +40%, +30% and +15% make together?');
  expect(said('percentages-answer', [40, 30, 15])).toBe('2.1 times as long: 109% more, not 85%.');
  expect(said('percentages-why', [40, 30, 15])).toMatch(
    /Start with 100: 40% more makes 140\. Then 30% of 140 is 42, not 30\.$/,
  );
});

test.each([
  // 0.5 · 0.6 = 0.3, and 1 − 0.5 − 0.4 = 0.1; own calculation, as are all below.
  [[-50, -40], '0.3 times as long: 70% less, not 90%.'],
  [[-60, -60], '0.16 times as long: 84% less. Added up, nothing would be left.'],
  [[50, -40], '0.9 times as long: 10% less, not 10% more.'],
  [[100, -50], '1 times as long: no more and no less, not 50% more.'],
  [[12.5], '1.1 times as long: 13% more.'],
])('%s are answered', (percentages, answer) => expect(said('percentages-answer', percentages)).toBe(answer));

test('one percentage is not said to work on another', () => {
  expect(said('percentages-question', [12.5])).toBe('What does +12.5% make?');
  expect(said('percentages-why', [12.5])).toBe('One percentage alone has nothing to work on but the start.');
});

test('a guess at one number is right, close, the sum, too low or too high', () => {
  const held = { answer: 2.093, sum: 1.85 };
  expect(guessOfSum(2.1, held)).toBe('Your guess, 2.1, is right.');
  expect(guessOfSum(1.85, held)).toBe('Your guess, 1.85, is the sum, the answer most people give.');
  expect(guessOfSum(2, held)).toBe('Your guess, 2, is close, a little too low.');
  expect(guessOfSum(3, held)).toBe('Your guess, 3, is too high.');
});
