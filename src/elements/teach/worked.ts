import type { Scene } from '../../scene/scene.ts';
import { example, scene as shown } from '../page/page.ts';
import { ReadElement } from '../page/scene-element.ts';
import { registry } from '../page/topics.ts';
import type { WorkedBlanks } from './worked-blanks.ts';
import { writeText } from '../page/write-text.ts';

/** Puts other numbers into the formulas set at build. At the press of its button it asks for the results instead. */
export class WorkedElement extends ReadElement {
  #blanks: WorkedBlanks | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('click', this.#click);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('click', this.#click);
  }

  protected override say(scene: Scene): void {
    const worked = registry().worked(this.of)(scene);
    const { givens, steps } = worked;
    writeText(this.place('givens'), givens);
    const items = [...this.querySelectorAll('ol > li')];
    steps.forEach((step, index) => {
      const item = items[index];
      if (!item) return;
      writeText(item.querySelector('[data-part="say"]'), step.say);
      for (const number of item.querySelectorAll('[data-value]'))
        writeText(number, step.values[number.getAttribute('data-value') ?? ''] ?? '');
      // The TeX that goes along for copying holds the numbers of the build: better none than the wrong one.
      if (scene.entry !== example) item.querySelector('annotation')?.remove();
    });
    this.#blanks?.show(worked);
  }

  #click = ({ target }: Event): void => {
    if (!(target instanceof Element) || !target.closest('[data-does="fill"]')) return;
    if (this.#blanks) {
      this.#blanks.close();
      this.#blanks = undefined;
    } else
      import('./worked-blanks.ts').then(
        ({ WorkedBlanks }) => {
          this.#blanks ??= new WorkedBlanks(this, registry().worked(this.of)(shown.value));
        },
        () =>
          writeText(
            this.place('said'),
            'The blanks could not be fetched. Check the connection and try again.',
          ),
      );
  };
}
