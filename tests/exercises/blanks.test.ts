import { describe, expect, test } from 'vitest';
import { blanksOf, judgeBlank, kinds, workedExample } from '../../src/exercises/index.ts';
import { problems } from './seeds.ts';
import { typed } from './typed.ts';

describe('a worked example opened with blanks', () => {
  const blanks = blanksOf(workedExample('forward-chain'));

  // By hand: 1 + 40/100 = 1.4, twice; 1.4 × 1.4 = 1.96.
  test('has a blank for each result', () => {
    expect(blanks.map(({ step, field, expected }) => [step, field, expected])).toEqual([
      [0, 0, 1.4],
      [0, 1, 1.4],
      [1, 0, 1.96],
    ]);
  });

  test('judges each', () => {
    const [first] = blanks;
    if (!first) throw new Error('there is no blank');
    expect(judgeBlank(first, '1,4').verdict).toBe('right');
    expect(judgeBlank(first, '140%').verdict).toBe('right');
    expect(judgeBlank(first, '0.4')).toMatchObject({ verdict: 'not right', step: 0 });
    expect(judgeBlank(first, 'much').verdict).toBe('not readable');
  });
});

test.each(kinds)('%s leaves no result open to view, and takes the right ones', (kind) => {
  for (const problem of problems(kind, 200)) {
    for (const blank of blanksOf(problem)) {
      const results = problem.steps[blank.step]?.values.length;
      expect(blank.tex.match(/(=|\\approx) \\square/g)).toHaveLength(results ?? 0);
      expect(judgeBlank(blank, typed(blank.expected, blank.asks)).verdict).toBe('right');
      if (blank.asks !== 'letter')
        expect(judgeBlank(blank, typed(blank.expected * 1.05, blank.asks)).verdict).not.toBe('right');
    }
  }
});
