import type { Scene } from '../lineup/scene.ts';
import { ReadElement } from './scene-element.ts';
import { registry } from './topics.ts';

export class NumElement extends ReadElement {
  protected override say(scene: Scene): void {
    this.textContent = registry().number(this.of)(scene);
  }
}
