import { judge, makeProblem } from '../exercises/index.ts';
import type { Kind } from '../exercises/index.ts';

/** Judges a typed answer; the problem is remade from its kind and seed, so the page holds no key. */
export class CheckElement extends HTMLElement {
  connectedCallback(): void {
    this.addEventListener('submit', this.#judge);
  }

  disconnectedCallback(): void {
    this.removeEventListener('submit', this.#judge);
  }

  #judge = (event: Event): void => {
    event.preventDefault();
    const input = this.querySelector('input');
    const said = this.querySelector('[data-part="said"]');
    if (!input || !said) return;
    const problem = makeProblem(this.getAttribute('kind') as Kind, Number(this.getAttribute('seed')));
    const { verdict, message } = judge(problem, input.value);
    input.setAttribute('aria-invalid', String(verdict === 'not readable'));
    said.setAttribute('data-verdict', verdict);
    said.textContent = message;
  };
}
