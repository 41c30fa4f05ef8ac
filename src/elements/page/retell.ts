import type { Scene } from '../../scene/scene.ts';
import { explainedText } from '../../topics/explained/text.ts';
import type { Depth, TextForm } from '../../topics/explained/text.ts';
import { bandOf } from './band-of.ts';
import { linkTo } from './page.ts';
import { SceneElement } from './scene-element.ts';

/** The explained page as text to take along: as much of it and in the form that is chosen, with its link. */
export class RetellElement extends SceneElement {
  #scene: Scene | undefined;
  /** Counts the texts asked for: one that comes late, of a comparison before, is not written. */
  #asked = 0;

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
    this.#say('');
    const asked = (this.#asked += 1);
    this.#text().then((written) => {
      const text = this.place('text');
      if (text && asked === this.#asked) text.textContent = written;
    }, this.#notCome);
  };

  /** A part of the page did not come; the next choice asks for it again. */
  #notCome = (): void => this.#say('This text could not be fetched. Check the connection and choose again.');

  async #text(): Promise<string> {
    const scene = this.#scene;
    if (!scene) return '';
    const chosen = (name: string) =>
      this.querySelector<HTMLInputElement>(`input[name="${name}"]:checked`)?.value ?? '';
    const depth = chosen('depth') as Depth;
    const band = depth === 'one sentence' ? [] : await bandOf(scene, 'more');
    return explainedText(scene, depth, chosen('form') as TextForm, await linkTo('explained/'), band);
  }

  #copy = (event: Event): void => {
    event.preventDefault();
    this.#text().then(
      (text) =>
        navigator.clipboard.writeText(text).then(
          () => this.#say(`Copied: ${text.length} characters, the link among them.`),
          () => {
            const details = this.querySelector('details');
            if (details) details.open = true;
            this.#say('The browser did not let the page copy. The text is below: mark it and copy it.');
          },
        ),
      this.#notCome,
    );
  };

  #say(text: string): void {
    const said = this.place('said');
    if (said) said.textContent = text;
  }
}
