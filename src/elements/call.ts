import { readAnswer } from '../exercises/reader/index.ts';
import { callVerdict } from '../lineup/call-verdict.ts';
import type { Scene } from '../lineup/scene.ts';
import { times } from '../lineup/show.ts';
import { SceneElement } from './scene-element.ts';
import { registry } from './topics.ts';

/** Keeps the guess beside the answer, and says what it was near to. The guess stays in its own field. */
export class CallElement extends SceneElement {
  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('submit', this.#keep);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('submit', this.#keep);
  }

  #scene: Scene | undefined;

  #keep = (event: Event): void => {
    event.preventDefault();
    this.dataset['kept'] = 'yes';
    if (this.#scene) this.show(this.#scene);
  };

  protected override show(scene: Scene): void {
    this.#scene = scene;
    const said = this.place('said');
    const input = this.querySelector('input');
    if (!said || !input || this.dataset['kept'] !== 'yes') return;
    const read = readAnswer(input.value, 'times as long');
    input.toggleAttribute('aria-invalid', false);
    if (!read.ok) {
      input.setAttribute('aria-invalid', 'true');
      said.textContent = read.message;
      return;
    }
    const held = registry().call(this.of)(scene);
    said.textContent = `Your call: ${times(read.value)}. The model: ${times(held.answer)}. ${callVerdict(read.value, held)}`;
  }
}
