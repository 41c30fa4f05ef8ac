import { toleranceInWords } from '../../exercises/index.ts';
import type { ProblemSet } from '../../exercises/set/index.ts';
import { escaped } from '../check/html.ts';
import { questionHtml } from './sheet-html.ts';

/** The set to be done on the screen: a field for each answer. It holds nothing of the key. */
export const doHtml = ({ items, version, seed }: ProblemSet): string =>
  `<h2 id="kit-do-title">Problems, version ${version}, seed ${seed}</h2><ol class="kit-items">${items
    .map(
      ({ number, problem }) =>
        `<li class="kit-item"><form data-number="${number}">${questionHtml(problem)}` +
        `<span class="answer-line"><input type="text" id="kit-do-${number}" autocomplete="off" ` +
        `aria-label="Answer to problem ${number}" aria-describedby="kit-near-${number} kit-said-${number}">` +
        `<button type="submit">Check</button></span> ` +
        `<small id="kit-near-${number}">${escaped(toleranceInWords(problem))}</small></form>` +
        `<p role="status" id="kit-said-${number}"></p><div class="kit-worked"></div></li>`,
    )
    .join('')}</ol><p role="status" class="live-answer" data-part="score"></p>`;
