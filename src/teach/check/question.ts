import { modeOf } from '../../exercises/asks.ts';
import type { Problem } from '../../exercises/problem.ts';
import { toleranceInWords } from '../../exercises/tolerance-in-words.ts';
import { letter } from '../../exercises/wording.ts';
import { escaped } from './html.ts';

/** The form of a problem: the question with a box to type in, or with the options to choose from. */
export function questionHtml(problem: Problem, id: string): string {
  const { question, options } = problem;
  const button = '<button type="submit">Check</button>';
  return options
    ? `<fieldset class="options"><legend>${escaped(question)}</legend>${options
        .map(
          (option, index) =>
            `<label><input type="radio" name="${id}" value="${letter(index)}" aria-describedby="${id}-said"> ${letter(index)}: ${escaped(option)}</label>`,
        )
        .join('')}</fieldset><p class="answer-line">${button}</p>`
    : `<label for="${id}">${escaped(question)}</label><span class="answer-line"><input id="${id}" name="answer" type="text" autocomplete="off" aria-describedby="${id}-how ${id}-said">${button}</span><small id="${id}-how">${toleranceInWords(problem)} ${howToWrite(problem)}</small>`;
}

const howToWrite = ({ unit }: Problem): string =>
  modeOf(unit) === 'quantity'
    ? 'Write 4.5, 4,5 or 9/2 as you like.'
    : 'Write 4.49, 4,49, +349% or 9/4 as you like.';
