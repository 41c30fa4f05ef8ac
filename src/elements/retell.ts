import type { Scene } from '../lineup/scene.ts';
import { tellingText } from '../lineup/telling-text.ts';
import type { Depth, TextForm } from '../lineup/telling-text.ts';
import { linkTo } from './page.ts';
import { SceneElement } from './scene-element.ts';

/** The telling as text to take along: as much of it and in the form that is chosen, with its link. */
export class RetellElement extends SceneElement {
  #scene: Scene | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('change', this.#write);
    this.addEventListener('submit', this.#copy);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('change', this.#write);
    this.removeEventListener('submit', this.#copy);
  }

  protected override show(scene: Scene): void {
    this.#scene = scene;
    this.#write();
  }

  #write = (): void => {
    const text = this.place('text');
    if (text && this.#scene) text.textContent = this.#text(this.#scene);
    this.#say('');
  };

  #text(scene: Scene): string {
    const chosen = (name: string) =>
      this.querySelector<HTMLInputElement>(`input[name="${name}"]:checked`)?.value ?? '';
    return tellingText(scene, chosen('depth') as Depth, chosen('form') as TextForm, linkTo('telling/'));
  }

  #copy = (event: Event): void => {
    event.preventDefault();
    if (!this.#scene) return;
    const text = this.#text(this.#scene);
    navigator.clipboard.writeText(text).then(
      () => this.#say(`Copied: ${text.length} characters, the link among them.`),
      () => {
        const details = this.querySelector('details');
        if (details) details.open = true;
        this.#say('The browser did not let the page copy. The text is below: mark it and copy it.');
      },
    );
  };

  #say(text: string): void {
    const said = this.place('said');
    if (said) said.textContent = text;
  }
}
