import type { Scene } from '../lineup/scene.ts';
import { SceneElement } from './scene-element.ts';
import { registry } from './topics.ts';

export class NumElement extends SceneElement {
  protected override show(scene: Scene): void {
    this.textContent = registry().number(this.of)(scene);
  }
}
