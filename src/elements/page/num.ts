import type { Scene } from '../../scene/scene.ts';
import { ReadElement } from './scene-element.ts';
import { registry } from './topics.ts';
import { writeText } from './write-text.ts';

export class NumElement extends ReadElement {
  protected override say(scene: Scene): void {
    writeText(this, registry().number(this.of)(scene));
  }
}
