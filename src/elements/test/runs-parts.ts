import { atNextTouch } from '../page/next-touch.ts';

type Input = HTMLInputElement | HTMLSelectElement;

/** The parts of the page of runs by their names, what it says, and what it fetches once it is needed. */
export class RunsParts {
  readonly root: HTMLElement;
  #showAgain: () => void;

  /** @param showAgain shows the page anew, once what could not be fetched may be there */
  constructor(root: HTMLElement, showAgain: () => void) {
    this.root = root;
    this.#showAgain = showAgain;
  }

  part(name: string): HTMLElement | null {
    return this.root.querySelector(`[data-part="${name}"]`);
  }

  input(name: string): Input | null {
    return this.root.querySelector(`#run-${name}`);
  }

  button(act: string): HTMLButtonElement {
    const button = this.root.querySelector<HTMLButtonElement>(`[data-act="${act}"]`);
    if (!button) throw new Error(`the page of runs has no button "${act}"`);
    return button;
  }

  say(text: string): void {
    const place = this.part('said');
    if (place) place.textContent = text;
  }

  /** Says at a field what is wrong with it; '' where nothing is. */
  problem(target: Element, message: string): void {
    target.setAttribute('aria-invalid', String(message !== ''));
    const place = target.closest('[data-field]')?.querySelector('[data-part="problem"]');
    if (place && place.textContent !== message) place.textContent = message;
  }

  focusLog(): void {
    this.part('log')?.closest<HTMLElement>('.scroll')?.focus();
  }

  /** Does something with what is fetched for it; where that does not come the page says so, until it has. */
  fetched<Part>(what: string, fetched: Promise<Part>, act: (part: Part) => void): void {
    const notLoaded = `${what} could not be loaded. Check the connection and try again.`;
    fetched.then(
      (part) => {
        if (this.part('said')?.textContent === notLoaded) this.say('');
        act(part);
      },
      () => {
        this.say(notLoaded);
        // What is shown of the plan is asked for once more.
        atNextTouch(this.#showAgain);
      },
    );
  }
}

/** What was wrong with a change of the comparison; '' where it was made. */
export const problemsOf = (
  changed: { ok: true } | { ok: false; problems: readonly { message: string }[] },
): string => (changed.ok ? '' : changed.problems.map(({ message }) => message).join('; '));
