import type { Scene } from '../../scene/scene.ts';
import { SceneElement } from './scene-element.ts';
import { registry } from './topics.ts';

/** Keeps the guess beside the answer, and says what it was near to. The guess stays in its own field. */
export class GuessElement extends SceneElement {
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
    const held = registry().guess(this.of)(scene);
    import('./guess-said.ts').then(
      ({ guessText }) => {
        if (scene !== this.#scene) return;
        const { ok, text } = guessText(input.value, held);
        input.toggleAttribute('aria-invalid', false);
        if (!ok) input.setAttribute('aria-invalid', 'true');
        said.textContent = text;
      },
      () => (said.textContent = 'Your call could not be read. Check the connection and call it again.'),
    );
  }
}
