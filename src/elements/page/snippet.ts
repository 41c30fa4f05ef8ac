import { frameSnippet } from '../../phrases/frame-snippet.ts';
import { copyText } from './copy-text.ts';
import { linkTo } from './page.ts';
import { ReadElement } from './scene-element.ts';

/** Room for what stands below the figure in a frame. */
const footPx = 90;

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
    const text = this.place('text');
    if (text) text.textContent = this.#text();
  }

  #text(): string {
    const tall = document.querySelector<HTMLElement>('kf-figure')?.offsetHeight ?? 0;
    return frameSnippet(linkTo(this.getAttribute('page') ?? ''), document.title, tall + footPx);
  }

  #copy = (event: Event): void => {
    if (!(event.target instanceof Element) || !event.target.closest('button')) return;
    void copyText(
      this.#text(),
      'The line is copied.',
      'The browser did not let the page copy. The line is above: mark it and copy it.',
    ).then((said) => {
      const place = this.place('said');
      if (place) place.textContent = said;
    });
  };
}
