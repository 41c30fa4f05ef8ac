import type { Scene } from '../../scene/scene.ts';
import { copyText } from './copy-text.ts';
import { linkTo } from './page.ts';
import { SceneElement } from './scene-element.ts';
import { registry } from './topics.ts';

const notCopied = 'The browser did not let the page copy. Mark the answer and copy it.';

/** Copies an answer with the link to its page, which carries the comparison. */
export class AnswerElement extends SceneElement {
  #scene: Scene | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('click', this.#copy);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('click', this.#copy);
  }

  protected override show(scene: Scene): void {
    this.#scene = scene;
    this.#say('');
  }

  #copy = (event: Event): void => {
    if (!this.#scene || !(event.target instanceof Element) || !event.target.closest('button')) return;
    const text = registry().words(this.of)(this.#scene).join(' ');
    const page = this.getAttribute('page') ?? '';
    void linkTo(page)
      .then((link) =>
        copyText(`${text} ${link}`, `Copied: ${text.length} characters and the link.`, notCopied),
      )
      .then(
        (said) => this.#say(said),
        () => this.#say(notCopied),
      );
  };

  #say(text: string): void {
    const said = this.place('said');
    if (said) said.textContent = text;
  }
}
