import { shownNames } from '../../comparison/knife-names.ts';
import { effect } from '@preact/signals-core';
import { knifeInputNamed } from '../../compare/knife-inputs.ts';
import { workFieldNamed } from '../../compare/work-fields.ts';
import { angleQuestions } from '../../comparison/angle-questions.ts';
import type { Equalisable, KnifeEntry, ComparisonEntry } from '../../comparison/entry.ts';
import { plain } from '../../scene/show.ts';
import { OwnKeeper } from '../page/keep-own.ts';
import { changeOwn, example, linkTo, store } from '../page/page.ts';
import { undoKey } from '../page/undo-key.ts';
import { withAngle, withAnotherKnife, withKnife, withRole, withoutKnife } from './knives-changed.ts';

type Typed = HTMLInputElement | HTMLSelectElement;

/** How long a half-typed text may stand before the page says it can't read it. */
const patienceMs = 700;

const isTyped = (target: EventTarget | null): target is Typed =>
  target instanceof HTMLInputElement || target instanceof HTMLSelectElement;

/** The Compare page: binds the fields on the page to the comparison, and the comparison to address and storage. Owns no number. */
export class CompareElement extends HTMLElement {
  #dispose: (() => void)[] = [];
  #timers = new Map<Element, number>();
  #keeper = new OwnKeeper();
  /** The text field somebody is typing in: its text is theirs until they leave it. */
  #typing: Typed | null = null;

  connectedCallback(): void {
    const trouble = this.#keeper.begin();
    if (trouble !== '') this.#say(trouble);
    this.addEventListener('input', this.#typed);
    this.addEventListener('change', this.#typed);
    this.addEventListener('click', this.#pressed);
    this.addEventListener('keydown', this.#key);
    let first = true;
    this.#dispose.push(
      effect(() => {
        this.#show(store.entry.value);
      }),
      effect(() => {
        const entry = store.entry.value;
        if (!first) this.#keeper.follow(entry);
        first = false;
      }),
      effect(() => {
        this.#button('undo').disabled = !store.canUndo.value;
        this.#button('redo').disabled = !store.canRedo.value;
      }),
    );
  }

  disconnectedCallback(): void {
    for (const dispose of this.#dispose.splice(0)) dispose();
    this.#keeper.end();
    this.removeEventListener('input', this.#typed);
    this.removeEventListener('change', this.#typed);
    this.removeEventListener('click', this.#pressed);
    this.removeEventListener('keydown', this.#key);
  }

  #typed = (event: Event): void => {
    const target = event.target;
    if (!isTyped(target)) return;
    this.#typing =
      event.type === 'input' && target instanceof HTMLInputElement && target.type === 'text' ? target : null;
    if (target.dataset['role']) {
      this.#role(target.dataset['role'] as 'subject' | 'baseline', target.value);
    } else if (target.dataset['even'] !== undefined) {
      this.#even(
        [...this.querySelectorAll<HTMLInputElement>('[data-even]:checked')].map(
          ({ value }) => value as Equalisable,
        ),
      );
    } else if (target.closest('[data-field]')) {
      this.#write(target, event.type === 'change');
    }
  };

  #write(target: Typed, settled: boolean): void {
    const place = target.closest<HTMLElement>('[data-field]');
    const name = place?.dataset['field'] ?? '';
    const id = target.closest<HTMLElement>('[data-knife]')?.dataset['knife'];
    const message =
      id === undefined ? this.#writeWork(name, target.value) : this.#writeKnife(id, name, target.value);
    clearTimeout(this.#timers.get(target));
    if (message === '' || settled) this.#problem(target, message);
    else
      this.#timers.set(
        target,
        window.setTimeout(() => this.#problem(target, message), patienceMs),
      );
    if (message === '' && settled) this.#show(store.entry.value);
  }

  #writeKnife(id: string, name: string, text: string): string {
    const knife = store.entry.value.knives.find((candidate) => candidate.id === id);
    if (!knife) return '';
    const written = knifeInputNamed(name).write(knife, text, store.entry.value);
    return written.ok
      ? changeOwn((entry) => withKnife(entry, written.knife), `${id}.${name}`)
      : written.message;
  }

  #writeWork(name: string, text: string): string {
    const written = workFieldNamed(name).write(store.entry.value, text);
    return written.ok ? changeOwn(() => written.entry, name) : written.message;
  }

  #problem(target: Element, message: string): void {
    target.setAttribute('aria-invalid', String(message !== ''));
    const place = target.closest('[data-field]')?.querySelector('[data-part="problem"]');
    if (place && place.textContent !== message) place.textContent = message;
  }

  #role(role: 'subject' | 'baseline', id: string): void {
    changeOwn((entry) => withRole(entry, role, id), role);
  }

  #even(madeEqual: Equalisable[]): void {
    changeOwn((entry) => ({ ...entry, madeEqual }), 'even up');
  }

  #pressed = (event: Event): void => {
    const button =
      event.target instanceof Element ? event.target.closest<HTMLButtonElement>('[data-act]') : null;
    if (!button) return;
    const id = button.closest<HTMLElement>('[data-knife]')?.dataset['knife'] ?? '';
    const acts: Record<string, () => unknown> = {
      undo: () => this.#step(store.undo),
      redo: () => this.#step(store.redo),
      copy: () => this.#copy('bench/'),
      'copy-telling': () => this.#copy('telling/'),
      loft: () => {
        this.#keeper.beginAnew();
        store.replace(example);
      },
      add: () => this.#add(),
      remove: () => this.#remove(id),
      included: () => this.#answer(id, (deg) => ({ deg: deg / 2 })),
      'per-side': () => this.#answer(id, (deg) => ({ deg, perSide: true })),
      even: () => this.#even((button.dataset['evened'] ?? '').split(' ').filter(Boolean) as Equalisable[]),
    };
    acts[button.dataset['act'] ?? '']?.();
  };

  #key = (event: KeyboardEvent): void => {
    const inText = event.target instanceof HTMLInputElement && event.target.type === 'text';
    const asked = undoKey(event, inText);
    if (!asked) return;
    event.preventDefault();
    this.#step(store[asked]);
  };

  #step(step: () => void): void {
    this.#typing = null;
    step();
    for (const input of this.querySelectorAll('[aria-invalid="true"]')) this.#problem(input, '');
    this.#show(store.entry.value);
  }

  async #copy(page: string): Promise<void> {
    const link = await linkTo(page).catch(() => undefined);
    if (link === undefined) {
      this.#say('A part of the page did not come. Press again to fetch it.');
      return;
    }
    try {
      await navigator.clipboard.writeText(link);
      this.#say(`The link is copied: ${link.length} characters. Whoever opens it sees this line-up.`);
    } catch {
      this.#say(`The browser did not let the page copy. The link is: ${link}`);
    }
  }

  #add(): void {
    const added = withAnotherKnife(store.entry.value);
    if (!added) return;
    this.#say(changeOwn(() => added.entry, 'add'));
    this.querySelector<HTMLInputElement>(`[data-knife="${added.id}"] [data-field="name"] input`)?.focus();
  }

  #remove(id: string): void {
    this.#say(changeOwn((entry) => withoutKnife(entry, id), 'remove'));
  }

  #answer(id: string, angleOf: (deg: number) => KnifeEntry['angle']): void {
    const question = angleQuestions(store.entry.value).find(({ knife }) => knife === id);
    if (!question) return;
    changeOwn((entry) => withAngle(entry, id, angleOf(question.deg)), 'question');
  }

  #say(text: string): void {
    const place = this.querySelector('[data-part="said"]');
    if (place) place.textContent = text;
  }

  #button(act: string): HTMLButtonElement {
    const button = this.querySelector<HTMLButtonElement>(`[data-act="${act}"]`);
    if (!button) throw new Error(`the bench has no button "${act}"`);
    return button;
  }

  /** Brings every field to what the comparison holds; a field being typed in, or with a problem, keeps its text. */
  #show(entry: ComparisonEntry): void {
    this.#cards(entry);
    for (const place of this.querySelectorAll<HTMLElement>('.work[data-line-up] [data-field]')) {
      this.#fill(place, workFieldNamed(place.dataset['field'] ?? '').show(entry));
    }
    const questions = angleQuestions(entry);
    for (const knife of entry.knives) {
      const card = this.querySelector<HTMLElement>(`[data-knife="${knife.id}"]`);
      if (card)
        this.#showKnife(
          card,
          knife,
          entry,
          questions.find((question) => question.knife === knife.id),
        );
    }
    for (const box of this.querySelectorAll<HTMLInputElement>('[data-even]'))
      box.checked = entry.madeEqual.includes(box.value as Equalisable);
    const invented = this.querySelector<HTMLElement>('[data-part="invented"]');
    if (invented) invented.hidden = entry.invented !== true;
  }

  #showKnife(
    card: HTMLElement,
    knife: KnifeEntry,
    entry: ComparisonEntry,
    question: ReturnType<typeof angleQuestions>[number] | undefined,
  ): void {
    for (const place of card.querySelectorAll<HTMLElement>('[data-field]')) {
      const field = knifeInputNamed(place.dataset['field'] ?? '');
      place.hidden = field.applies?.(knife) === false;
      if (place.hidden) continue;
      this.#fill(place, field.show(knife, entry));
      const unit = place.querySelector('[data-part="unit"]');
      if (unit && field.kind === 'text' && field.unit) unit.textContent = field.unit(entry);
    }
    for (const radio of card.querySelectorAll<HTMLInputElement>('[data-role]')) {
      radio.checked = entry[radio.dataset['role'] as 'subject' | 'baseline'] === knife.id;
    }
    const legend = card.querySelector('[data-part="legend"]');
    if (legend) legend.textContent = shownNames(entry.knives).get(knife.id) ?? knife.name;
    const asked = card.querySelector<HTMLElement>('[data-part="question"]');
    const text = card.querySelector('[data-part="question-text"]');
    if (!asked || !text) return;
    asked.hidden = question === undefined;
    if (question) {
      text.textContent = `${plain(question.deg)}° per side looks like an included angle. If it is, the angle per side is ${plain(question.perSideIfIncluded)}°. Which is it?`;
    }
  }

  #fill(place: HTMLElement, text: string): void {
    const input = place.querySelector<Typed>('input, select');
    if (!input || input.value === text || input.getAttribute('aria-invalid') === 'true') return;
    if (input === this.#typing) return;
    input.value = text;
  }

  /** One card a knife, in the order of the comparison. */
  #cards({ knives }: ComparisonEntry): void {
    const holder = this.querySelector('.knives');
    const template = this.querySelector<HTMLTemplateElement>('#knife-card');
    if (!holder || !template) return;
    for (const card of holder.querySelectorAll<HTMLElement>('[data-knife]')) {
      if (!knives.some(({ id }) => id === card.dataset['knife'])) card.remove();
    }
    for (const { id } of knives) {
      if (holder.querySelector(`[data-knife="${id}"]`)) continue;
      const card = template.content.firstElementChild?.cloneNode(true);
      if (!(card instanceof HTMLElement)) continue;
      const old = card.dataset['knife'] ?? '';
      card.dataset['knife'] = id;
      for (const element of card.querySelectorAll('[id], [for], [aria-describedby], [data-role]')) {
        for (const attribute of ['id', 'for', 'aria-describedby']) {
          const value = element.getAttribute(attribute);
          if (value) element.setAttribute(attribute, value.replaceAll(`${old}-`, `${id}-`));
        }
        if (element instanceof HTMLInputElement && element.dataset['role']) element.value = id;
      }
      holder.append(card);
    }
  }
}
