import type { Scene } from '../lineup/scene.ts';
import { ReadElement } from './scene-element.ts';
import { registry } from './topics.ts';

export class WordsElement extends ReadElement {
  protected override say(scene: Scene): void {
    const sentences = registry().words(this.of)(scene);
    if (this.getAttribute('as') === 'ul') {
      this.querySelector('ul')?.replaceChildren(
        ...sentences.map((sentence) =>
          Object.assign(document.createElement('li'), { textContent: sentence }),
        ),
      );
    } else {
      const paragraph = this.querySelector('p');
      if (paragraph) paragraph.textContent = sentences.join(' ');
    }
    this.hidden = sentences.length === 0;
  }
}
