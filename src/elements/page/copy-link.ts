import { copyText } from './copy-text.ts';
import { linkTo } from './page.ts';

/** A button that copies the address of a page of this site with the comparison of the moment in it. */
export class CopyLinkElement extends HTMLElement {
  connectedCallback(): void {
    this.addEventListener('click', this.#pressed);
  }

  disconnectedCallback(): void {
    this.removeEventListener('click', this.#pressed);
  }

  #pressed = (event: Event): void => {
    if (!(event.target instanceof Element) || !event.target.closest('button')) return;
    void linkTo(this.getAttribute('page') ?? '')
      .then((link) =>
        copyText(link, 'The link is copied.', `The browser did not let the page copy. The link is ${link}`),
      )
      .then(
        (said) => this.#say(said),
        () => this.#say('The link could not be made. Check the connection and press again.'),
      );
  };

  #say(text: string): void {
    const place = this.querySelector('[data-part="said"]');
    if (place) place.textContent = text;
  }
}
