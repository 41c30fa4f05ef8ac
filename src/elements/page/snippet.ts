import { frameSnippet } from '../../phrases/frame-snippet.ts';
import { copyText } from './copy-text.ts';
import { linkTo } from './page.ts';
import { ReadElement } from './scene-element.ts';

/** Room for what stands below the figure in a frame. */
const footPx = 90;

const notCopied = 'The browser did not let the page copy. The line is above: mark it and copy it.';

/** The line that puts the figure, as it is now, on a page of somebody's own. */
export class SnippetElement extends ReadElement {
  override connectedCallback(): void {
    super.connectedCallback();
    // Where the site stands is not known when it is built.
    this.say();
    this.addEventListener('click', this.#copy);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('click', this.#copy);
  }

  protected override say(): void {
    void this.#text().then(
      (written) => {
        const text = this.place('text');
        if (text) text.textContent = written;
      },
      () => undefined,
    );
  }

  async #text(): Promise<string> {
    const tall = document.querySelector<HTMLElement>('kf-figure')?.offsetHeight ?? 0;
    return frameSnippet(await linkTo(this.getAttribute('page') ?? ''), document.title, tall + footPx);
  }

  #copy = (event: Event): void => {
    if (!(event.target instanceof Element) || !event.target.closest('button')) return;
    const say = (said: string): void => {
      const place = this.place('said');
      if (place) place.textContent = said;
    };
    void this.#text()
      .then((text) => copyText(text, 'The line is copied.', notCopied))
      .then(say, () => say(notCopied));
  };
}
