import { contextIds } from '../../exercises/index.ts';
import { countRowsHtml, formHtml, formsKeyHtml } from '../../teach/forms/forms-html.ts';
import { FIRST_FORMS, formsCode, matchedForms, MOST_QUESTIONS } from '../../teach/forms/forms.ts';
import type { FormsRequest, MatchedForms } from '../../teach/forms/forms.ts';
import { moved, movedInWords } from '../../teach/forms/moved.ts';
import { movedPicture } from '../../teach/forms/moved-picture.ts';
import { largeScreen } from './large-screen.ts';

/** A wider picture is drawn larger, not longer. */
const WIDEST = 640;

/** Two matching forms, and the counts of what was chosen. The settings go into the address; the counts stay in their boxes. */
export class FormsElement extends HTMLElement {
  #forms: MatchedForms | undefined;

  connectedCallback(): void {
    this.addEventListener('input', this.#typed);
    this.addEventListener('submit', this.#submitted);
    this.addEventListener('click', this.#clicked);
    addEventListener('hashchange', this.#open);
    this.#open();
  }

  disconnectedCallback(): void {
    this.removeEventListener('input', this.#typed);
    this.removeEventListener('submit', this.#submitted);
    this.removeEventListener('click', this.#clicked);
    removeEventListener('hashchange', this.#open);
  }

  #part = (name: string): HTMLElement | null => this.querySelector(`[data-part="${name}"]`);

  #field = (name: string): HTMLInputElement | HTMLSelectElement | null =>
    this.querySelector(`[name="${name}"]`);

  /** What the address asks for; without a pair of forms in it, what the fields do. */
  #open = (): void => {
    const [, context, count, seed] = /^#forms=([a-z-]+)\.(\d+)\.(\d+)$/.exec(location.hash) ?? [];
    if (context !== undefined)
      for (const [name, value] of Object.entries({ context, count, seed })) {
        const field = this.#field(name);
        if (field && value !== undefined) field.value = value;
      }
    this.#show();
  };

  #typed = (event: Event): void => {
    if (event.target instanceof HTMLElement && event.target.dataset['form'] !== undefined) {
      this.#count();
      return;
    }
    const request = this.#show();
    if (request) history.replaceState(null, '', `#forms=${formsCode(request)}`);
  };

  #submitted = (event: Event): void => {
    event.preventDefault();
  };

  #clicked = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    if (button?.dataset['does'] === 'print') print();
    else if (button?.dataset['does'] === 'large') largeScreen(this, button);
  };

  /** A whole number in a field; a message at the field where it is none, and the last forms stay. */
  #whole(name: string, least: number, most: number): number | undefined {
    const field = this.#field(name);
    const text = field?.value.trim() ?? '';
    const value = /^\d{1,10}$/.test(text) ? Number(text) : NaN;
    const good = value >= least && value <= most;
    field?.setAttribute('aria-invalid', String(!good));
    const said = this.#part(`say-${name}`);
    if (said) {
      said.textContent = good ? '' : `Write a whole number from ${least} to ${most}.`;
      said.hidden = good;
    }
    return good ? value : undefined;
  }

  #show(): FormsRequest | undefined {
    const count = this.#whole('count', 1, MOST_QUESTIONS);
    const seed = this.#whole('seed', 0, 0xffffffff);
    if (count === undefined || seed === undefined) return undefined;
    const context = contextIds.find((id) => id === this.#field('context')?.value) ?? FIRST_FORMS.context;
    const request = { context, count, seed };
    if (this.#forms && formsCode(this.#forms) === formsCode(request)) return request;
    const forms = (this.#forms = matchedForms(request));
    const code = formsCode(forms);
    // What was built stands as it is: a count typed before this half came must not be lost.
    if (this.dataset['code'] !== code) {
      this.dataset['code'] = code;
      for (const name of ['before', 'after'] as const) this.#fill(name, formHtml(forms, name));
      this.#fill('key', formsKeyHtml(forms));
      for (const old of this.querySelectorAll('.kit-counts tbody')) old.remove();
      this.querySelector('.kit-counts')?.insertAdjacentHTML('beforeend', countRowsHtml(forms));
    }
    this.#count();
    return request;
  }

  #fill(name: string, html: string): void {
    const place = this.#part(name);
    if (place) place.innerHTML = html;
  }

  #count(): void {
    if (!this.#forms) return;
    const counts = { before: [] as number[][], after: [] as number[][] };
    let unread = 0;
    for (const box of this.querySelectorAll<HTMLInputElement>('input[data-form]')) {
      const text = box.value.trim();
      const good = /^\d{0,4}$/.test(text);
      box.setAttribute('aria-invalid', String(!good));
      if (!good) unread += 1;
      const of = counts[box.dataset['form'] === 'after' ? 'after' : 'before'];
      (of[Number(box.dataset['question'])] ??= [])[Number(box.dataset['option'])] = good ? Number(text) : 0;
    }
    const moves = moved(this.#forms, counts.before, counts.after);
    const said = [
      ...movedInWords(moves),
      unread > 0 ? 'A box that holds no whole number up to 9999 counts as empty.' : '',
    ].join(' ');
    const place = this.#part('said');
    if (place && place.textContent !== said) place.textContent = said;
    const picture = this.#part('picture');
    if (picture) picture.innerHTML = movedPicture(moves, Math.min(Math.round(picture.clientWidth), WIDEST));
  }
}
