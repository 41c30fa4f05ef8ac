import { describe, expect, test } from 'vitest';
import { verdictOn } from '../../../src/elements/teach/check-verdict.ts';
import { answerInWords, judge, workedExample } from '../../../src/exercises/index.ts';

/** 40% more, twice: 1.4 × 1.4 = 1.96, which is 96% more; added it would be 80%. */
const problem = workedExample('forward-chain');
const answer = answerInWords(problem);
const after = (typed: string, tries = 0) => verdictOn(judge(problem, typed), tries, answer);

describe('after an answer', () => {
  test('that is right it is noted, and nothing is opened', () => {
    expect(after('1.96', 1)).toMatchObject({ tries: 1, note: 'right', openStep: null, opensWorking: false });
  });
  test('that cannot be read no try is counted and nothing noted', () => {
    expect(after('herring', 1)).toMatchObject({ tries: 1, note: null, openStep: null, opensWorking: false });
  });
  test('that is wrong for the first time its step is opened, without the answer', () => {
    const first = after('1.8');
    expect(first).toMatchObject({
      tries: 1,
      note: { misstep: 'added the percentages' },
      opensWorking: false,
    });
    expect(first.openStep).not.toBeNull();
    expect(first.message).toMatch(/ Try again\.$/);
    expect(first.message).not.toContain('1.96');
  });
  test('that is wrong again the answer is shown, and its working opened', () => {
    const second = after('1.8', 1);
    expect(second).toMatchObject({ tries: 2, openStep: null, opensWorking: true });
    expect(second.message).toContain(`The answer is ${answer}.`);
  });
  test('that is wrong in no known way it is noted as no misstep', () => {
    expect(after('31')).toMatchObject({ tries: 1, note: null });
  });
});

test('a slip of writing is a try, and no wrong idea to come back to', () => {
  const slip = { verdict: 'misstep', message: 'Right as a number.', misstep: 'slip of writing' } as const;
  expect(verdictOn(slip, 0, answer)).toMatchObject({ tries: 1, note: null, openStep: null });
});
