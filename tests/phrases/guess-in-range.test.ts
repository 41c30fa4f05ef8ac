import { expect, test, vi } from 'vitest';
import { guessInRange } from '../../src/phrases/guess-in-range.ts';
import { headlineOf } from '../../src/scene/headline.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { memoizeByScene, withGuess } from '../../src/scene/guessed.ts';
import { sureOf } from '../../src/scene/sure.ts';
import { temptingSum } from '../../src/scene/terms.ts';
import { jobProfiles } from '../../src/model/index.ts';
import { loft } from '../comparison/entries.ts';

const scene = sceneOf(loft());

test('a guess lies below, inside or above the range as it is shown; its ends are inside', () => {
  const { low, high } = headlineOf(scene);
  expect(guessInRange(low, scene)).toBe(`Your guess, ${low}, is inside the range.`);
  expect(guessInRange(high, scene)).toBe(`Your guess, ${high}, is inside the range.`);
  expect(guessInRange(low / 2, scene)).toBe(`Your guess, ${low / 2}, is below the range.`);
  expect(guessInRange(high * 2, scene)).toBe(`Your guess, ${high * 2}, is above the range.`);
});

test('the sum of the gains is named as the answer most people give', () => {
  const sum = Number(temptingSum(scene.row.careful).toPrecision(2));
  expect(guessInRange(sum, scene)).toMatch(/ That is the sum, the answer most people give\.$/);
  expect(guessInRange(sum * 1.1, scene)).not.toMatch(/sum/);
});

test('work without a slicing estimate has no range to say anything of', () => {
  const work = jobProfiles.find(({ slicingChain }) => !slicingChain)?.id;
  if (!work) throw new Error('all work of the model is slicing');
  expect(guessInRange(5, sceneOf({ ...loft(), work }))).toMatch(/no slicing estimate/);
});

test('a guess changes nothing of a scene but itself, and nothing is computed anew for it', () => {
  const compute = vi.fn(() => ({}));
  const once = memoizeByScene(compute);
  const guessed = withGuess(scene, 5);
  expect([scene.guess, guessed.guess, withGuess(guessed, 2).guess]).toEqual([null, 5, 2]);
  expect(withGuess(guessed, null)).toBe(scene);
  expect(once(guessed)).toBe(once(scene));
  expect(once(withGuess(guessed, 2))).toBe(once(scene));
  expect(compute).toHaveBeenCalledTimes(1);
  expect(sureOf(guessed)).toBe(sureOf(scene));
  expect(guessed.row).toBe(scene.row);
  expect(guessed.rankings).toBe(scene.rankings);
});
