import { effect } from '@preact/signals-core';
import { example, store } from './page.ts';

/** What takes longer than this to come is said not to have come; it may yet. */
const patienceMs = 5000;

/**
 * Holds a part whose live half is fetched when the reader touches it. With another comparison than the one it was built
 * with it would cover the wrong knives: it then says nothing, and is fetched when the reader comes near.
 */
export class LateElement extends HTMLElement {
  #dispose: (() => void) | undefined;
  #near = new IntersectionObserver(
    (seen) => {
      if (seen.some(({ isIntersecting }) => isIntersecting)) this.#fetch();
    },
    { rootMargin: '400px' },
  );

  connectedCallback(): void {
    const part = this.firstElementChild;
    if (!part) return;
    this.#dispose = effect(() => {
      if (store.entry.value === example || customElements.get(part.localName)) return;
      this.dataset['waiting'] = '';
      this.#near.observe(this);
    });
    void customElements.whenDefined(part.localName).then(() => {
      delete this.dataset['waiting'];
      this.disconnectedCallback();
    });
  }

  disconnectedCallback(): void {
    this.#dispose?.();
    this.#near.disconnect();
  }

  /** As if it were touched: what is fetched then is known to src/elements/boot.ts alone. */
  #fetch(): void {
    this.firstElementChild?.dispatchEvent(new Event('pointerover', { bubbles: true }));
    setTimeout(() => {
      if (this.dataset['waiting'] !== undefined) this.dataset['waiting'] = 'failed';
    }, patienceMs);
  }
}
