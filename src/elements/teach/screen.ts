/** Fields in which the arrows and the space bar have work of their own. */
const takesKeys = 'input, select, textarea, button, a, summary, [role="region"], .formula';

const onward: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ' ': 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};
/** What the remotes of speakers send: they count wherever the focus is. */
const remote: Readonly<Record<string, number>> = { PageDown: 1, PageUp: -1 };

/** A lesson step by step: shows one step at a time, by key and by button, and keeps its number in the address. */
export class ScreenElement extends HTMLElement {
  #at = 0;
  #whose = new MutationObserver(() => this.#show());

  connectedCallback(): void {
    const asked = Number(new URLSearchParams(location.search).get('step') ?? 1);
    this.#at = Number.isInteger(asked) && asked > 0 ? asked - 1 : 0;
    this.hidden = false;
    this.addEventListener('click', this.#pressed);
    addEventListener('keydown', this.#key);
    document.addEventListener('fullscreenchange', this.#sayFull);
    // A step about the visitor's own knives comes and goes with them.
    this.#whose.observe(document.documentElement, { attributeFilter: ['data-comparison'] });
    const full = this.#button('full');
    if (full) full.hidden = !document.fullscreenEnabled;
    this.#show();
  }

  disconnectedCallback(): void {
    this.removeEventListener('click', this.#pressed);
    removeEventListener('keydown', this.#key);
    document.removeEventListener('fullscreenchange', this.#sayFull);
    this.#whose.disconnect();
  }

  get #steps(): HTMLElement[] {
    const own = document.documentElement.dataset['comparison'] === 'own';
    return [...document.querySelectorAll<HTMLElement>('.step')].filter(
      (step) => own || step.dataset['own'] === undefined,
    );
  }

  #button(act: string): HTMLButtonElement | null {
    return this.querySelector(`[data-act="${act}"]`);
  }

  #show(): void {
    const steps = this.#steps;
    this.#at = Math.min(this.#at, steps.length - 1);
    const current = steps[this.#at];
    for (const step of document.querySelectorAll<HTMLElement>('.step'))
      step.toggleAttribute('data-away', step !== current);
    const said = this.querySelector('[data-part="said"]');
    const text = `Step ${this.#at + 1} of ${steps.length}`;
    if (said && said.textContent !== text) said.textContent = text;
    const [back, next] = [this.#button('back'), this.#button('next')];
    if (back) back.disabled = this.#at === 0;
    if (next) next.disabled = this.#at === steps.length - 1;
  }

  #go(to: number): void {
    const steps = this.#steps;
    const at = Math.max(0, Math.min(to, steps.length - 1));
    if (at === this.#at) return;
    this.#at = at;
    this.#show();
    // The comparison stays where it is, behind the step; and Back leaves the lesson, not one step.
    history.replaceState(
      history.state,
      '',
      `${at === 0 ? location.pathname : `?step=${at + 1}`}${location.hash}`,
    );
    scrollTo(0, 0);
    steps[at]?.focus({ preventScroll: true });
  }

  #pressed = (event: Event): void => {
    const act = event.target instanceof Element ? event.target.closest('button')?.dataset['act'] : undefined;
    if (act === 'next') this.#go(this.#at + 1);
    if (act === 'back') this.#go(this.#at - 1);
    if (act === 'full') void this.#full();
  };

  #key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.shiftKey || event.defaultPrevented) return;
    const { target, key } = event;
    const busy = target instanceof Element && target.closest(takesKeys) !== null;
    const typing = target instanceof HTMLInputElement && target.type === 'text';
    const by = (typing ? undefined : remote[key]) ?? (busy ? undefined : onward[key]);
    const to = by !== undefined ? this.#at + by : busy ? undefined : { Home: 0, End: Infinity }[key];
    if (to === undefined) return;
    event.preventDefault();
    this.#go(to);
  };

  async #full(): Promise<void> {
    try {
      if (document.fullscreenElement) await document.exitFullscreen();
      else await document.documentElement.requestFullscreen();
    } catch {
      // A browser that refuses leaves the page as it is.
    }
  }

  #sayFull = (): void => {
    const full = this.#button('full');
    if (full) full.textContent = document.fullscreenElement ? 'Leave full screen' : 'Full screen';
  };
}
