import type { Scene } from '../../scene/scene.ts';
import { ReadElement } from './scene-element.ts';
import { registry } from './topics.ts';
import { writeText } from './write-text.ts';

export class WordsElement extends ReadElement {
  protected override say(scene: Scene): void {
    const sentences = registry().words(this.of)(scene);
    if (this.getAttribute('as') === 'ul') {
      const list = this.querySelector('ul');
      const items = [...(list?.children ?? [])];
      if (items.length === sentences.length)
        for (const [index, sentence] of sentences.entries()) writeText(items[index], sentence);
      else
        list?.replaceChildren(
          ...sentences.map((sentence) =>
            Object.assign(document.createElement('li'), { textContent: sentence }),
          ),
        );
    } else {
      writeText(this.firstElementChild, sentences.join(' '));
    }
    this.hidden = sentences.length === 0;
  }
}
