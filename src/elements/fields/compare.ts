import { effect } from '@preact/signals-core';
import { inInput } from '../../compare/field.ts';
import { knifeInputNamed } from '../../compare/knife-inputs.ts';
import { workFieldNamed } from '../../compare/work-fields.ts';
import { angleQuestions } from '../../comparison/angle-questions.ts';
import type { ComparisonEntry, Equalisable, KnifeEntry } from '../../comparison/entry.ts';
import { OwnKeeper } from '../page/keep-own.ts';
import { becomesOwn, changeOwn, example, linkTo, scene, store } from '../page/page.ts';
import { undoKey } from '../page/undo-key.ts';
import { createAnswer } from './answer-beside.ts';
import { showGrid } from './entry-grid.ts';
import { withAngle, withAnotherKnife, withKnife, withRole, withoutKnife } from './knives-changed.ts';
import { showQuestions } from './angle-asked.ts';
import { openPlace } from './open-place.ts';
import { showRoles } from './question-line.ts';

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
  #answer = createAnswer(this);
  /** The text field somebody is typing in: its text is theirs until they leave it. */
  #typing: Typed | null = null;

  connectedCallback(): void {
    const trouble = this.#keeper.begin();
    if (trouble !== '') this.#say(trouble);
    this.addEventListener('input', this.#typed);
    this.addEventListener('change', this.#typed);
    this.addEventListener('click', this.#pressed);
    this.addEventListener('keydown', this.#key);
    let [first, shown] = [true, false];
    this.#dispose.push(
      effect(() => {
        // What was built shows it already.
        if (store.entry.value !== example || shown) this.#show();
        shown = true;
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
      this.#answer.start(),
    );
    openPlace(location.hash);
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
      changeOwn(
        (entry) => withRole(entry, target.dataset['role'] as 'subject' | 'baseline', target.value),
        target.dataset['role'],
      );
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
    const name = target.closest<HTMLElement>('[data-field]')?.dataset['field'] ?? '';
    const id = target.closest<HTMLElement>('[data-knife]')?.dataset['knife'];
    const message =
      id === undefined ? this.#writeWork(name, target.value) : this.#writeKnife(id, name, target);
    clearTimeout(this.#timers.get(target));
    if (message === '' || settled) this.#problem(target, message);
    else
      this.#timers.set(
        target,
        window.setTimeout(() => this.#problem(target, message), patienceMs),
      );
    if (message === '' && settled) this.#show();
  }

  #writeKnife(id: string, name: string, typed: Typed): string {
    const { value } = store.entry;
    const knife = value.knives.find((candidate) => candidate.id === id);
    if (!knife) return '';
    const field = knifeInputNamed(name);
    const beside = typed.closest('.inputs')?.querySelector('select');
    const written = field.write(knife, typed.value, value, beside === typed ? undefined : beside?.value);
    const refused = written.ok
      ? changeOwn((entry) => withKnife(entry, written.knife), `${id}.${name}`)
      : written.message;
    return refused === ''
      ? ''
      : `${knife.name}: ${refused}${/[.?!]$/.test(refused) ? '' : '.'} ${this.#keeps(knife, name)}`;
  }

  /** Which value the answer goes on with. */
  #keeps(knife: KnifeEntry, name: string): string {
    const { text, placeholder } = inInput(knifeInputNamed(name), knife, store.entry.value);
    return `Until then the answer keeps ${text || placeholder}.`;
  }

  #writeWork(name: string, text: string): string {
    const written = workFieldNamed(name).write(store.entry.value, text);
    return written.ok ? changeOwn(() => written.entry, name) : written.message;
  }

  #problem(target: Element, message: string): void {
    target.setAttribute('aria-invalid', String(message !== ''));
    const place =
      document.getElementById(`${target.id}-problem`) ??
      target.closest('[data-field]')?.querySelector('[data-part="problem"]');
    if (place && place.textContent !== message) place.textContent = message;
    this.#answer.keeps(this.querySelector('.entry [aria-invalid="true"]') !== null);
  }

  #even(madeEqual: Equalisable[]): void {
    changeOwn((entry) => ({ ...entry, madeEqual }), 'made equal');
  }

  #pressed = (event: Event): void => {
    const { target } = event;
    if (!(target instanceof Element)) return;
    const opens = target.closest<HTMLElement>('[data-opens]')?.dataset['opens'];
    if (opens !== undefined) {
      event.preventDefault();
      openPlace(`#${opens}`);
      return;
    }
    const button = target.closest<HTMLButtonElement>('[data-act]');
    if (!button) return;
    const id = button.closest<HTMLElement>('[data-knife]')?.dataset['knife'] ?? '';
    const acts: Record<string, () => unknown> = {
      undo: () => this.#step(store.undo),
      redo: () => this.#step(store.redo),
      copy: () => this.#copy('compare/'),
      'copy-explained': () => this.#copy('explained/'),
      'copy-percentages': () => this.#copy('explained/percentages/'),
      picture: () => openPlace('#figure-ruler'),
      example: () => this.#begin(example),
      empty: () => void this.#empty(),
      add: () => this.#add(),
      remove: () => this.#say(changeOwn((entry) => withoutKnife(entry, id), 'remove')),
      included: () => this.#angle(id, (deg) => ({ deg: deg / 2 })),
      'per-side': () => this.#angle(id, (deg) => ({ deg, perSide: true })),
      even: () => this.#even((button.dataset['evened'] ?? '').split(' ').filter(Boolean) as Equalisable[]),
      answer: () => this.#answer.toggle(),
    };
    acts[button.dataset['act'] ?? '']?.();
    button.closest<HTMLDetailsElement>('details.share')?.removeAttribute('open');
  };

  #key = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') {
      this.#answer.close();
      this.querySelector('details.share[open]')?.removeAttribute('open');
    }
    const inText = event.target instanceof HTMLInputElement && event.target.type === 'text';
    const asked = undoKey(event, inText);
    if (!asked) return;
    event.preventDefault();
    this.#step(store[asked]);
  };

  #step(step: () => void): void {
    this.#typing = null;
    step();
    this.#clear();
    this.#show();
  }

  /** No entry is in doubt any more: the fields show what the comparison holds. */
  #clear(): void {
    for (const input of this.querySelectorAll('[aria-invalid="true"]')) this.#problem(input, '');
  }

  #begin(entry: ComparisonEntry): void {
    this.#typing = null;
    this.#keeper.beginAnew();
    store.replace(entry);
    becomesOwn();
    this.#clear();
    this.#show();
  }

  async #empty(): Promise<void> {
    const { emptyEntry } = await import('../../compare/empty-entry.ts');
    this.#begin(emptyEntry(store.entry.value));
    this.querySelector<HTMLInputElement>('[data-row="angle"] input')?.focus();
  }

  async #copy(page: string): Promise<void> {
    const link = await linkTo(page).catch(() => undefined);
    if (link === undefined) {
      this.#say('A part of the page did not come. Press again to fetch it.');
      return;
    }
    try {
      await navigator.clipboard.writeText(link);
      this.#say(`The link is copied: ${link.length} characters. Anyone who opens it sees this comparison.`);
    } catch {
      this.#say(`The browser did not let the page copy. The link is: ${link}`);
    }
  }

  #add(): void {
    const added = withAnotherKnife(store.entry.value);
    if (!added) return;
    const refused = changeOwn(() => withRole(added.entry, 'subject', added.id), 'add');
    this.#say(refused);
    if (refused !== '') return;
    const name = this.querySelector<HTMLInputElement>(`[data-row="name"] [data-knife="${added.id}"] input`);
    name?.focus();
    name?.select();
  }

  #angle(id: string, angleOf: (deg: number) => KnifeEntry['angle']): void {
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
    if (!button) throw new Error(`the Compare page has no button "${act}"`);
    return button;
  }

  /** Brings every field to what the comparison holds; a field being typed in, or with a problem, keeps its text. */
  #show(): void {
    const now = scene.value;
    const { entry } = now;
    showRoles(this, entry);
    for (const grid of this.querySelectorAll<HTMLElement>('.entry-grid')) showGrid(grid, now, this.#typing);
    showQuestions(this, entry);
    for (const place of this.querySelectorAll<HTMLElement>('[data-comparison-fields] [data-field]')) {
      const input = place.querySelector<Typed>('input, select');
      const text = workFieldNamed(place.dataset['field'] ?? '').show(entry);
      if (!input || input === this.#typing || input.getAttribute('aria-invalid') === 'true') continue;
      if (input.value !== text) input.value = text;
    }
    for (const box of this.querySelectorAll<HTMLInputElement>('[data-even]'))
      box.checked = entry.madeEqual.includes(box.value as Equalisable);
    this.querySelector('[data-part="invented"]')?.toggleAttribute('hidden', entry.invented !== true);
    this.querySelector('[data-part="yours"]')?.toggleAttribute('hidden', entry.invented === true);
    this.querySelector('[data-act="add"]')?.toggleAttribute('disabled', entry.knives.length >= 8);
  }
}
