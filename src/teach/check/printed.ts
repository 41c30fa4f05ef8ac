import { inWords } from '../../exercises/answer-in-words.ts';
import type { Problem } from '../../exercises/problem.ts';
import { toleranceInWords } from '../../exercises/tolerance-in-words.ts';
import { letter } from '../../exercises/wording.ts';
import { escaped } from './html.ts';
import { workingHtml } from './working.ts';

/** A problem on paper: its number, what is asked, the options by letter, and room for the working. */
export function printedProblem(problem: Problem, number: number): string {
  const { question, options = [] } = problem;
  const asked = options.map((option, index) => `<li>${letter(index)}: ${escaped(option)}</li>`).join('');
  return (
    `<p id="problem-${number}"><strong>${number}.</strong> ${escaped(question)}</p>` +
    (asked === '' ? '' : `<ul class="plain-list">${asked}</ul>`) +
    `<p><small>${escaped(toleranceInWords(problem))} <a href="#answer-${number}">The answer</a></small></p>` +
    '<div class="room"></div>'
  );
}

/** The answer of a printed problem for the back of the book: the result, then its steps. */
export const printedAnswer = (problem: Problem, number: number): string =>
  `<p id="answer-${number}"><a href="#problem-${number}"><strong>${number}.</strong></a> <strong>${escaped(inWords(problem.answer, problem.unit, problem.options))}</strong></p>` +
  `<ol>${workingHtml(problem)}</ol>`;
