import { readNumber } from '../../comparison/read.ts';
import type { Scene } from '../../scene/scene.ts';
import { asEntered, putInto, takesOf } from '../../topics/what-it-takes/values.ts';
import type { Asked, Take } from '../../topics/what-it-takes/values.ts';
import {
  askedSaid,
  bandCell,
  canPut,
  putDone,
  putSaid,
  takeCells,
} from '../../topics/what-it-takes/words.ts';
import { afterDrawing } from '../page/after-drawing.ts';
import { askProblem, askText } from './ask.ts';
import { createKnifePair } from './knife-pair.ts';
import { changeOwn, example, scene } from '../page/page.ts';
import { SceneElement } from '../page/scene-element.ts';
import { createBands } from './takes-bands.ts';

/** What it would take: the question in its fields, an answer a row, their bands one by one. */
export class TakesElement extends SceneElement {
  #pair = createKnifePair(this.querySelector('#takes-knife'), this.querySelector('#takes-against'));
  #target = 1;
  #asked: Asked | undefined;
  #takes: readonly Take[] = [];
  #bands = createBands(({ attribute }, band) => {
    const cell = this.#cells(attribute)[3];
    if (cell) cell.textContent = band ? bandCell(scene.value, attribute, band) : 'could not be worked out';
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('input', this.#typed);
    this.addEventListener('change', this.#typed);
    this.addEventListener('click', this.#pressed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#bands.stop();
  }

  protected override show(now: Scene): void {
    // What was built is right as long as nothing was changed.
    if (this.#asked || now.entry !== example) afterDrawing(this.#tell);
  }

  #typed = ({ target, type }: Event): void => {
    this.#pair.choose(target);
    const read = readNumber(askText(this, 'takes-target'), { what: 'the multiple', low: 0.01, high: 100 });
    // A number half typed is not complained of yet.
    if (read.ok || type === 'change') askProblem(this, 'takes-target', read.ok ? '' : read.message);
    if (read.ok) this.#target = read.value;
    this.#tell();
  };

  #tell = (): void => {
    const asked = { ...this.#pair.show(scene.value), target: this.#target };
    this.#asked = asked;
    this.#takes = [];
    try {
      this.#takes = takesOf(scene.value, asked);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      // Evening up can make a pair of knives that, as entered, would not be one.
      this.toggleAttribute('data-refused', true);
      this.#say('asked', `This cannot be asked of the knives as entered: ${error.message}.`);
      this.#bands.stop();
      return;
    }
    this.toggleAttribute('data-refused', false);
    this.#say('asked', askedSaid(scene.value, asked));
    for (const take of this.#takes) {
      const cells = this.#cells(take.attribute);
      const texts = [...takeCells(scene.value, asked, take), '…'];
      for (const [index, text] of texts.entries()) if (cells[index]) cells[index].textContent = text;
      const button = cells[4]?.querySelector('button');
      if (!button) continue;
      button.hidden = !canPut(take);
      button.textContent = putSaid(scene.value, take);
    }
    this.#bands.ask(
      asEntered(scene.value),
      this.#takes.map(({ attribute }) => ({ ...asked, attribute })),
    );
  };

  #pressed = ({ target }: Event): void => {
    const button = target instanceof Element ? target.closest('button') : null;
    const attribute = button?.closest('tr')?.dataset['attribute'];
    if (!button) return;
    if (!this.#asked) this.#tell();
    const take = this.#takes.find((one) => one.attribute === attribute);
    const asked = this.#asked;
    if (!asked || !take || take.answer.value === null) return;
    const next = putInto(scene.value, asked, take.attribute, take.answer.value);
    const refused = changeOwn(() => next, `take ${take.attribute}`);
    // The button goes with the value it was for.
    this.querySelector<HTMLElement>('.scroll')?.focus();
    this.#say('put-said', refused || putDone(scene.value, asked, take.attribute));
  };

  #cells = (attribute: string): readonly Element[] => [
    ...(this.querySelector(`[data-attribute="${attribute}"]`)?.children ?? []),
  ];

  #say(part: string, text: string): void {
    const place = this.place(part);
    if (place && place.textContent !== text) place.textContent = text;
  }
}
