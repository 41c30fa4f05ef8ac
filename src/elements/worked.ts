import type { Scene } from '../lineup/scene.ts';
import { ReadElement } from './scene-element.ts';
import { registry } from './topics.ts';

/** Puts other numbers into the formulas set at build. */
export class WorkedElement extends ReadElement {
  protected override say(scene: Scene): void {
    const { givens, steps } = registry().worked(this.of)(scene);
    const place = this.place('givens');
    if (place) place.textContent = givens;
    const items = [...this.querySelectorAll('ol > li')];
    steps.forEach((step, index) => {
      const item = items[index];
      if (!item) return;
      const say = item.querySelector('[data-part="say"]');
      if (say) say.textContent = step.say;
      for (const number of item.querySelectorAll('[data-value]')) {
        number.textContent = step.values[number.getAttribute('data-value') ?? ''] ?? '';
      }
      // The TeX that goes along for copying holds the numbers of the build: better none than the wrong one.
      if (scene.entry !== WorkedElement.#built) item.querySelector('annotation')?.remove();
    });
    WorkedElement.#built ??= scene.entry;
  }

  static #built: unknown;
}
