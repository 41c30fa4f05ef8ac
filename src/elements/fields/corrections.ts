import { effect } from '@preact/signals-core';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { copyText } from '../page/copy-text.ts';
import { store } from '../page/page.ts';

/** Holds a published version against the one on the page, and keeps what changed in the comparison. */
export class CorrectionsElement extends HTMLElement {
  #dispose: (() => void) | undefined;
  #sentences: readonly string[] = [];

  connectedCallback(): void {
    this.addEventListener('submit', this.#submitted);
    this.addEventListener('click', this.#pressed);
    this.#dispose = effect(() => this.#show(store.entry.value));
  }

  disconnectedCallback(): void {
    this.#dispose?.();
  }

  #show({ corrections = [] }: ComparisonEntry): void {
    this.#list(
      'history',
      corrections.map(({ date, reason, changed }) => `${date}: ${reason} ${changed.join(' ')}`.trim()),
    );
    // What changed was said of another version.
    this.#found([]);
  }

  #submitted = (event: Event): void => {
    event.preventDefault();
    // The page around has a form of its own.
    event.stopPropagation();
    this.#compare().catch(() => this.#say('This could not be loaded. Check the connection and try again.'));
  };

  async #compare(): Promise<void> {
    this.#found([]);
    this.#say('');
    const { comparedSaid, correctionSentence, corrections, publishedIn } =
      await import('../../compare/corrections.ts');
    const published = publishedIn(this.#value('published'));
    this.#problem('published', typeof published === 'string' ? published : '');
    if (typeof published === 'string') return;
    this.#found(corrections(published.entry, store.entry.value).map(correctionSentence));
    this.#say(comparedSaid(this.#sentences.length, published.runsLeftBehind));
  }

  #pressed = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('[data-correction]') : null;
    const act = button instanceof HTMLElement ? button.dataset['correction'] : undefined;
    const sentences = this.#sentences;
    if (act === 'copy') void this.#copy(sentences);
    if (act !== 'keep') return;
    const [date, reason] = [this.#value('corrected-on'), this.#value('corrected-why')];
    const changed = store.change(
      (entry) => ({
        ...entry,
        corrections: [...(entry.corrections ?? []), { date, reason, changed: [...sentences] }],
      }),
      'correction',
    );
    const problems = changed.ok ? [] : changed.problems;
    const of = (field: string): string =>
      problems
        .filter(({ path }) => path.endsWith(`.${field}`))
        .map(({ message }) => message)
        .join('; ');
    this.#problem('corrected-on', of('date'));
    this.#problem('corrected-why', of('reason'));
    if (changed.ok) this.#say('Kept in the comparison, its link and its file. Undo takes it out again.');
    else this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  };

  async #copy(sentences: readonly string[]): Promise<void> {
    const text = sentences.join('\n');
    this.#say(
      await copyText(
        text,
        'The sentences are copied.',
        'The browser did not let the page copy: mark and copy them below.',
      ),
    );
  }

  #found(sentences: readonly string[]): void {
    this.#sentences = sentences;
    this.#list('changed', sentences);
    for (const button of this.querySelectorAll<HTMLElement>('[data-correction]'))
      button.hidden = sentences.length === 0;
  }

  #list(part: string, texts: readonly string[]): void {
    this.querySelector(`[data-part="${part}"]`)?.replaceChildren(
      ...texts.map((text) => Object.assign(document.createElement('li'), { textContent: text })),
    );
  }

  #value(id: string): string {
    return this.querySelector<HTMLInputElement>(`#${id}`)?.value.trim() ?? '';
  }

  #problem(id: string, message: string): void {
    this.querySelector(`#${id}`)?.setAttribute('aria-invalid', String(message !== ''));
    const place = this.querySelector(`#${id}-problem`);
    if (place && place.textContent !== message) place.textContent = message;
  }

  #say(text: string): void {
    const place = this.querySelector('[data-part="correction-said"]');
    if (place) place.textContent = text;
  }
}
