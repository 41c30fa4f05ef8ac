import { showControl } from '../../topics/base/controls.ts';
import type { Scene } from '../../scene/scene.ts';
import { scene, store } from '../page/page.ts';
import { SceneElement } from '../page/scene-element.ts';
import { registry } from '../page/topics.ts';
import { writeText } from '../page/write-text.ts';

export class SliderElement extends SceneElement {
  #input: HTMLInputElement | null = null;
  /** What stands in it, distinguished from what is to: most sliders stay where they are. */
  #said = { text: '', label: '' };

  override connectedCallback(): void {
    this.#input = this.querySelector('input');
    // Moved before this half of the page was there: the movement counts.
    const input = this.#input;
    if (input && input.value !== input.defaultValue) this.#write();
    super.connectedCallback();
    this.addEventListener('input', this.#write);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('input', this.#write);
  }

  #write = (): void => {
    const value = this.#input?.valueAsNumber;
    if (value === undefined || Number.isNaN(value)) return;
    const changed = store.change((entry) => registry().control(this.of).write(entry, value), this.of);
    // What the model refuses is not in the comparison, so the slider does not stay there either.
    if (!changed.ok) this.show(scene.value);
  };

  protected override show({ entry }: Scene): void {
    const control = registry().control(this.of);
    const value = control.read(entry);
    const text = showControl(control, value, entry);
    const input = this.#input;
    if (input) {
      if (control.last) input.max = String(control.last(entry));
      if (input.valueAsNumber !== value) input.value = String(value);
    }
    const label = control.label(entry);
    if (text !== this.#said.text) {
      input?.setAttribute('aria-valuetext', text);
      writeText(this.querySelector('output'), text);
    }
    if (label !== this.#said.label) writeText(this.place('label'), label);
    this.#said = { text, label };
  }
}
