import type { Scene } from '../../scene/scene.ts';
import { store } from '../page/page.ts';
import { SceneElement } from '../page/scene-element.ts';
import { registry } from '../page/topics.ts';

/** A choice among a few, as radio buttons. */
export class ChoiceElement extends SceneElement {
  override connectedCallback(): void {
    // Chosen before this half of the page was there: the choice counts.
    const chosen = this.querySelector<HTMLInputElement>('input:checked');
    if (chosen && !chosen.defaultChecked) this.#write();
    super.connectedCallback();
    this.addEventListener('change', this.#write);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('change', this.#write);
  }

  #write = (): void => {
    const value = this.querySelector<HTMLInputElement>('input:checked')?.value;
    if (value !== undefined) store.change((entry) => registry().choice(this.of).write(entry, value), this.of);
  };

  protected override show({ entry }: Scene): void {
    const value = registry().choice(this.of).read(entry);
    for (const input of this.querySelectorAll('input')) input.checked = input.value === value;
  }
}
