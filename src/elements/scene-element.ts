import { effect } from '@preact/signals-core';
import type { Scene } from '../lineup/scene.ts';
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
