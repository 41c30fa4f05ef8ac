import { example, scene, store } from '../page/page.ts';
import type { RunsLog } from './runs-log.ts';
import { problemsOf } from './runs-parts.ts';
import type { RunsParts } from './runs-parts.ts';
import type * as PlanPart from './runs-plan.ts';

/** How long a half-typed number may stand before the page says it can't read it. */
const patienceMs = 700;

/** The plan of the next runs, its sheet and the key, and the closing of the log that opens the key. */
export class RunsSheet {
  #parts: RunsParts;
  #log: RunsLog;
  #timers = new Map<Element, number>();
  #planPart: typeof PlanPart | undefined;
  #asked = false;

  constructor(parts: RunsParts, log: RunsLog) {
    this.#parts = parts;
    this.#log = log;
  }

  /** Shows plan and sheet; until there is another comparison than the page's own, they are as the page was built. */
  show(): void {
    if (scene.value.entry === example && !this.#asked) return;
    this.#withPlan(({ showPlan, openCodes }) => {
      showPlan(this.#parts.root, scene.value, () => scene.value);
      this.#log.showKnives(openCodes(scene.value));
    });
  }

  showFields(): void {
    this.#withPlan((part) => part.showPlanFields(this.#parts.root, scene.value));
  }

  /** @param settled the field was left, so that what is wrong is said at once */
  typed(target: Element & { value: string }, settled: boolean): void {
    const { value } = target;
    this.#withPlan(({ writtenPlan, showPlanFields }) => {
      const name = target.closest<HTMLElement>('[data-field]')?.dataset['field'] ?? '';
      const written = writtenPlan(scene.value, name, value);
      const message = written.ok
        ? problemsOf(store.change((entry) => ({ ...entry, plan: written.plan }), `plan ${name}`))
        : written.message;
      clearTimeout(this.#timers.get(target));
      if (message === '' || settled) this.#parts.problem(target, message);
      else
        this.#timers.set(
          target,
          window.setTimeout(() => this.#parts.problem(target, message), patienceMs),
        );
      if (settled && message === '') showPlanFields(this.#parts.root, scene.value);
    });
  }

  print(what: 'sheet' | 'key'): void {
    document.documentElement.dataset['printing'] = what;
    print();
  }

  /** What is on paper must stay the sheet of this comparison, however the runs scatter that come in. */
  printSheet(): void {
    if (store.entry.value.plan?.runs === undefined && store.entry.value !== example)
      this.#withPlan(({ keptSheet }) => {
        store.change(() => keptSheet(scene.value), 'keep the sheet');
        this.print('sheet');
      });
    else this.print('sheet');
  }

  /** Shows the verdict before the number planned is cut, and keeps that in the plan. */
  lookEarly(): void {
    this.#withPlan(({ lookedEarly }) => {
      const refused = problemsOf(store.change(() => lookedEarly(scene.value), 'look early'));
      this.#parts.say(refused || 'This is an early look. The plan keeps that it was taken.');
    });
  }

  close(): void {
    this.#withPlan(({ closeLog, closedSaid }) => {
      const before = store.entry.value.runs;
      this.#log.stopChanging();
      const refused = problemsOf(store.change(() => closeLog(scene.value), 'close the log'));
      this.#parts.say(refused || closedSaid(before, store.entry.value.runs));
      if (refused !== '') return;
      const key = this.#parts.part('key-open');
      if (key instanceof HTMLDetailsElement) key.open = true;
      key?.querySelector('summary')?.focus();
    });
  }

  openAgain(): void {
    this.#withPlan(({ openLogAgain, openedSaid }) => {
      const refused = problemsOf(store.change(openLogAgain, 'open the log'));
      this.#parts.say(refused || openedSaid);
      this.#parts.focusLog();
    });
  }

  shuffle(): void {
    this.#withPlan(({ shuffled }) => store.change(shuffled, 'shuffle'));
  }

  /** Does something with the plan, which is fetched once there is another comparison than the page's own. */
  #withPlan(act: (part: typeof PlanPart) => void): void {
    this.#asked = true;
    if (this.#planPart) {
      act(this.#planPart);
      return;
    }
    this.#parts.fetched('The plan', import('./runs-plan.ts'), (part) => {
      this.#planPart = part;
      act(part);
    });
  }
}
