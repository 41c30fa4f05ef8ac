import { modeOf } from '../../exercises/index.ts';
import type { Problem } from '../../exercises/index.ts';
import type { ProblemSet } from '../../exercises/set/index.ts';
import { escaped } from '../check/html.ts';
import { headHtml } from './head-html.ts';
import type { Printed } from './head-html.ts';

type Item = ProblemSet['items'][number];

/** The worksheet: every problem with room to work and a line for its answer. It holds nothing of the key. */
export const sheetHtml = (set: ProblemSet, printed: Printed): string =>
  `${headHtml(set, 'Problems', 'kit-sheet-title', printed)}` +
  '<p class="kit-name"><span>Name</span><span>Date</span></p>' +
  `<ol class="kit-items">${set.items.map(item).join('')}</ol>`;

/** What is asked, with the options where a letter is asked for. */
export const questionHtml = ({ question, options }: Problem): string =>
  `<p>${escaped(question)}</p>` +
  (options
    ? `<ol class="kit-options">${options.map((option) => `<li>${escaped(option)}</li>`).join('')}</ol>`
    : '');

export const marksHtml = ({ key }: Item): string => `<p class="kit-marks">${key.marks.total} marks</p>`;

const item = (each: Item): string =>
  `<li class="kit-item">${marksHtml(each)}${questionHtml(each.problem)}` +
  `<div class="kit-room">${'<span class="kit-row"></span>'.repeat(each.problem.steps.length + 1)}</div>` +
  `<p class="kit-answer">Answer <span class="kit-gap"></span> ${unit(each.problem)}</p></li>`;

const unit = ({ unit: asks }: Problem): string => (modeOf(asks) === 'letter' ? '(a letter)' : escaped(asks));
