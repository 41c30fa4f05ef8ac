import type { ProblemSet } from '../../exercises/set/index.ts';
import { escaped } from '../check/html.ts';
import { workingHtml } from '../check/working.ts';
import { headHtml } from './head-html.ts';
import type { Printed } from './head-html.ts';
import { marksHtml, questionHtml } from './sheet-html.ts';

type Item = ProblemSet['items'][number];

/** The key: steps with their marks, the answer and what counts as right, the missteps, and how to mark. */
export const keyHtml = (set: ProblemSet, printed: Printed): string =>
  `${headHtml(set, 'Key', 'kit-key-title', printed)}` +
  `<ol class="kit-items">${set.items.map(item).join('')}</ol>` +
  `<h3>Marking</h3><ul>${set.guidance.map((rule) => `<li>${escaped(rule)}</li>`).join('')}</ul>`;

/** The steps of a problem, each with its formula. */
export const stepsHtml = ({ problem }: Item): string => `<ol class="kit-steps">${workingHtml(problem)}</ol>`;

const item = (each: Item): string =>
  `<li class="kit-item">${marksHtml(each)}${questionHtml(each.problem)}${stepsHtml(each)}` +
  `<p><strong>${escaped(each.key.answer)}</strong>. ${escaped(each.key.tolerance)}</p>` +
  `<ul class="kit-missteps">${each.key.missteps
    .map(
      ({ answer, id, idea, step }) =>
        `<li><b>${escaped(answer)}</b>: ${escaped(id)} (step ${step}). ${escaped(idea)}</li>`,
    )
    .join('')}</ul></li>`;
