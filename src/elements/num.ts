import { numberNamed } from '../lineup/numbers.ts';
import type { Scene } from '../lineup/scene.ts';
import { SceneElement } from './scene-element.ts';

export class NumElement extends SceneElement {
  protected override show(scene: Scene): void {
    this.textContent = numberNamed(this.of, scene);
  }
}
