import type { Scene } from '../lineup/scene.ts';
import { isTopicName, topicLoaders } from '../topics/index.ts';
import { registryOf } from '../topics/registry.ts';
import { example } from './page.ts';
import { ReadElement } from './scene-element.ts';

/**
 * Sentences whose topic is large. The page was built with what they say of its own example, so the topic is fetched
 * only once there is another line-up to speak of.
 */
export class LateWordsElement extends ReadElement {
  #asked: Scene | undefined;
  /** Whether they still say what was built. */
  #built = true;

  protected override say(scene: Scene): void {
    this.#asked = scene;
    if (this.#built && scene.entry === example) return;
    // What was built is of another line-up: better nothing than that.
    if (this.#built) this.#write([]);
    this.#built = false;
    const name = this.dataset['late'];
    if (!isTopicName(name)) throw new RangeError(`no topic has the name “${name}”`);
    topicLoaders[name]().then(
      ({ topic }) => {
        if (scene === this.#asked) this.#write(registryOf([topic]).words(this.of)(scene));
      },
      () => this.#write(['This part could not be loaded. Check the connection and reload the page.']),
    );
  }

  #write(sentences: readonly string[]): void {
    const place = this.firstElementChild;
    if (place?.localName !== 'ul') place?.replaceChildren(sentences.join(' '));
    else
      place.replaceChildren(
        ...sentences.map((sentence) =>
          Object.assign(document.createElement('li'), { textContent: sentence }),
        ),
      );
  }
}
