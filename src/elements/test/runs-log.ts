import type * as RunFields from '../../test/run-fields.ts';
import type { RunTexts } from '../../test/run-fields.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { logCells } from '../../test/log-rows.ts';
import { knifeCalled, nameOfRun } from '../../comparison/knife-names.ts';
import type { NamedRun, Run } from '../../runs/log.ts';
import { changeOwn, store } from '../page/page.ts';
import { fillRows } from '../page/table-rows.ts';
import { knifeChoices, runSaid, withoutLooks } from './log-decisions.ts';
import type { RunsParts } from './runs-parts.ts';

/** So many rows of the log are shown at first. */
const shownFirst = 100;

/** What the log is shown by: its runs, and whether they can be changed. */
const logOf = ({ runs, invented, plan, knives }: ComparisonEntry): readonly unknown[] => [
  knives.map(({ name }) => name).join('\n'),
  runs,
  invented,
  plan?.closed,
];

/** The table of the log, and the form in which a run is typed or changed. */
export class RunsLog {
  #parts: RunsParts;
  /** Codes of the sheet under which runs may be logged. */
  #codes: readonly string[] = [];
  /** The log as its table shows it. */
  #logged: readonly unknown[] = [];

  constructor(parts: RunsParts) {
    this.#parts = parts;
  }

  /** The log that a run of the visitor's own joins: none of the invented ones. */
  ownRuns(): readonly Run[] {
    const { runs = [], invented } = store.entry.value;
    return invented ? [] : runs;
  }

  /** @returns why the runs were refused, or '' */
  setRuns(runs: Run[], label: string): string {
    if (store.entry.value.plan?.closed) return 'The log is closed. Open it again to change it.';
    return changeOwn((entry) => {
      const { runs: _before, ...rest } = entry.invented || runs.length === 0 ? withoutLooks(entry) : entry;
      return runs.length > 0 ? { ...rest, runs } : rest;
    }, label);
  }

  /** Adds the run that was typed, or puts it in place of the one that is being changed. */
  enter(): void {
    this.#withForm((fields) => this.#enter(fields));
  }

  startChanging(index: number): void {
    this.#withForm((fields) => this.#startChanging(index, fields));
  }

  stopChanging(): void {
    const form = this.#parts.part('form');
    if (form?.dataset['changing'] === undefined) return;
    delete form.dataset['changing'];
    this.#label('Add a run', 'Add this run', true);
  }

  takeOut(index: number): void {
    const runs = this.ownRuns();
    const gone = runs[index];
    if (!gone) return;
    this.stopChanging();
    this.setRuns(
      runs.filter((_, at) => at !== index),
      'take out',
    );
    this.#parts.say(`Taken out: ${this.#cells(gone).slice(0, 4).join(', ')}. Undo brings it back.`);
    this.#parts.focusLog();
  }

  #cells(run: Run): string[] {
    return logCells(run, store.entry.value.knives);
  }

  /** Shows the log where it is another than before. */
  show(entry: ComparisonEntry): void {
    if (logOf(entry).some((part, at) => part !== this.#logged[at]) || !entry.runs) this.showRows(false);
  }

  showRows(all: boolean): void {
    const { runs = [], invented, plan } = store.entry.value;
    this.#logged = logOf(store.entry.value);
    const shown = all ? runs : runs.slice(0, shownFirst);
    const canChange = !invented && !plan?.closed;
    fillRows(
      this.#parts.part('log'),
      shown.map((run) => this.#cells(run)),
      (row, index) => {
        const cell = document.createElement('td');
        cell.className = 'no-print';
        if (canChange) cell.append(...rowButtons(this.#cells(shown[index] as Run), index));
        row.append(cell);
      },
    );
    const more = this.#parts.part('more');
    if (more) more.hidden = shown.length === runs.length;
    const text = this.#parts.part('more-text');
    if (text)
      text.textContent = `The first ${shown.length} of ${runs.length} runs are shown; all of them count.`;
  }

  /** @param codes those of the sheet, where they are known anew */
  showKnives(codes: readonly string[] = this.#codes): void {
    this.#codes = codes;
    const knife = this.#parts.input('knife');
    if (knife instanceof HTMLSelectElement) this.#fillKnives(knife, []);
  }

  /** Does something with the fields of a run, which are fetched when a run is first typed. */
  #withForm(act: (fields: typeof RunFields) => void): void {
    this.#parts.fetched('The form', import('../../test/run-fields.ts'), act);
  }

  #enter({ readRun, runFields }: typeof RunFields): void {
    const form = this.#parts.part('form');
    if (!form) return;
    const texts = runFields.map(({ name }) => [name, this.#parts.input(name)?.value ?? '']);
    const read = readRun(Object.fromEntries(texts) as RunTexts);
    const problems = read.ok ? [] : read.problems;
    for (const { name } of runFields) {
      const input = this.#parts.input(name);
      const own = problems.filter(({ field }) => field === name);
      if (input) this.#parts.problem(input, own.map(({ message }) => message).join('; '));
    }
    if (read.ok) this.#put(read.run, Number(form.dataset['changing'] ?? -1));
    else form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }

  /** @param index of the run that it is put in place of; below 0 where it is a new one */
  #put(named: NamedRun, index: number): void {
    const run: Run = { ...named, knife: knifeCalled(store.entry.value.knives, named.knife) };
    const runs = this.ownRuns();
    const before = runs[index];
    const next = before ? runs.map((old) => (old === before ? run : old)) : [...runs, run];
    const refused = this.setRuns(next, 'run');
    this.#parts.say(refused || runSaid(this.#cells(run), before !== undefined, next.length));
    if (refused !== '') return;
    this.stopChanging();
    // The next run differs in these; the rest is likely the same.
    for (const name of ['reach', 'sharpening', 'series', 'cycles', 'order', 'remarks', 'leftOutBecause']) {
      const input = this.#parts.input(name);
      if (input) input.value = '';
    }
    this.#parts.input('reach')?.focus();
  }

  #startChanging(index: number, { showRun, runFields }: typeof RunFields): void {
    const form = this.#parts.part('form');
    const run = this.ownRuns()[index];
    if (!form || !run) return;
    form.dataset['changing'] = String(index);
    const texts = showRun({ ...run, knife: nameOfRun(store.entry.value.knives, run.knife) });
    for (const { name } of runFields) {
      const input = this.#parts.input(name);
      if (!input) continue;
      this.#parts.problem(input, '');
      if (name === 'knife' && input instanceof HTMLSelectElement) this.#fillKnives(input, [texts.knife]);
      input.value = texts[name];
    }
    this.#label('Change this run', 'Change it', false);
    this.#parts.input('reach')?.focus();
  }

  #label(title: string, submit: string, hidden: boolean): void {
    const [head, button] = [this.#parts.part('form-title'), this.#parts.part('submit')];
    if (head) head.textContent = title;
    if (button) button.textContent = submit;
    this.#parts.button('stop-changing').hidden = hidden;
  }

  /** The knives of the comparison as choices, the codes of its sheet, and the names a log has besides. */
  #fillKnives(select: HTMLSelectElement, besides: readonly string[]): void {
    const chosen = select.value;
    const names = knifeChoices(store.entry.value, besides, this.#codes);
    select.replaceChildren(...names.map((name) => new Option(name, name)));
    select.value = names.includes(chosen) ? chosen : (names[0] ?? '');
  }
}

/** The buttons that change a run of the log or take it out. */
function rowButtons(cells: readonly string[], index: number): HTMLButtonElement[] {
  const [knife = '', , , reach = ''] = cells;
  return [
    ['change', 'Change'],
    ['take-out', 'Take out'],
  ].map(([act = '', text = '']) => {
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: text });
    button.dataset['act'] = act;
    button.dataset['run'] = String(index);
    button.setAttribute('aria-label', `${text}: ${knife}, ${reach}`);
    return button;
  });
}
