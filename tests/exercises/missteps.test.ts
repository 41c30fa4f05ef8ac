import { describe, expect, test } from 'vitest';
import {
  answerInWords,
  judge,
  makeProblem,
  toleranceInWords,
  workedExample,
} from '../../src/exercises/index.ts';

const fortyAndForty = workedExample('forward-chain');

describe('forty and forty', () => {
  // By hand: 1.4 × 1.4 = 1.96.
  test.each([['1.96'], ['1,96'], ['×1.96'], ['+96%'], ['196%'], ['49/25'], ['1 24/25'], ['1.95'], ['1.97']])(
    '%s is right',
    (typed) => {
      expect(judge(fortyAndForty, typed)).toEqual({ verdict: 'right', message: 'Yes: 1.96 times as long.' });
    },
  );

  // By hand: 1 + 0.4 + 0.4; 1 + 0.4 × 0.4; 1.96 − 1; 0.4 + 0.4; 1.4 + 1.4; (1.4 + 1.4)/2.
  test.each([
    ['1.8', 'added the percentages'],
    ['+80%', 'added the percentages'],
    ['180%', 'added the percentages'],
    ['1.16', 'multiplied the percentages themselves'],
    ['0.96', 'forgot the base'],
    ['0.8', 'added the percentages and forgot the base'],
    ['2.8', 'added the multipliers'],
    ['1.4', 'arithmetic mean'],
    ['96%', 'slip of writing'],
    ['96', 'slip of writing'],
    ['196', 'slip of writing'],
  ])('%s: %s', (typed, misstep) => {
    expect(judge(fortyAndForty, typed)).toMatchObject({ verdict: 'misstep', misstep });
  });

  test('the message names the idea and shows the step', () => {
    const { message, step } = judge(fortyAndForty, '1.8');
    expect(step).toBe(1);
    expect(message).toContain('You wrote 1.8 times as long. You added the percentages.');
    expect(message).toContain('Look at step 2: Multiply the multipliers');
  });

  test('a wrong answer without a known idea says which way', () => {
    expect(judge(fortyAndForty, '1.5')).toMatchObject({ verdict: 'not right', step: 0 });
    expect(judge(fortyAndForty, '1.5').message).toContain('larger');
    expect(judge(fortyAndForty, '1.98').message).toContain('smaller');
  });

  test('what cannot be read is not called wrong', () => {
    expect(judge(fortyAndForty, 'a lot').verdict).toBe('not readable');
    expect(judge(fortyAndForty, '').verdict).toBe('not readable');
  });
});

describe('a question for per cent more', () => {
  const problem = makeProblem('forward-chain', 1, { level: 3 });
  const more = (problem.answer - 1) * 100;

  test('takes per cent, with or without the sign', () => {
    expect(judge(problem, more.toFixed(1)).verdict).toBe('right');
    expect(judge(problem, `${more.toFixed(1)}%`).verdict).toBe('right');
    expect(judge(problem, `×${problem.answer}`).verdict).toBe('right');
    expect(answerInWords(problem)).toMatch(/% more$/);
    expect(toleranceInWords(problem)).toContain('the start included');
  });

  test('knows the whole given for the part, and a number of times', () => {
    expect(judge(problem, `${(more + 100).toFixed(1)}%`)).toMatchObject({
      misstep: 'forgot the base',
      step: 2,
    });
    expect(judge(problem, problem.answer.toFixed(3))).toMatchObject({ misstep: 'slip of writing' });
  });
});

test('the tolerance is said for the box', () => {
  expect(toleranceInWords(fortyAndForty)).toBe('In how many times as long. Right to within 1%.');
});
