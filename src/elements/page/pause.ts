/**
 * Does a thing once nothing has asked for it for so long. A hand on a slider asks with every movement, so that asking
 * sets no timer where one is running already.
 */
export class Pause {
  #asked = 0;
  #timer = 0;
  readonly #ms: number;
  readonly #work: () => void;

  constructor(ms: number, work: () => void) {
    this.#ms = ms;
    this.#work = work;
  }

  ask(): void {
    this.#asked = performance.now();
    if (this.#timer === 0) this.#wait(this.#ms);
  }

  /** What was asked for is not done. */
  callOff(): void {
    clearTimeout(this.#timer);
    this.#timer = 0;
  }

  #wait(ms: number): void {
    this.#timer = window.setTimeout(this.#look, ms);
  }

  #look = (): void => {
    const left = this.#asked + this.#ms - performance.now();
    this.#timer = 0;
    if (left > 0) this.#wait(left);
    else this.#work();
  };
}
