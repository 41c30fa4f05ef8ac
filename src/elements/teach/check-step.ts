import { smallMath } from '../../teach/check/math.ts';
import { blanksOf, judgeBlank } from '../../exercises/blanks.ts';
import type { Problem } from '../../exercises/problem.ts';

/**
 * Judges what was typed into the boxes of one step, each by itself. Once all are right it shows the step whole, and
 * the next one.
 */
export function judgeStep(problem: Problem, form: HTMLFormElement): void {
  const blanks = blanksOf(problem);
  const judged = [...form.querySelectorAll<HTMLInputElement>('input[data-blank]')].flatMap((input) => {
    const blank = blanks[Number(input.dataset['blank'])];
    if (!blank) return [];
    const judgement = judgeBlank(blank, input.value);
    input.setAttribute('aria-invalid', String(judgement.verdict !== 'right'));
    return [judgement];
  });
  const said = form.querySelector('[data-part="step-said"]');
  if (said) said.textContent = judged.map(({ message }) => message).join(' ');
  if (judged.some(({ verdict }) => verdict !== 'right')) return;
  const formula = form.querySelector('.formula');
  const step = problem.steps[Number(form.dataset['step'])];
  if (formula && step) formula.innerHTML = smallMath(step.tex);
  const next = form.closest('li')?.nextElementSibling;
  next?.removeAttribute('hidden');
  next?.querySelector('input')?.focus();
}
