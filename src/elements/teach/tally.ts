import { tallyProblems } from '../../teach/tally/tally-problems.ts';
import type { TallyChoice } from '../../teach/tally/tally-problems.ts';
import { tallyDots } from '../../teach/tally/tally-dots.ts';
import { tallyRows } from '../../teach/tally/tally-table.ts';
import { questionHtml } from '../../teach/set/sheet-html.ts';
import { tallyInWords, tallyOf } from '../../teach/tally/tally.ts';
import { largeScreen } from './large-screen.ts';
import { tallyChoice } from './tally-choice.ts';
import { keptOut } from '../page/long-text.ts';

/** Counts the guesses of a class, before and after a lesson. What is typed stays in its fields. */
export class TallyElement extends HTMLElement {
  connectedCallback(): void {
    this.addEventListener('beforeinput', this.#coming);
    this.addEventListener('input', this.#show);
    this.addEventListener('submit', this.#counted);
    this.addEventListener('click', this.#clicked);
    this.#show();
  }

  disconnectedCallback(): void {
    this.removeEventListener('beforeinput', this.#coming);
    this.removeEventListener('input', this.#show);
    this.removeEventListener('submit', this.#counted);
    this.removeEventListener('click', this.#clicked);
  }

  #coming = (event: Event): void => {
    const why = keptOut(event);
    const said = event.target instanceof HTMLTextAreaElement ? this.#part(`said-${event.target.name}`) : null;
    if (said && why !== '') said.textContent = why;
  };

  #counted = (event: Event): void => {
    event.preventDefault();
    this.#show();
  };

  #clicked = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    if (button?.dataset['does'] === 'large') largeScreen(this, button);
  };

  #field = (name: string): string =>
    this.querySelector<HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>(`[name="${name}"]`)
      ?.value ?? '';

  #part = (name: string): HTMLElement | null => this.querySelector(`[data-part="${name}"]`);

  /** What the fields ask for; a seed that is none gets a message, and the worked example stands. */
  #choice(): TallyChoice {
    const { choice, isSeedReadable } = tallyChoice({
      kind: this.#field('kind'),
      context: this.#field('context'),
      level: this.#field('level'),
      seed: this.#field('seed'),
    });
    this.querySelector('[name="seed"]')?.setAttribute('aria-invalid', String(!isSeedReadable));
    const said = this.#part('say-seed');
    if (said) {
      said.textContent = isSeedReadable ? '' : 'Write a whole number from 0 to 4294967295, or nothing.';
      said.hidden = isSeedReadable;
    }
    return choice;
  }

  #show = (): void => {
    const askings = tallyProblems(this.#choice()).map((problem, index) => {
      const name = index === 0 ? 'before' : 'after';
      const tally = tallyOf(problem, this.#field(name));
      const asked = this.#part(`question-${name}`);
      const question = questionHtml(problem);
      if (asked && asked.dataset['question'] !== question) {
        asked.innerHTML = question;
        asked.dataset['question'] = question;
      }
      const any = tally.values.length + tally.unreadable.length > 0;
      const said = this.#part(`said-${name}`);
      if (said) said.textContent = any ? tallyInWords(tally) : '';
      const dots = this.#part(`dots-${name}`);
      if (dots) dots.innerHTML = tallyDots(problem, tally.values, Math.round(dots.clientWidth));
      return { problem, tally: any ? tally : null };
    });
    const rows = this.#part('rows');
    if (rows) rows.innerHTML = tallyRows(askings);
  };
}
