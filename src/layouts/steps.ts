import { parseHTML } from 'linkedom';

/** A step of a lesson on a large screen: what everybody sees, and what the speaker has on paper. */
export interface Step {
  name: string;
  /** HTML of the step. */
  shown: string;
  /** HTML of the prose that belongs to it; empty where there is none. */
  hints: string;
  /** True where it is about a visitor's own knives, and has nothing to show without them. */
  own: boolean;
}

/** What fills a step by itself, and what such a step is called where no heading says. */
const filling: Readonly<Record<string, string>> = {
  'KF-CALL': 'Call it first',
  'KF-FIGURE': 'The figure',
  'KF-WORKED': 'The working',
};

class Steps {
  readonly all: Step[];
  /** The heading read last that no step has shown yet. */
  #heading = '';
  /** Prose that waits for the step it leads to. */
  #waiting = '';
  /** The step that prose read now belongs to. */
  #current: Step | undefined;

  constructor(first: Step) {
    this.all = [first];
    this.#current = first;
  }

  /** Prose of the heading before that led to no step belongs to the step before. */
  settle(): void {
    const last = this.all.at(-1);
    if (last && this.#waiting !== '')
      last.hints += `${this.#heading === '' ? '' : `<h3>${this.#heading}</h3>`}${this.#waiting}`;
    this.#waiting = '';
    this.#heading = '';
    this.#current = undefined;
  }

  heading(html: string): void {
    this.settle();
    this.#heading = html;
  }

  prose(html: string): void {
    if (!this.#current) this.#waiting += html;
    // The opening is what everybody must hear before the call, so it is shown.
    else if (this.#current === this.all[0]) this.#current.shown += html;
    else this.#current.hints += html;
  }

  /** What must not be missed stands with what it warns of. */
  caution(html: string): void {
    const last = this.all.at(-1);
    if (last) last.shown += html;
  }

  step(name: string, html: string, own = false): void {
    const heading = this.#heading === '' ? '' : `<h2>${this.#heading}</h2>`;
    const step = { name, shown: `${heading}${html}`, hints: this.#waiting, own };
    this.all.push(step);
    this.#waiting = '';
    this.#heading = '';
    // What follows the visitor's own knives leads on to the problem.
    this.#current = own ? undefined : step;
  }
}

/**
 * A lesson's HTML as steps: the opening, then each call, figure, working and problem by itself under its heading. Its
 * prose becomes the speaker's hints; the code is left out.
 */
export function stepsOf(html: string): Step[] {
  const { document } = parseHTML(`<html><body>${html}</body></html>`);
  const steps = new Steps({ name: 'The question', shown: '', hints: '', own: false });
  for (const part of [...document.body.children]) {
    const name = filling[part.tagName];
    if (part.matches('details.code')) continue;
    if (/^H[23]$/.test(part.tagName)) steps.heading(part.innerHTML);
    else if (part.matches('.caution')) steps.caution(part.outerHTML);
    else if (name !== undefined) steps.step(name, part.outerHTML);
    else if (part.matches('section.check')) steps.step('Check yourself', part.outerHTML);
    else if (part.matches('.own')) {
      steps.settle();
      steps.step('With your own knives', part.outerHTML, true);
    } else steps.prose(part.outerHTML);
  }
  steps.settle();
  return steps.all;
}
