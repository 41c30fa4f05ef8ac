import { effect } from '@preact/signals-core';
import { withShownNames } from '../../comparison/knife-names.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import type { Scene } from '../../scene/scene.ts';
import { hasSeries } from '../../scene/has-series.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { withRole } from '../fields/knives-changed.ts';
import { OwnKeeper } from '../page/keep-own.ts';
import { linkTo, scene, store } from '../page/page.ts';
import { undoKey } from '../page/undo-key.ts';
import { showClosed } from './runs-closed.ts';
import type * as RunsFiles from './runs-files.ts';
import { RunsLog } from './runs-log.ts';
import { RunsParts } from './runs-parts.ts';
import { RunsSheet } from './runs-sheet.ts';
import { RunsTexts } from './runs-texts.ts';

type Typed = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

const isTyped = (target: EventTarget | null): target is Typed =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLSelectElement ||
  target instanceof HTMLTextAreaElement;

/** The page of runs: binds its fields to log and plan of the comparison, and the comparison to address and storage. */
export class RunsElement extends HTMLElement {
  #dispose: (() => void)[] = [];
  #parts = new RunsParts(this, () => this.#show(scene.value));
  #log = new RunsLog(this.#parts);
  #sheet = new RunsSheet(this.#parts, this.#log);
  #texts = new RunsTexts(this.#parts, this.#log);
  #keeper = new OwnKeeper();

  connectedCallback(): void {
    const trouble = this.#keeper.begin();
    if (trouble !== '') this.#parts.say(trouble);
    this.addEventListener('input', this.#typed);
    this.addEventListener('change', this.#typed);
    this.addEventListener('click', this.#pressed);
    this.addEventListener('submit', this.#submitted);
    this.addEventListener('keydown', this.#key);
    this.#texts.listen();
    addEventListener('afterprint', this.#printed);
    let first = true;
    this.#dispose.push(
      effect(() => this.#show(scene.value)),
      effect(() => {
        const entry = store.entry.value;
        if (!first) this.#keeper.follow(entry);
        first = false;
      }),
      effect(() => {
        this.#parts.button('undo').disabled = !store.canUndo.value;
        this.#parts.button('redo').disabled = !store.canRedo.value;
      }),
    );
  }

  disconnectedCallback(): void {
    for (const dispose of this.#dispose.splice(0)) dispose();
    this.#keeper.end();
    removeEventListener('afterprint', this.#printed);
  }

  #typed = (event: Event): void => {
    const { target } = event;
    if (!isTyped(target)) return;
    const settled = event.type === 'change';
    const role = target.dataset['role'];
    if (role === 'subject' || role === 'baseline') this.#role(role, target.value);
    else if (target.id === 'log-file' && target instanceof HTMLInputElement) {
      const [file] = target.files ?? [];
      if (file && settled) this.#texts.with((reader) => reader.file(file));
      if (settled) target.value = '';
    } else if (target.closest('[data-part="found"]')) {
      if (settled) this.#texts.with((reader) => reader.changed());
    } else if (target.closest('[data-part="plan"]')) this.#sheet.typed(target, settled);
    else if (target.closest('[data-part="form"]')) this.#parts.problem(target, '');
  };

  #role(role: 'subject' | 'baseline', id: string): void {
    // Which two are looked at is a question, not a change: an invented comparison stays one.
    store.change((entry) => withRole(entry, role, id), role);
  }

  #submitted = (event: Event): void => {
    event.preventDefault();
    this.#log.enter();
  };

  /** What the buttons do, by their names; those of a row of the log with its place. */
  #acts: Record<string, (index: number) => void> = {
    copy: () => this.#copy(),
    file: () => this.#saveFile('comparison'),
    csv: () => this.#saveFile('log'),
    undo: () => this.#step(store.undo),
    redo: () => this.#step(store.redo),
    empty: () => this.#parts.say(this.#log.setRuns([], 'empty') || 'The log is empty. Undo brings it back.'),
    all: () => this.#log.showRows(true),
    change: (index) => this.#log.startChanging(index),
    'take-out': (index) => this.#log.takeOut(index),
    'stop-changing': () => this.#log.stopChanging(),
    'print-sheet': () => this.#sheet.printSheet(),
    'print-key': () => this.#sheet.print('key'),
    shuffle: () => this.#sheet.shuffle(),
    'look-early': () => this.#sheet.lookEarly(),
    close: () => this.#sheet.close(),
    'open-again': () => this.#sheet.openAgain(),
    look: () => this.#texts.with((reader) => reader.pasted()),
    'take-add': () => this.#texts.with((reader) => reader.take(this.#log.ownRuns())),
    'take-replace': () => this.#texts.with((reader) => reader.take([])),
    drop: () => this.#texts.with((reader) => reader.drop()),
    cancel: () => this.#texts.with((reader) => reader.cancel()),
  };

  #pressed = (event: Event): void => {
    const button =
      event.target instanceof Element ? event.target.closest<HTMLButtonElement>('[data-act]') : null;
    if (button) this.#acts[button.dataset['act'] ?? '']?.(Number(button.dataset['run'] ?? -1));
  };

  #key = (event: KeyboardEvent): void => {
    const inText = isTyped(event.target) && !(event.target instanceof HTMLSelectElement);
    const asked = undoKey(event, inText);
    if (!asked) return;
    event.preventDefault();
    this.#step(store[asked]);
  };

  #step(step: () => void): void {
    step();
    this.#log.stopChanging();
    for (const input of this.querySelectorAll('[aria-invalid="true"]')) this.#parts.problem(input, '');
    this.#sheet.showFields();
  }

  #copy(): void {
    this.#withFiles(async ({ copyLink }) => this.#parts.say(await copyLink(await linkTo('test/'))));
  }

  #saveFile(what: 'comparison' | 'log'): void {
    const entry = store.entry.value;
    this.#withFiles(({ saveComparison, saveLog }) =>
      this.#parts.say(what === 'log' ? saveLog(entry) : saveComparison(entry)),
    );
  }

  /** Does something that takes the log along, with what is fetched for it. */
  #withFiles(act: (part: typeof RunsFiles) => void): void {
    this.#parts.fetched('The writer of files', import('./runs-files.ts'), act);
  }

  #printed = (): void => {
    delete document.documentElement.dataset['printing'];
  };

  #show(now: Scene): void {
    const { entry } = now;
    this.#showRoles(entry);
    this.#log.showKnives();
    const invented = this.#parts.part('invented');
    if (invented) invented.hidden = entry.invented !== true;
    this.#log.show(entry);
    this.#showEndPoints(now);
    this.#sheet.show();
    showClosed(this, entry.plan ?? firstPlan);
  }

  #showRoles(entry: ComparisonEntry): void {
    for (const role of ['subject', 'baseline'] as const) {
      const select = this.querySelector<HTMLSelectElement>(`[data-role="${role}"]`);
      if (!select) continue;
      select.replaceChildren(...withShownNames(entry.knives).map(({ id, name }) => new Option(name, id)));
      select.value = entry[role];
    }
  }

  /** What is about readings is put in, and fetched, once there are such. */
  #showEndPoints(now: Scene): void {
    const endPoints = this.#parts.part('stops');
    if (!endPoints) return;
    endPoints.hidden = !hasSeries(now);
    const kept = endPoints.querySelector('template');
    if (kept && !endPoints.hidden) kept.replaceWith(kept.content);
  }
}
