import { chosenInRange } from '../../topics/ask/chosen.ts';
import { optionTitle, pollOf } from '../../topics/ask/poll.ts';
import type { PollOption } from '../../topics/ask/poll.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import type { Scene } from '../../scene/scene.ts';
import { GuessStripElement } from './guess-strip.ts';
import { guess } from './page.ts';
import { writeText } from './write-text.ts';

/** A guess among five spans or as a number, above the fold that holds the answer. */
export class PollElement extends GuessStripElement {
  #options: PollOption[] = [];
  #chosen: PollOption | undefined;
  #scene: Scene | undefined;
  #entry: ComparisonEntry | undefined;
  /** Arrow keys choose each option they pass: the answer then waits for the button. */
  #byArrow = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('keydown', this.#keyed);
    this.addEventListener('pointerdown', this.#pointed);
    this.addEventListener('change', this.#changed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('keydown', this.#keyed);
    this.removeEventListener('pointerdown', this.#pointed);
    this.removeEventListener('change', this.#changed);
  }

  protected override show(scene: Scene): void {
    this.#scene = scene;
    if (scene.entry !== this.#entry) {
      if (this.#entry) this.#clear();
      this.#entry = scene.entry;
      this.#options = pollOf(scene);
      this.#write();
    }
    super.show(scene);
  }

  /** The options, each in its own label; there are always as many. */
  #write(): void {
    const labels = [...this.querySelectorAll('.options label')];
    this.#options.forEach((option, index) => {
      writeText(labels[index]?.querySelector('b'), optionTitle(option));
      writeText(labels[index]?.querySelector('small'), option.thought);
    });
  }

  #clear(): void {
    this.#chosen = undefined;
    for (const radio of this.querySelectorAll<HTMLInputElement>('input[type=radio]')) radio.checked = false;
  }

  protected override verdict(scene: Scene): string {
    // A number that was typed since takes the place of the option.
    if (scene.guess !== null) {
      this.#clear();
      return super.verdict(scene);
    }
    return this.#chosen ? chosenInRange(this.#chosen, scene) : '';
  }

  #keyed = ({ key }: KeyboardEvent): void => {
    this.#byArrow = key.startsWith('Arrow');
  };

  #pointed = (): void => {
    this.#byArrow = false;
  };

  #changed = ({ target }: Event): void => {
    if (target instanceof HTMLInputElement && target.type === 'radio' && !this.#byArrow) this.#choose();
  };

  protected override save(): void {
    if (this.typed?.value.trim() === '' && this.#choose()) return;
    super.save();
  }

  /** Takes the option that is marked as the guess; whether there is one. */
  #choose(): boolean {
    const marked = this.querySelector<HTMLInputElement>('input[type=radio]:checked')?.value;
    const option = this.#options.find(({ letter }) => letter === marked);
    if (!option || !this.#scene) return false;
    this.#chosen = option;
    if (this.typed) this.typed.value = '';
    writeText(this.place('problem'), '');
    if (guess.peek() === null) this.say(this.#scene);
    else guess.value = null;
    this.open();
    return true;
  }
}
