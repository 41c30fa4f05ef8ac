import type { Scene } from '../../scene/scene.ts';
import { example } from '../page/page.ts';
import { SceneElement } from '../page/scene-element.ts';

/** A drawing without a sheet: what draws it is fetched only for another comparison than the page's own. */
export class DrawingElement extends SceneElement {
  #latest: Scene | undefined;

  protected override show(scene: Scene): void {
    const isBuilt = this.#latest === undefined && scene.entry === example;
    this.#latest = scene;
    if (isBuilt) return;
    // Better nothing than the drawing of another comparison.
    this.dataset['stale'] ??= 'yes';
    this.#draw(scene).then(
      () => {
        if (scene === this.#latest) delete this.dataset['stale'];
      },
      () => (this.dataset['stale'] = 'failed'),
    );
  }

  async #draw(scene: Scene): Promise<void> {
    const [{ draw }, { sizes }, { loadTopic }] = await Promise.all([
      import('../../figure-kit/draw.ts'),
      import('../../figure-kit/figure.ts'),
      import('../../topics/index.ts'),
    ]);
    const { figures = [] } = await loadTopic(this.dataset['draws'] ?? '');
    const figure = figures.find(({ id }) => id === this.of);
    if (!figure || scene !== this.#latest) return;
    for (const place of this.querySelectorAll<HTMLElement>('.drawing')) {
      const size = place.dataset['size'] === 'narrow' ? 'narrow' : 'wide';
      place.replaceChildren(draw(figure, scene, sizes[size], document, `${this.of}-${size}`));
    }
  }
}
