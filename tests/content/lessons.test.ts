import { describe, expect, it } from 'vitest';
import { bareNumbers, filesBelow, saysTimesLonger } from './reading.ts';

/** Numbers a lesson may state by itself, each read and agreed: a fact that no comparison changes. */
const agreed: Record<string, readonly string[]> = {
  // The floor of the angle (common practice), and the included angle the published line is taken at.
  // The angle at which the exponent E is defined.
  'two-routes': ['15°'],
  'range-race': ['4°', '6°', '30°'],
  // The floor of the angle, common practice, and the hardness it is stated for.
  'where-it-stops': ['4°', '6°', '5°', '60 HRC'],
};

const lessons = filesBelow('content/lessons', '.mdx');

describe('the numbers of a lesson', () => {
  it('finds a bare number with a unit, and passes over what the model computes', () => {
    expect(bareNumbers('Cut by 40% at 15° and 0.25 mm, ×1.9')).toEqual(['40%', '15°', '0.25 mm', '×1.9']);
    expect(bareNumbers('---\nminutes: 8\n---\n<Num of="a.b" /> of `40%` and chapter 4')).toEqual([]);
  });

  it('finds the lessons', () => {
    expect(lessons.length).toBeGreaterThan(0);
  });

  for (const { path, text } of lessons) {
    it(`come from the model in ${path}`, () => {
      const name = path.replace(/^.*\/\d+-|\.mdx$/g, '');
      expect(bareNumbers(text).filter((found) => !agreed[name]?.includes(found))).toEqual([]);
    });

    it(`stand in a lesson that opens with its question and closes with its sources: ${path}`, () => {
      expect(text).toMatch(/^## What this leaves out$/m);
      expect(text).toMatch(/^## Sources$/m);
      expect(text).toMatch(/<Check /);
      expect(text).toMatch(/<Figure /);
      expect(text).toMatch(/<Own>/);
    });
  }
});

describe('a ratio in words', () => {
  it('is caught where it could be read two ways', () => {
    expect(saysTimesLonger('it lasts three times longer')).toHaveLength(1);
    expect(saysTimesLonger('it cuts 40% longer')).toHaveLength(1);
    expect(saysTimesLonger('three times as long as')).toHaveLength(0);
  });

  const read = [...filesBelow('content', '.mdx', '.yaml'), ...filesBelow('src', '.ts', '.astro')];
  it('is always “times as long as”', () => {
    expect(read.length).toBeGreaterThan(50);
    const found = read.flatMap(({ path, text }) => saysTimesLonger(text).map((words) => `${path}: ${words}`));
    expect(found).toEqual([]);
  });
});
