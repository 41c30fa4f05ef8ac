import { readAnswer } from '../exercises/reader.ts';
import { additiveGuess, compound } from '../model/index.ts';
import { percentagesOf } from '../lineup/numbers.ts';
import { groundRoom, roomIn, roomOfFamilies } from '../lineup/ranges.ts';
import { routesOf } from '../lineup/routes.ts';
import type { Scene } from '../lineup/scene.ts';
import { times } from '../lineup/show.ts';
import { SceneElement } from './scene-element.ts';

const answers: Record<string, (scene: Scene) => { answer: number; sum: number | null }> = {
  percentages: (scene) => ({
    answer: compound(percentagesOf(scene)),
    sum: additiveGuess(percentagesOf(scene)),
  }),
  routes: (scene) => ({ answer: routesOf(scene).close, sum: null }),
  close: ({ row }) => ({ answer: row.close.product, sum: null }),
  contest: ({ lineUp }) => {
    const { close } = roomOfFamilies(lineUp);
    return { answer: groundRoom(close).factor / roomIn(close, 'steel').factor, sum: null };
  },
};

/** Keeps the guess beside the answer, and says what it was near to. The guess stays in its own field. */
export class CallElement extends SceneElement {
  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('submit', this.#keep);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('submit', this.#keep);
  }

  #scene: Scene | undefined;

  #keep = (event: Event): void => {
    event.preventDefault();
    this.dataset['kept'] = 'yes';
    if (this.#scene) this.show(this.#scene);
  };

  protected override show(scene: Scene): void {
    this.#scene = scene;
    const said = this.place('said');
    const input = this.querySelector('input');
    const held = answers[this.of];
    if (!said || !input || !held || this.dataset['kept'] !== 'yes') return;
    const read = readAnswer(input.value, 'times as long');
    input.toggleAttribute('aria-invalid', false);
    if (!read.ok) {
      input.setAttribute('aria-invalid', 'true');
      said.textContent = read.message;
      return;
    }
    const { answer, sum } = held(scene);
    const near = (value: number) => Math.abs(Math.log(read.value / value)) < 0.03;
    const verdict = near(answer)
      ? 'You called it.'
      : sum !== null && near(sum)
        ? 'That is the sum, the answer most people give. Read on to see what it misses.'
        : read.value < answer
          ? 'You called it low.'
          : 'You called it high.';
    said.textContent = `Your call: ${times(read.value)}. The model: ${times(answer)}. ${verdict}`;
  }
}
