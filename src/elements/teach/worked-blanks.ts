import { judgeShown } from '../../exercises/judge-shown.ts';
import { resultsOf } from '../../topics/worked-results.ts';
import type { Result } from '../../topics/worked-results.ts';
import type { Worked } from '../../topics/worked.ts';

const texts = { fill: 'Fill in the steps yourself', whole: 'Show it whole' };

/** How a blank stands in the formula: numbered where a step has several. */
const square = (index: number, of: number): string =>
  of > 1 ? `<msub><mi>□</mi><mn>${index + 1}</mn></msub>` : '<mi>□</mi>';

/**
 * A worked example with its results left open, a step at a time. Each step keeps its formula as built, out of sight
 * until it is answered, so that paper has the whole. Nothing of it is kept: what was typed stands in the fields, how
 * far the reader is in `data-blank` of the steps.
 */
export class WorkedBlanks {
  #host: HTMLElement;
  #steps: { item: HTMLElement; results: Result[] }[] = [];
  #numbers = '';
  #stop = new AbortController();

  constructor(host: HTMLElement, worked: Worked) {
    this.#host = host;
    const { signal } = this.#stop;
    host.addEventListener('submit', this.#submit, { signal });
    host.addEventListener('click', this.#click, { signal });
    this.#build(worked);
    if (this.#toggle) this.#toggle.textContent = texts.whole;
    this.#say('');
    this.#next(0);
  }

  /** Begins again where the comparison has changed the numbers. */
  show(worked: Worked): void {
    if (JSON.stringify(worked) === this.#numbers) return;
    const held = this.#host.querySelector('.blanks')?.parentElement?.parentElement;
    const focused = held?.contains(document.activeElement) ?? false;
    this.#clear();
    this.#build(worked);
    this.#next(0, focused);
    if (this.#left()) this.#say('The numbers have changed with the comparison, so the steps begin again.');
  }

  /** Shows it whole, as it was. */
  close(): void {
    this.#stop.abort();
    this.#clear();
    if (this.#toggle) this.#toggle.textContent = texts.fill;
    this.#say('');
  }

  get #toggle(): HTMLButtonElement | null {
    return this.#host.querySelector('[data-does="fill"]');
  }

  #say(text: string): void {
    const said = this.#host.querySelector('[data-part="said"]');
    if (said) said.textContent = text;
  }

  #clear(): void {
    for (const { item } of this.#steps) {
      item.querySelector('.blanks')?.remove();
      delete item.dataset['blank'];
    }
  }

  #build(worked: Worked): void {
    this.#numbers = JSON.stringify(worked);
    const items = [...this.#host.querySelectorAll<HTMLElement>('ol > li')];
    this.#steps = worked.steps.flatMap((step, index) => {
      const item = items[index];
      return item ? [{ item, results: resultsOf(step) }] : [];
    });
    this.#steps.forEach(({ item, results }, index) => {
      item.dataset['blank'] = 'waits';
      if (results.length > 0) item.append(this.#blanks(item, results, index));
    });
  }

  /** The formula with its results open, a field for each with its word, and the way on. */
  #blanks(item: HTMLElement, results: Result[], index: number): HTMLElement {
    const step = index + 1;
    const form = document.createElement('form');
    form.className = 'blanks';
    form.autocomplete = 'off';
    form.dataset['step'] = String(index);
    const formula = item.querySelector('.formula')?.cloneNode(true);
    if (formula instanceof Element) form.append(openFormula(formula, results));
    results.forEach(({ unit }, field) => {
      const id = `${this.#host.getAttribute('of') ?? ''}-${step}-${field + 1}`;
      const what = results.length > 1 ? `Result ${field + 1} of step ${step}` : `Result of step ${step}`;
      const row = document.createElement('div');
      row.innerHTML = `<span class="answer-line"><label for="${id}">${what}${unit ? `, in ${unit}` : ''}</label><input type="text" id="${id}" aria-describedby="${id}-said"></span><p role="status" id="${id}-said"></p>`;
      form.append(row);
    });
    const ways = document.createElement('p');
    ways.className = 'tools';
    ways.innerHTML = `<button type="submit">Check step ${step}</button><button type="button" data-does="show-step">Show this step</button>`;
    form.append(ways);
    return form;
  }

  #submit = (event: Event): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const index = Number(form.dataset['step']);
    const judged = this.#of(index).map(({ shown, unit }, field) => {
      const input = form.querySelectorAll('input')[field];
      const judgement = judgeShown(shown, unit ?? 'times', input?.value ?? '');
      input?.setAttribute('aria-invalid', String(judgement.verdict !== 'right'));
      const said = form.querySelectorAll('[role="status"]')[field];
      if (said) said.textContent = judgement.message;
      return judgement.verdict;
    });
    const wrong = judged.findIndex((verdict) => verdict !== 'right');
    if (wrong < 0) this.#done(index, 'right');
    else form.querySelectorAll('input')[wrong]?.focus();
  };

  #click = ({ target }: Event): void => {
    const form =
      target instanceof Element ? target.closest('[data-does="show-step"]')?.closest('form') : undefined;
    if (!form) return;
    const index = Number(form.dataset['step']);
    for (const said of form.querySelectorAll('[role="status"]')) said.textContent = '';
    const first = form.querySelector('[role="status"]');
    if (first) first.textContent = `Shown: ${this.#of(index).map(inWords).join(' and ')}.`;
    this.#done(index, 'shown');
  };

  #of = (index: number): Result[] => this.#steps[index]?.results ?? [];
  #left = (): number => this.#steps.filter(({ results }) => results.length > 0).length;

  /** The formula whole, its word left standing, and the next step. */
  #done(index: number, how: 'right' | 'shown'): void {
    const item = this.#steps[index]?.item;
    if (item) item.dataset['blank'] = how;
    this.#next(index + 1);
  }

  /** Opens the next step that has a blank, and shows whole what comes before it. */
  #next(from: number, focus = true): void {
    const open = this.#steps.findIndex(({ results }, index) => index >= from && results.length > 0);
    const upTo = open < 0 ? this.#steps.length : open;
    for (const { item } of this.#steps.slice(from, upTo)) item.dataset['blank'] = 'none';
    const next = this.#steps[open]?.item;
    if (next) next.dataset['blank'] = 'open';
    else this.#end();
    if (focus) (next?.querySelector('input') ?? this.#toggle)?.focus();
  }

  #end(): void {
    const of = this.#left();
    const right = this.#steps.filter(({ item }) => item.dataset['blank'] === 'right').length;
    this.#say(
      of === 0
        ? 'No step has a number to find with this comparison, so it is shown whole.'
        : `That was the last step. ${right} of ${of} you found yourself.`,
    );
  }
}

const inWords = ({ shown, unit }: Result): string =>
  unit === undefined ? shown : unit === '°' ? `${shown}°` : `${shown} ${unit}`;

/** A formula without its results, wherever they stand in it, and without the TeX that goes along for copying. */
function openFormula(formula: Element, results: Result[]): Element {
  formula.querySelector('annotation')?.remove();
  results.forEach(({ name }, index) => {
    for (const place of formula.querySelectorAll(`[data-value="${name}"]`))
      place.outerHTML = square(index, results.length);
  });
  for (const place of formula.querySelectorAll('[data-value]')) place.removeAttribute('data-value');
  return formula;
}
