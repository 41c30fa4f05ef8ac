import { effect } from '@preact/signals-core';
import type { Scene } from '../../scene/scene.ts';
import { afterDrawing } from './after-drawing.ts';
import { isFolded } from './folded.ts';
import { atNextTouch } from './next-touch.ts';
import { example, isOfAddress, scene } from './page.ts';
import { Pause } from './pause.ts';
import { lateTopic } from './topics.ts';

/** How long the reader must pause before what comes late follows: it takes many samples, and is read, not watched. */
const pauseMs = 250;

/**
 * An element that shows a part of the scene: one effect from its connection to its end, no state of its own.
 *
 * With `data-late` its topic is large and comes late: the page was built with what it says of its own example, so the
 * topic is fetched only once there is another comparison to cover, or the element itself is touched.
 */
export abstract class SceneElement extends HTMLElement {
  #dispose: (() => void) | undefined;
  #waits = false;
  #arrival = 0;
  /** Calls off asking again for what did not come. */
  #notAgain = (): void => undefined;

  connectedCallback(): void {
    this.#waits = this.dataset['late'] !== undefined;
    if (this.#waits) {
      for (const touch of ['pointerover', 'focusin']) this.addEventListener(touch, this.#touched);
      // What brought the page to life may have been a touch of this very element.
      if (this.#underHand) this.#touched();
    }
    this.#dispose = effect(() => {
      const now = scene.value;
      if (isFolded(this)) return;
      if (!this.#waits) this.show(now);
      else if (now.entry !== example || now.guess !== null) this.fetchLate();
    });
    addEventListener('beforeprint', this.#onPaper);
  }

  disconnectedCallback(): void {
    this.#dispose?.();
    this.#notAgain();
    removeEventListener('beforeprint', this.#onPaper);
    for (const touch of ['pointerover', 'focusin']) this.removeEventListener(touch, this.#touched);
  }

  get #underHand(): boolean {
    return this.matches(':focus-within, :hover');
  }

  #touched = (): void => this.fetchLate();

  #onPaper = (): void => {
    if (!this.#waits) this.settle();
  };

  /** Shows at once what would follow after a pause: for paper, and for anyone who takes it along. */
  settle(): void {
    // What shows at once has nothing to catch up with.
  }

  /** The name of what it shows. */
  get of(): string {
    return this.getAttribute('of') ?? '';
  }

  protected abstract show(scene: Scene): void;

  protected place(name: string): HTMLElement | null {
    return this.querySelector<HTMLElement>(`[data-part="${name}"]`);
  }

  /** What it shows its topic with, where that comes late as well. */
  protected whatShows(): Promise<unknown> | undefined {
    return undefined;
  }

  /** Fetches the topic that comes late, where it is not there yet, and shows the scene of the moment. */
  protected fetchLate(): void {
    if (!this.#waits) return;
    // What was built is of another comparison: better nothing than that.
    if (scene.value.entry !== example) this.dataset['stale'] = 'yes';
    // Of the address, it is waited for; beside a hand that moves it waits for the pause.
    const pause = isOfAddress(scene.value.entry) ? 0 : pauseMs;
    Promise.all([lateTopic(this.dataset['late'] as string), this.whatShows()]).then(
      () => {
        clearTimeout(this.#arrival);
        if (this.#underHand) this.#arrived();
        else this.#arrival = window.setTimeout(() => afterDrawing(this.#arrived), pause);
      },
      () => {
        this.dataset['stale'] = 'failed';
        this.#notAgain();
        this.#notAgain = atNextTouch(() => this.fetchLate());
      },
    );
  }

  #arrived = (): void => {
    if (!this.isConnected || !this.#waits) return;
    this.#waits = false;
    delete this.dataset['stale'];
    this.show(scene.value);
  };
}

/** An element that is read: what it says follows a change after the drawing that changes under the reader's hand. */
export abstract class ReadElement extends SceneElement {
  #latest: Scene | undefined;
  #say = (): void => {
    if (this.#latest && this.isConnected) this.say(this.#latest);
  };
  #pause = new Pause(pauseMs, this.#say);

  protected override show(scene: Scene): void {
    const first = this.#latest === undefined;
    this.#latest = scene;
    // Built with the example, it says so already; of another comparison it must not say it for one frame.
    if (first) {
      if (scene.entry !== example) this.#say();
    } else if (this.dataset['late'] === undefined) afterDrawing(this.#say);
    else this.#pause.ask();
  }

  override settle(): void {
    this.#pause.callOff();
    this.#say();
  }

  protected abstract say(scene: Scene): void;
}
