import { kindFor } from '../../teach/check/next.ts';
import { questionHtml } from '../../teach/check/question.ts';
import { blanksHtml, openStepHtml, workingHtml } from '../../teach/check/working.ts';
import { makerLoaders } from '../../exercises/maker-loaders.ts';
import type { Maker } from '../../exercises/maker.ts';
import { answerInWords, judge } from '../../exercises/missteps.ts';
import type { Kind } from '../../exercises/numbers.ts';
import type { ContextId, Level, Problem } from '../../exercises/problem.ts';
import { problemBy } from '../../exercises/set-problem.ts';
import { judgeStep } from './check-step.ts';
import { verdictOn } from './check-verdict.ts';

const hardest = 3;

/**
 * Problems without end. Its attributes say which one is shown: kind, seed, level and context make the problem anew
 * whenever it is needed, so the page holds no key and the element nothing but how often was tried.
 */
export class CheckElement extends HTMLElement {
  connectedCallback(): void {
    this.addEventListener('submit', this.#submit);
    this.addEventListener('click', this.#click);
  }

  disconnectedCallback(): void {
    this.removeEventListener('submit', this.#submit);
    this.removeEventListener('click', this.#click);
  }

  #part = (name: string): HTMLElement | null => this.querySelector(`[data-part="${name}"]`);
  #get = (name: string): string => this.getAttribute(name) ?? '';
  #kind = (): Kind => this.#get('kind') as Kind;

  async #problem(): Promise<Problem> {
    const maker = (await makerLoaders[this.#kind()]()) as Maker<unknown>;
    const context = this.#get('context') as ContextId;
    return problemBy(maker, this.#kind(), Number(this.#get('seed')), {
      context,
      level: Number(this.#get('level')) as Level,
    });
  }

  #submit = (event: Event): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    void this.#withProblem((problem) =>
      form.dataset['step'] === undefined ? this.#judge(problem, form) : judgeStep(problem, form),
    );
  };

  #click = (event: Event): void => {
    const does =
      event.target instanceof Element ? event.target.closest('button')?.dataset['does'] : undefined;
    if (does === 'more') this.#next(0);
    if (does === 'harder') this.#next(1);
    if (does === 'blanks') void this.#withProblem((problem) => this.#openBlanks(problem));
  };

  async #withProblem(then: (problem: Problem) => void): Promise<void> {
    const problem = await this.#problem().catch(() => undefined);
    if (problem) then(problem);
    else this.#say('The problem could not be fetched. Check the connection and try again.');
  }

  #judge(problem: Problem, form: HTMLFormElement): void {
    const chosen = form.querySelector<HTMLInputElement>('input:checked');
    const input = chosen ?? form.querySelector<HTMLInputElement>('input[type="text"]');
    const judged = judge(problem, input?.value ?? '');
    for (const field of form.querySelectorAll('input'))
      field.setAttribute('aria-invalid', String(judged.verdict === 'not readable'));
    const before = Number(this.dataset['tries'] ?? 0);
    const { tries, message, note, openStep, opensWorking } = verdictOn(
      judged,
      before,
      answerInWords(problem),
    );
    this.dataset['tries'] = String(tries);
    const at = { page: pageOf(), kind: problem.kind };
    if (note === 'right') this.#note(({ noteRight }) => noteRight(at));
    else if (note) this.#note(({ noteMisstep }) => noteMisstep({ ...at, anchor: this.id, ...note }));
    this.#say(message, judged.verdict, openStep === null ? '' : openStepHtml(problem, openStep));
    if (opensWorking) this.querySelector('details')?.setAttribute('open', '');
  }

  /** Fetched when there is something to note; where it cannot be, the problem goes on without. */
  #note(how: (course: typeof import('./course.ts')) => void): void {
    import('./course.ts').then(how, () => undefined);
  }

  #next(up: number): void {
    const kinds = this.#get('kinds').split(' ') as Kind[];
    const seed = (Number(this.#get('seed')) + 1) % 2 ** 32;
    const before = ['kind', 'seed', 'level'].map((name) => [name, this.#get(name)] as const);
    this.setAttribute('seed', String(seed));
    this.setAttribute('kind', kindFor(kinds, seed));
    this.setAttribute('level', String(Math.min(hardest, Number(this.#get('level')) + up)));
    void this.#problem().then(
      (problem) => this.#show(problem),
      () => {
        for (const [name, value] of before) this.setAttribute(name, value);
        this.#say('The next problem could not be fetched. Check the connection and try again.');
      },
    );
  }

  #show(problem: Problem): void {
    const question = this.#part('question');
    const working = this.#part('working');
    if (!question || !working) return;
    question.innerHTML = questionHtml(problem, `${this.id}-1`);
    working.innerHTML = workingHtml(problem);
    this.querySelector('details')?.removeAttribute('open');
    this.#part('blanks-button')?.removeAttribute('hidden');
    this.dataset['tries'] = '0';
    this.#say('');
    const level = this.#part('level');
    if (level) level.textContent = String(problem.level);
    this.querySelector<HTMLButtonElement>('[data-does="harder"]')?.toggleAttribute(
      'disabled',
      problem.level === hardest,
    );
    question.querySelector('input')?.focus();
  }

  #openBlanks(problem: Problem): void {
    const working = this.#part('working');
    if (!working) return;
    working.innerHTML = blanksHtml(problem, this.id);
    this.#part('blanks-button')?.setAttribute('hidden', '');
    working.querySelector('input')?.focus();
  }

  #say(message: string, verdict = '', formula = ''): void {
    const said = this.#part('said');
    const step = this.#part('step');
    if (!said || !step) return;
    said.dataset['verdict'] = verdict;
    said.textContent = message;
    step.innerHTML = formula;
  }
}

/** The page below the site's base. */
const pageOf = (): string =>
  location.pathname.slice((document.documentElement.dataset['base'] ?? '/').length);
