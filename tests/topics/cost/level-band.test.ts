import { expect, test } from 'vitest';
import { loft } from '../../../src/components/scene.ts';
import { drawLevel } from '../../../src/scene/draw-level.ts';
import { levelBand, levelBandWords, levelOffersWords } from '../../../src/topics/cost/level-band.ts';
import { sceneOf } from '../../../src/scene/scene.ts';

const entry = loft();
const scene = sceneOf(entry);

test('the band of the drawing-level angle holds the angle itself', () => {
  const { value } = drawLevel(scene).steel.answer;
  const { low, median, high } = levelBand(scene);
  if (value === null || low === null || median === null || high === null) throw new Error('no angle');
  expect(low).toBeLessThan(value);
  expect(high).toBeGreaterThan(value);
  // Both are middles of the same thing.
  expect(median / value).toBeCloseTo(1, 0);
});

test('what is not known of a shape that both share does not widen it', () => {
  const vague = sceneOf({
    ...entry,
    knives: entry.knives.map((knife) => ({ ...knife, edgeMm: { value: 0.6, plusMinus: 0.3 } })),
  });
  const exact = sceneOf({ ...entry, knives: entry.knives.map((knife) => ({ ...knife, edgeMm: 0.6 })) });
  expect(levelBand(vague)).toEqual(levelBand(exact));
});

test('it is said once, and of the two knives', () => {
  expect(levelBand(scene)).toBe(levelBand(scene));
  expect(levelBandWords(scene).join(' ')).toMatch(
    /^Take Plover and a knife like it in the steel of Dunlin, and draw everything uncertain about them 100 times\./,
  );
});

test('three offers, each with what it gives and costs, and a verdict', () => {
  const said = levelOffersWords(scene);
  expect(said.slice(0, 3).every((sentence) => /times as long as now, for a price of/.test(sentence))).toBe(
    true,
  );
  expect(said[3]).toMatch(/^The best of these offers is /);
});
