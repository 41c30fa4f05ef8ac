import { blanksOf } from '../../exercises/blanks.ts';
import type { Problem } from '../../exercises/problem.ts';
import { escaped } from './html.ts';
import { smallMath } from './math.ts';

const formula = (tex: string): string => `<span class="formula" tabindex="0">${smallMath(tex)}</span>`;

/** The steps of a problem with all their results. */
export const workingHtml = ({ steps }: Problem): string =>
  steps.map(({ text, tex }) => `<li>${escaped(text)} ${formula(tex)}</li>`).join('');

/** The formula of one step, its results left open. */
export function openStepHtml(problem: Problem, step: number): string {
  const blank = blanksOf(problem).find((one) => one.step === step);
  return blank ? formula(blank.tex) : '';
}

/** The steps of a problem with a box for each result; a later step holds earlier results and so waits its turn. */
export function blanksHtml(problem: Problem, id: string): string {
  const blanks = blanksOf(problem);
  return problem.steps
    .map(({ text, values }, step) => {
      const said = `${id}-step-${step}`;
      const boxes = values.map((_, field) => {
        const what =
          values.length > 1 ? `Result ${field + 1} of step ${step + 1}` : `Result of step ${step + 1}`;
        return `<input type="text" data-blank="${blanks.findIndex((blank) => blank.step === step && blank.field === field)}" aria-label="${what}" aria-describedby="${said}" autocomplete="off">`;
      });
      return `<li${step > 0 ? ' hidden' : ''}><form data-step="${step}">${escaped(text)} <span data-part="formula">${openStepHtml(problem, step)}</span><span class="answer-line">${boxes.join('')}<button type="submit">Check step ${step + 1}</button></span><p id="${said}" role="status" data-part="step-said"></p></form></li>`;
    })
    .join('');
}
