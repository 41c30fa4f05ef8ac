import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contextIds, judge } from '../../../src/exercises/index.ts';
import { countRowsHtml, formHtml, formsKeyHtml } from '../../../src/teach/forms/forms-html.ts';
import { FIRST_FORMS, matchedForms, MOST_QUESTIONS } from '../../../src/teach/forms/forms.ts';
import type { FormQuestion, MatchedForms } from '../../../src/teach/forms/forms.ts';
import { moved, movedInWords } from '../../../src/teach/forms/moved.ts';
import { movedPicture } from '../../../src/teach/forms/moved-picture.ts';
import { uniformStream } from '../../../src/model/statistics/random.ts';
import { typed } from '../../exercises/typed.ts';

const requests = fc.record({
  context: fc.constantFrom(...contextIds),
  count: fc.integer({ min: 1, max: MOST_QUESTIONS }),
  seed: fc.integer({ min: 0, max: 0xffffffff }),
});

const ideas = ({ options }: FormQuestion): string[] => options.map(({ idea }) => idea).sort();

describe('two matching forms', () => {
  test('ask for the same ideas in the same order with other numbers, and every wrong option is a misstep', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const forms = matchedForms(request);
        expect(forms.before).toHaveLength(request.count);
        expect(forms.after).toHaveLength(request.count);
        for (const [index, one] of forms.before.entries()) {
          const other = forms.after[index];
          expect(other?.problem.kind).toBe(one.problem.kind);
          expect(other && ideas(other)).toEqual(ideas(one));
          expect(other?.problem.question).not.toBe(one.problem.question);
          for (const { problem, options } of other ? [one, other] : [one]) {
            expect(options.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D']);
            expect(new Set(options.map(({ text }) => text)).size).toBe(4);
            // The judge of typed answers, which knows nothing of forms, finds the same idea behind each option.
            for (const { idea } of options) {
              const answer = problem.missteps.find(({ id }) => id === idea)?.answer ?? problem.answer;
              const { verdict, misstep } = judge(problem, typed(answer, problem.unit));
              expect(verdict === 'right' ? 'right' : misstep).toBe(idea);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('are the same every time, and others by another seed', () => {
    const said = (seed: number): string => formHtml(matchedForms({ ...FIRST_FORMS, seed }), 'before');
    expect(said(7)).toBe(said(7));
    expect(said(8)).not.toBe(said(7));
  });

  test('put the right answer at no one place', () => {
    const places = new Set(
      Array.from({ length: 20 }, (_, seed) =>
        matchedForms({ context: 'seed-trays', count: 8, seed }),
      ).flatMap(({ before }) =>
        before.map(({ options }) => options.findIndex(({ idea }) => idea === 'right')),
      ),
    );
    expect([...places].sort()).toEqual([0, 1, 2, 3]);
  });

  test.each([
    [{ ...FIRST_FORMS, count: 0 }, 'count 0 is not a whole number from 1 to 8'],
    [{ ...FIRST_FORMS, count: 9 }, 'count 9 is not a whole number from 1 to 8'],
    [{ ...FIRST_FORMS, seed: -1 }, 'seed -1 is not a whole number from 0 to 4294967295'],
  ])('refuse %j', (request, why) => expect(() => matchedForms(request)).toThrow(why));

  test('hold nothing of the key, and the key holds every idea', () => {
    const forms = matchedForms(FIRST_FORMS);
    for (const name of ['before', 'after'] as const)
      for (const { id, idea } of forms[name].flatMap(({ problem }) => problem.missteps)) {
        expect(formHtml(forms, name)).not.toContain(id);
        expect(formHtml(forms, name)).not.toContain(idea);
      }
    for (const { idea } of forms.before.flatMap(({ options }) => options))
      expect(formsKeyHtml(forms)).toContain(idea);
    expect(countRowsHtml(forms).match(/<input /g)).toHaveLength(2 * 4 * forms.count);
  });
});

/** A class in which a wrong idea has a known share on every question, and the rest are right. */
function counted(
  questions: readonly FormQuestion[],
  shares: Record<string, number>,
  pupils: number,
  seed: number,
) {
  const next = uniformStream(seed);
  return questions.map(({ options }) => {
    const counts = options.map(() => 0);
    for (let pupil = 0; pupil < pupils; pupil += 1) {
      let draw = next();
      const wrong = options.findIndex(({ idea }) => idea !== 'right' && (draw -= shares[idea] ?? 0) < 0);
      const place = wrong >= 0 ? wrong : options.findIndex(({ idea }) => idea === 'right');
      counts[place] = (counts[place] ?? 0) + 1;
    }
    return counts;
  });
}

describe('what moved', () => {
  const forms: MatchedForms = matchedForms(FIRST_FORMS);

  test('is found in a simulated class at the rates planted', () => {
    const pupils = 400;
    const planted = { 'added the percentages': [0.45, 0.1], 'forgot the base': [0.15, 0.15] } as const;
    const at = (time: 0 | 1) =>
      Object.fromEntries(Object.entries(planted).map(([idea, rates]) => [idea, rates[time]]));
    const moves = moved(
      forms,
      counted(forms.before, at(0), pupils, 1),
      counted(forms.after, at(1), pupils, 2),
    );
    for (const [idea, [before, after]] of Object.entries(planted)) {
      const move = moves.find((one) => one.idea === idea);
      // Within four standard errors of a share.
      const off = (rate: number): number => 4 * Math.sqrt((rate * (1 - rate)) / pupils);
      expect(Math.abs((move?.shareBefore ?? NaN) - before)).toBeLessThan(off(before));
      expect(Math.abs((move?.shareAfter ?? NaN) - after)).toBeLessThan(off(after));
    }
    expect(moves[0]?.idea).toBe('right');
    expect(moves[1]).toMatchObject({ idea: 'added the percentages', clear: true });
    expect(movedInWords(moves).join(' ')).toMatch(
      /The idea that moved most is “added the percentages”\. It was given up: from 4\d% to (9|1\d)% of the answers/,
    );
  });

  test('is worked out by hand', () => {
    const one = { ...forms, before: forms.before.slice(0, 1), after: forms.after.slice(0, 1) };
    const place = (form: readonly FormQuestion[], idea: string) =>
      form[0]?.options.findIndex((option) => option.idea === idea) ?? -1;
    const counts = (form: readonly FormQuestion[], right: number, added: number) => {
      const row = [0, 0, 0, 0];
      row[place(form, 'right')] = right;
      row[place(form, 'added the percentages')] = added;
      return [row];
    };
    // 5 of 20 right and 15 added; then 12 of 16 right and 4 added: 25% to 75%, 75% to 25%.
    const moves = moved(one, counts(one.before, 5, 15), counts(one.after, 12, 4));
    expect(movedInWords(moves)).toEqual([
      'Right answers: 25% before, 75% after.',
      'The idea that moved most is “added the percentages”. It was given up: from 75% to 25% of the answers where it could be chosen.',
    ]);
    expect(moves.filter(({ clear }) => clear).map(({ idea }) => idea)).toEqual([
      'right',
      'added the percentages',
    ]);
    // One answer more or less of twenty can be chance.
    const little = movedInWords(moved(one, counts(one.before, 5, 15), counts(one.after, 6, 14)));
    expect(little.at(-1)).toMatch(/can be chance/);
    expect(movedInWords(moved(one, counts(one.before, 5, 15), counts(one.after, 5, 15)))).toContain(
      'No wrong idea has moved.',
    );
  });

  test('is nothing while a form has no counts', () => {
    expect(movedInWords(moved(forms, [], []))).toEqual([]);
    expect(movedInWords(moved(forms, counted(forms.before, {}, 5, 1), []))).toEqual([]);
    expect(movedPicture([], 400)).toBe('');
  });

  test('is drawn with a ring and a dot for each idea, inside the frame, and says its result', () => {
    const moves = moved(
      forms,
      counted(forms.before, { 'forgot the base': 1 }, 9, 1),
      counted(forms.after, {}, 9, 2),
    );
    const svg = movedPicture(moves, 330);
    expect(svg.match(/kit-ring/g)).toHaveLength(moves.length);
    const places = [...svg.matchAll(/cx="([\d.]+)"/g)].map(([, x]) => Number(x));
    expect(Math.min(...places)).toBeGreaterThan(8);
    expect(Math.max(...places)).toBeLessThan(322);
    expect(svg).toContain('aria-label="Right answers: ');
  });
});
