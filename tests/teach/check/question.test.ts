import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { questionHtml } from '../../../src/teach/check/question.ts';
import { blanksHtml, openStepHtml, workingHtml } from '../../../src/teach/check/working.ts';
import { kinds, makeProblem } from '../../../src/exercises/index.ts';

const read = (html: string) => parseHTML(`<html><body>${html}</body></html>`).document;

test.each(kinds)('%s is asked in a labelled box, or with every option to choose from', (kind) => {
  const problem = makeProblem(kind, 3, { level: 2 });
  const form = read(questionHtml(problem, 'x'));
  expect(form.querySelector('label, legend')?.textContent).toBe(problem.question);
  if (problem.options) {
    const radios = [...form.querySelectorAll('input[type="radio"]')];
    expect(radios.map((radio) => radio.getAttribute('value')).join('')).toBe(
      'ABCDEF'.slice(0, problem.options.length),
    );
  } else {
    expect(form.querySelector('label')?.getAttribute('for')).toBe('x');
    expect(form.querySelector('small')?.textContent).toMatch(/within 1%/);
  }
});

test.each(kinds)('%s has a box for each result of its working, and shows none', (kind) => {
  const problem = makeProblem(kind, 3, { level: 2 });
  const blanks = read(blanksHtml(problem, 'x'));
  expect(blanks.querySelectorAll('input[data-blank]')).toHaveLength(
    problem.steps.flatMap(({ values }) => values).length,
  );
  expect(blanks.querySelectorAll('form')).toHaveLength(problem.steps.length);
  expect(blanks.body.textContent).toContain('□');
  expect(openStepHtml(problem, 0)).toContain('□');
  const whole = read(workingHtml(problem));
  expect(whole.querySelectorAll('li')).toHaveLength(problem.steps.length);
  expect(whole.body.textContent).not.toContain('□');
});
