import { escaped } from '../check/html.ts';
import type { FormQuestion, MatchedForms } from './forms.ts';
import { contextNames } from '../set/names.ts';

export type FormName = 'before' | 'after';

const TITLES: Record<FormName, string> = { before: 'Form 1, before', after: 'Form 2, after' };

const head = ({ context, count, seed }: MatchedForms, title: string, id: string): string =>
  `<header class="kit-head"><div><h2 id="${id}">${title}</h2><p>${count === 1 ? 'One question' : `${count} questions`}. ${escaped(contextNames[context].replace(/ \(.*\)$/, ''))}, seed ${seed}. All numbers are invented.</p></div></header>`;

/** One form as it is handed out: no names, a letter to mark, nothing of the key. */
export const formHtml = (forms: MatchedForms, name: FormName): string =>
  `${head(forms, TITLES[name], `form-${name}-title`)}<p>Mark one letter for each question. No name is needed.</p>` +
  `<ol class="kit-items">${forms[name].map(asked).join('')}</ol>`;

const asked = ({ problem, options }: FormQuestion): string =>
  `<li class="kit-item"><p>${escaped(problem.question)}</p><ol class="kit-options">${options
    .map(({ text }) => `<li>${escaped(text)}</li>`)
    .join('')}</ol></li>`;

/** For the teacher: what stands behind each letter of both forms. */
export const formsKeyHtml = (forms: MatchedForms): string =>
  `${head(forms, 'Key of both forms', 'forms-key-title')}<ol class="kit-items">${forms.before
    .map(
      ({ problem, options }, index) =>
        `<li class="kit-item"><ul class="kit-missteps">${options
          .map(({ idea }) => {
            const place = (form: readonly FormQuestion[]) =>
              form[index]?.options.find((option) => option.idea === idea);
            const [first, second] = [place(forms.before), place(forms.after)];
            const described = problem.missteps.find(({ id }) => id === idea)?.idea ?? '';
            return `<li><b>${first?.letter ?? ''} and ${second?.letter ?? ''}</b> (${escaped(first?.text ?? '')}; ${escaped(second?.text ?? '')}): ${escaped(idea)}. ${escaped(described)}</li>`;
          })
          .join('')}</ul></li>`,
    )
    .join('')}</ol>`;

/** The rows in which the marks are counted: a letter a row, with a box for each form. */
export const countRowsHtml = (forms: MatchedForms): string =>
  forms.before
    .map(({ options }, question) =>
      options
        .map(({ idea }, row) => {
          const cells = (['before', 'after'] as const).map((name) => {
            const place = forms[name][question]?.options.findIndex((option) => option.idea === idea) ?? -1;
            const { letter = '', text = '' } = forms[name][question]?.options[place] ?? {};
            return `<td>${letter}: ${escaped(text)}</td><td><input type="text" inputmode="numeric" autocomplete="off" size="3" data-form="${name}" data-question="${question}" data-option="${place}" aria-label="Question ${question + 1}, ${name}, letter ${letter}"></td>`;
          });
          const number =
            row === 0 ? `<th scope="rowgroup" rowspan="${options.length}">${question + 1}</th>` : '';
          return `<tr>${number}<th scope="row">${escaped(idea)}</th>${cells.join('')}</tr>`;
        })
        .join(''),
    )
    .map((rows) => `<tbody>${rows}</tbody>`)
    .join('');
