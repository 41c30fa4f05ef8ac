import { effect } from '@preact/signals-core';
import type { Scene } from '../lineup/scene.ts';
import { afterDrawing } from './after-drawing.ts';
import { scene } from './page.ts';

/** An element that shows a part of the scene: one effect from its connection to its end, no state of its own. */
export abstract class SceneElement extends HTMLElement {
  #dispose: (() => void) | undefined;

  connectedCallback(): void {
    this.#dispose = effect(() => this.show(scene.value));
  }

  disconnectedCallback(): void {
    this.#dispose?.();
  }

  /** The name of what it shows. */
  get of(): string {
    return this.getAttribute('of') ?? '';
  }

  protected abstract show(scene: Scene): void;

  protected place(name: string): HTMLElement | null {
    return this.querySelector<HTMLElement>(`[data-part="${name}"]`);
  }
}

/** An element that is read: what it says follows a change after the drawing that changes under the reader's hand. */
export abstract class ReadElement extends SceneElement {
  #latest: Scene | undefined;
  #say = (): void => {
    if (this.#latest && this.isConnected) this.say(this.#latest);
  };

  protected override show(scene: Scene): void {
    const first = this.#latest === undefined;
    this.#latest = scene;
    // What was built may belong to another line-up than the address's: the first time nothing waits.
    if (first) this.#say();
    else afterDrawing(this.#say);
  }

  protected abstract say(scene: Scene): void;
}
