import { effect } from '@preact/signals-core';
import type * as RunFields from '../../test/run-fields.ts';
import type { RunTexts } from '../../test/run-fields.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import { createStorage } from '../../comparison/saved/last.ts';
import { decodeLink } from '../../comparison/link/codec.ts';
import { logCells } from '../../test/log-rows.ts';
import type { Scene } from '../../scene/scene.ts';
import { hasSeries } from '../../scene/logged-name.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import type { Run } from '../../runs/log.ts';
import { withRole } from '../fields/knives-changed.ts';
import { carriesComparison } from '../page/address.ts';
import { keepsOwn } from '../page/keep-own.ts';
import { atNextTouch } from '../page/next-touch.ts';
import { becomesOwn, changeOwn, example, linkTo, scene, store } from '../page/page.ts';
import { undoKey } from '../page/undo-key.ts';
import { keptComesBack, knifeChoices, runSaid } from './log-decisions.ts';
import { showClosed } from './runs-closed.ts';
import type * as RunsFiles from './runs-files.ts';
import type { Import } from './runs-import.ts';
import type * as PlanPart from './runs-plan.ts';
import { fillRows } from '../page/table-rows.ts';

type Typed = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** How long a half-typed number may stand before the page says it can't read it. */
const patienceMs = 700;
/** A text too long for a field to hold without the page standing still. */
const longPaste = 256 * 1024;
/** So many rows of the log are shown at first. */
const shownFirst = 100;

/** What the log is shown by: its runs, and whether they can be changed. */
const logOf = ({ runs, invented, plan }: ComparisonEntry): readonly unknown[] => [
  runs,
  invented,
  plan?.closed,
];

const isTyped = (target: EventTarget | null): target is Typed =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLSelectElement ||
  target instanceof HTMLTextAreaElement;

/** The page of runs: binds its fields to log and plan of the comparison, and the comparison to address and storage. */
export class RunsElement extends HTMLElement {
  #dispose: (() => void)[] = [];
  #keeper = createStorage();
  #save = keepsOwn(this.#keeper, (text) => this.#say(text));
  #timers = new Map<Element, number>();
  #import: Promise<Import> | undefined;
  #planPart: typeof PlanPart | undefined;
  #planAsked = false;
  /** Codes of the sheet under which runs may be logged. */
  #codes: readonly string[] = [];
  /** The log as its table shows it. */
  #logged: readonly unknown[] = [];

  connectedCallback(): void {
    this.#recall();
    this.addEventListener('input', this.#typed);
    this.addEventListener('change', this.#typed);
    this.addEventListener('click', this.#pressed);
    this.addEventListener('submit', this.#submitted);
    this.addEventListener('keydown', this.#key);
    const place = this.#part('import');
    place?.addEventListener('dragover', this.#dragged);
    place?.addEventListener('dragleave', this.#dragged);
    place?.addEventListener('drop', this.#dropped);
    place?.addEventListener('paste', this.#pasted);
    addEventListener('afterprint', this.#printed);
    let first = true;
    this.#dispose.push(
      effect(() => this.#show(scene.value)),
      effect(() => {
        const entry = store.entry.value;
        if (!first) this.#save(entry);
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
    removeEventListener('afterprint', this.#printed);
  }

  /**
   * Without a comparison in the address the last one kept on this machine comes back; and with it the runs that were too
   * many for the address, if it is the same comparison.
   */
  #recall(): void {
    const linked = carriesComparison(location.hash) ? decodeLink(location.hash) : null;
    if (linked && !(linked.ok && linked.runsLeftBehind)) return;
    const kept = this.#keeper.load();
    if (!kept.ok) this.#say(kept.message);
    else if (kept.entry && keptComesBack(kept.entry, linked)) {
      store.replace(kept.entry);
      becomesOwn();
      const message = document.getElementById('address-message');
      if (message && linked) message.hidden = true;
    }
  }

  #setRuns(runs: Run[], label: string): string {
    if (store.entry.value.plan?.closed) return 'The log is closed. Open it again to change it.';
    return changeOwn((entry) => {
      const { runs: _before, ...rest } = entry;
      return runs.length > 0 ? { ...rest, runs } : rest;
    }, label);
  }

  /** The log that a run of the visitor's own joins: none of the invented ones. */
  #ownRuns(): readonly Run[] {
    const { runs = [], invented } = store.entry.value;
    return invented ? [] : runs;
  }

  #typed = (event: Event): void => {
    const { target } = event;
    if (!isTyped(target)) return;
    const role = target.dataset['role'];
    if (role === 'subject' || role === 'baseline') this.#role(role, target.value);
    else if (target.id === 'log-file' && target instanceof HTMLInputElement) {
      const [file] = target.files ?? [];
      if (file && event.type === 'change') void this.#importing((panel) => panel.file(file));
      if (event.type === 'change') target.value = '';
    } else if (target.closest('[data-part="found"]')) {
      if (event.type === 'change') void this.#importing((panel) => panel.changed());
    } else if (target.closest('[data-part="plan"]')) this.#plan(target, event.type === 'change');
    else if (target.closest('[data-part="form"]')) this.#problem(target, '');
  };

  #role(role: 'subject' | 'baseline', id: string): void {
    // Which two are looked at is a question, not a change: an invented comparison stays one.
    store.change((entry) => withRole(entry, role, id), role);
  }

  #plan(target: Typed, settled: boolean): void {
    const { value } = target;
    this.#withPlan(({ writtenPlan, showPlanFields }) => {
      const name = target.closest<HTMLElement>('[data-field]')?.dataset['field'] ?? '';
      const written = writtenPlan(store.entry.value.plan, name, value);
      const message = written.ok
        ? this.#problems(store.change((entry) => ({ ...entry, plan: written.plan }), `plan ${name}`))
        : written.message;
      clearTimeout(this.#timers.get(target));
      if (message === '' || settled) this.#problem(target, message);
      else
        this.#timers.set(
          target,
          window.setTimeout(() => this.#problem(target, message), patienceMs),
        );
      if (settled && message === '') showPlanFields(this, scene.value);
    });
  }

  /** Does something with the plan, which is fetched once there is another comparison than the page's own. */
  #withPlan(act: (part: typeof PlanPart) => void): void {
    this.#planAsked = true;
    if (this.#planPart) {
      act(this.#planPart);
      return;
    }
    this.#fetched('The plan', import('./runs-plan.ts'), (part) => {
      this.#planPart = part;
      act(part);
    });
  }

  /** Does something with what is fetched for it; where that does not come the page says so, until it has. */
  #fetched<Part>(what: string, fetched: Promise<Part>, act: (part: Part) => void): void {
    const notLoaded = `${what} could not be loaded. Check the connection and try again.`;
    fetched.then(
      (part) => {
        if (this.#part('said')?.textContent === notLoaded) this.#say('');
        act(part);
      },
      () => {
        this.#say(notLoaded);
        // What is shown of the plan is asked for once more.
        atNextTouch(() => this.#show(scene.value));
      },
    );
  }

  #problems = (changed: ReturnType<typeof store.change>): string =>
    changed.ok ? '' : changed.problems.map(({ message }) => message).join('; ');

  #problem(target: Element, message: string): void {
    target.setAttribute('aria-invalid', String(message !== ''));
    const place = target.closest('[data-field]')?.querySelector('[data-part="problem"]');
    if (place && place.textContent !== message) place.textContent = message;
  }

  #submitted = (event: Event): void => {
    event.preventDefault();
    this.#withForm((fields) => this.#enter(fields));
  };

  /** Does something with the fields of a run, which are fetched when a run is first typed. */
  #withForm(act: (fields: typeof RunFields) => void): void {
    this.#fetched('The form', import('../../test/run-fields.ts'), act);
  }

  #enter({ readRun, runFields }: typeof RunFields): void {
    const form = this.#part('form');
    if (!form) return;
    const runs = this.#ownRuns();
    const index = Number(form.dataset['changing'] ?? -1);
    const before = runs[index];
    const read = readRun(
      Object.fromEntries(runFields.map(({ name }) => [name, this.#input(name)?.value ?? ''])) as RunTexts,
    );
    const problems = read.ok ? [] : read.problems;
    for (const { name } of runFields) {
      const input = this.#input(name);
      const own = problems.filter(({ field }) => field === name);
      if (input) this.#problem(input, own.map(({ message }) => message).join('; '));
    }
    if (!read.ok) {
      form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const { run } = read;
    const next = before ? runs.map((old) => (old === before ? run : old)) : [...runs, run];
    const refused = this.#setRuns(next, 'run');
    this.#say(refused || runSaid(logCells(run), before !== undefined, next.length));
    if (refused !== '') return;
    this.#stopChanging();
    // The next run differs in these two at least; the rest is likely the same.
    for (const name of ['reach', 'sharpening', 'series', 'cycles']) {
      const input = this.#input(name);
      if (input) input.value = '';
    }
    this.#input('reach')?.focus();
  }

  #pressed = (event: Event): void => {
    const button =
      event.target instanceof Element ? event.target.closest<HTMLButtonElement>('[data-act]') : null;
    if (!button) return;
    const index = Number(button.dataset['run'] ?? -1);
    const acts: Record<string, () => unknown> = {
      copy: () => this.#copy(),
      file: () => this.#saveFile('line-up'),
      csv: () => this.#saveFile('log'),
      undo: () => this.#step(store.undo),
      redo: () => this.#step(store.redo),
      empty: () => this.#say(this.#setRuns([], 'empty') || 'The log is empty. Undo brings it back.'),
      all: () => this.#showLog(true),
      change: () => this.#withForm((fields) => this.#startChanging(index, fields)),
      'take-out': () => this.#takeOut(index),
      'stop-changing': () => this.#stopChanging(),
      'print-sheet': () => this.#printSheet(),
      'print-key': () => this.#print('key'),
      shuffle: () => this.#shuffle(),
      close: () => this.#close(),
      'open-again': () => this.#openAgain(),
      look: () => this.#importing((panel) => panel.pasted()),
      'take-add': () => this.#importing((panel) => panel.take(this.#ownRuns())),
      'take-replace': () => this.#importing((panel) => panel.take([])),
      drop: () => this.#importing((panel) => panel.drop()),
      cancel: () => this.#importing((panel) => panel.cancel()),
    };
    acts[button.dataset['act'] ?? '']?.();
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
    this.#stopChanging();
    for (const input of this.querySelectorAll('[aria-invalid="true"]')) this.#problem(input, '');
    this.#withPlan((part) => part.showPlanFields(this, scene.value));
  }

  #takeOut(index: number): void {
    const runs = this.#ownRuns();
    const gone = runs[index];
    if (!gone) return;
    this.#stopChanging();
    this.#setRuns(
      runs.filter((_, at) => at !== index),
      'take out',
    );
    this.#say(`Taken out: ${logCells(gone).slice(0, 4).join(', ')}. Undo brings it back.`);
    this.#part('log')?.closest<HTMLElement>('.scroll')?.focus();
  }

  #startChanging(index: number, { showRun, runFields }: typeof RunFields): void {
    const form = this.#part('form');
    const run = this.#ownRuns()[index];
    if (!form || !run) return;
    form.dataset['changing'] = String(index);
    const texts = showRun(run);
    for (const { name } of runFields) {
      const input = this.#input(name);
      if (!input) continue;
      this.#problem(input, '');
      if (name === 'knife' && input instanceof HTMLSelectElement) this.#knives(input, [texts.knife]);
      input.value = texts[name];
    }
    this.#label('Change this run', 'Change it', false);
    this.#input('reach')?.focus();
  }

  #stopChanging(): void {
    const form = this.#part('form');
    if (form?.dataset['changing'] === undefined) return;
    delete form.dataset['changing'];
    this.#label('Add a run', 'Add this run', true);
  }

  #label(title: string, submit: string, hidden: boolean): void {
    const [head, button] = [this.#part('form-title'), this.#part('submit')];
    if (head) head.textContent = title;
    if (button) button.textContent = submit;
    this.#button('stop-changing').hidden = hidden;
  }

  #copy(): void {
    const link = linkTo('runs/');
    this.#withFiles(async ({ copyLink }) => this.#say(await copyLink(link)));
  }

  #saveFile(what: 'line-up' | 'log'): void {
    const entry = store.entry.value;
    this.#withFiles(({ saveComparison, saveLog }) =>
      this.#say(what === 'log' ? saveLog(entry) : saveComparison(entry)),
    );
  }

  /** Does something that takes the log along, with what is fetched for it. */
  #withFiles(act: (part: typeof RunsFiles) => void): void {
    this.#fetched('The writer of files', import('./runs-files.ts'), act);
  }

  #print(what: 'sheet' | 'key'): void {
    document.documentElement.dataset['printing'] = what;
    print();
  }

  #printed = (): void => {
    delete document.documentElement.dataset['printing'];
  };

  /** What is on paper must stay the sheet of this comparison, however the runs scatter that come in. */
  #printSheet(): void {
    if (store.entry.value.plan?.runs === undefined && store.entry.value !== example)
      this.#withPlan(({ keptSheet }) => {
        store.change(() => keptSheet(scene.value), 'keep the sheet');
        this.#print('sheet');
      });
    else this.#print('sheet');
  }

  #close(): void {
    this.#withPlan(({ closeLog, closedSaid }) => {
      const before = store.entry.value.runs;
      this.#stopChanging();
      const refused = this.#problems(store.change(() => closeLog(scene.value), 'close the log'));
      this.#say(refused || closedSaid(before, store.entry.value.runs));
      if (refused !== '') return;
      const key = this.#part('key-open');
      if (key instanceof HTMLDetailsElement) key.open = true;
      key?.querySelector('summary')?.focus();
    });
  }

  #openAgain(): void {
    this.#withPlan(({ openLogAgain, openedSaid }) => {
      const refused = this.#problems(store.change(openLogAgain, 'open the log'));
      this.#say(refused || openedSaid);
      this.#part('log')?.closest<HTMLElement>('.scroll')?.focus();
    });
  }

  #shuffle(): void {
    this.#withPlan(({ shuffled }) => store.change(shuffled, 'shuffle'));
  }

  #importing(act: (panel: Import) => unknown): Promise<void> {
    this.#import ??= import('./runs-import.ts').then(({ createImport }) =>
      createImport(this, {
        takeRuns: (runs) => this.#setRuns(runs, 'import'),
        takeComparison: (entry) => this.#problems(store.replace(entry)),
      }),
    );
    return this.#import.then(
      (panel) => void act(panel),
      () => {
        this.#import = undefined;
        this.#say('The reader of files could not be loaded. Check the connection and try again.');
      },
    );
  }

  #dragged = (event: Event): void => {
    event.preventDefault();
    this.#part('import')?.classList.toggle('dropping', event.type === 'dragover');
  };

  #dropped = (event: DragEvent): void => {
    event.preventDefault();
    this.#part('import')?.classList.remove('dropping');
    const [file] = event.dataTransfer?.files ?? [];
    const text = event.dataTransfer?.getData('text') ?? '';
    if (file) void this.#importing((panel) => panel.file(file));
    else if (text !== '') void this.#importing((panel) => panel.text(text));
  };

  /** A long text never enters the field: it is looked at as a file is. */
  #pasted = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData('text') ?? '';
    if (text.length <= longPaste) return;
    event.preventDefault();
    void this.#importing((panel) => panel.text(text, 'The text is too long to show in the field. '));
  };

  #show(now: Scene): void {
    const { entry } = now;
    for (const role of ['subject', 'baseline'] as const) {
      const select = this.querySelector<HTMLSelectElement>(`[data-role="${role}"]`);
      if (!select) continue;
      select.replaceChildren(...entry.knives.map(({ id, name }) => new Option(name, id)));
      select.value = entry[role];
    }
    const knife = this.#input('knife');
    if (knife instanceof HTMLSelectElement) this.#knives(knife, []);
    const invented = this.#part('invented');
    if (invented) invented.hidden = entry.invented !== true;
    if (logOf(entry).some((part, at) => part !== this.#logged[at]) || !entry.runs) this.#showLog(false);
    const endPoints = this.#part('stops');
    if (endPoints) {
      endPoints.hidden = !hasSeries(now);
      // What is about readings is put in, and fetched, once there are such.
      const kept = endPoints.querySelector('template');
      if (kept && !endPoints.hidden) kept.replaceWith(kept.content);
    }
    // The page was built with the sheet of its own example.
    if (now.entry !== example || this.#planAsked)
      this.#withPlan(({ showPlan, openCodes }) => {
        showPlan(this, scene.value);
        this.#codes = openCodes(scene.value);
        if (knife instanceof HTMLSelectElement) this.#knives(knife, []);
      });
    showClosed(this, entry.plan ?? firstPlan);
  }

  /** The knives of the comparison as choices, and the ones a log names besides. */
  #knives(select: HTMLSelectElement, besides: readonly string[]): void {
    const chosen = select.value;
    const names = knifeChoices(store.entry.value, besides, this.#codes);
    select.replaceChildren(...names.map((name) => new Option(name, name)));
    select.value = names.includes(chosen) ? chosen : (names[0] ?? '');
  }

  #showLog(all: boolean): void {
    const { runs = [], invented, plan } = store.entry.value;
    this.#logged = logOf(store.entry.value);
    const shown = all ? runs : runs.slice(0, shownFirst);
    fillRows(this.#part('log'), shown.map(logCells), (row, index) => {
      const cell = document.createElement('td');
      cell.className = 'no-print';
      const [knife = '', , , reach = ''] = logCells(shown[index] as Run);
      if (!invented && !plan?.closed)
        cell.append(
          ...[
            ['change', 'Change'],
            ['take-out', 'Take out'],
          ].map(([act = '', text = '']) => {
            const button = Object.assign(document.createElement('button'), {
              type: 'button',
              textContent: text,
            });
            button.dataset['act'] = act;
            button.dataset['run'] = String(index);
            button.setAttribute('aria-label', `${text}: ${knife}, ${reach}`);
            return button;
          }),
        );
      row.append(cell);
    });
    const more = this.#part('more');
    if (more) more.hidden = shown.length === runs.length;
    const text = this.#part('more-text');
    if (text)
      text.textContent = `The first ${shown.length} of ${runs.length} runs are shown; all of them count.`;
  }

  #input(name: string): HTMLInputElement | HTMLSelectElement | null {
    return this.querySelector(`#run-${name}`);
  }

  #part(name: string): HTMLElement | null {
    return this.querySelector(`[data-part="${name}"]`);
  }

  #button(act: string): HTMLButtonElement {
    const button = this.querySelector<HTMLButtonElement>(`[data-act="${act}"]`);
    if (!button) throw new Error(`the page of runs has no button "${act}"`);
    return button;
  }

  #say(text: string): void {
    const place = this.#part('said');
    if (place) place.textContent = text;
  }
}
