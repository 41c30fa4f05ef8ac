import { withShownNames } from '../../comparison/knife-names.ts';
import { carbideOf, contents, readComposition, textsOf } from '../../topics/composition/entry.ts';
import type { CompositionField, CompositionTexts, ReadComposition } from '../../topics/composition/entry.ts';
import { carbideTaken, compositionSaid, takeSaid } from '../../topics/composition/words.ts';
import type { Scene } from '../../scene/scene.ts';
import type { Hardened } from '../../scene/steel.ts';
import { compositionLever } from '../../topics/composition/figure-composition-lever.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { askProblem, askText } from './ask.ts';
import { FigureElement } from '../figure/figure.ts';
import { changeOwn, scene } from '../page/page.ts';

const fields: readonly CompositionField[] = [...contents, 'hardening'];
const idOf = (field: CompositionField): string => `composition-${field}`;

/** Carbide from a composition: the steel in its fields, drawn as a lever, and put into the comparison when asked. */
export class CompositionElement extends FigureElement {
  /** The last steel that could be worked out; one of the page's build always can. */
  #hardened: Hardened | undefined;

  override connectedCallback(): void {
    // What is being typed as this comes may be half a number; what was built is a steel.
    const built = readComposition(
      this.#texts((field) => this.querySelector<HTMLInputElement>(`#${idOf(field)}`)?.defaultValue ?? ''),
    );
    if (built.ok) this.#hardened = built.hardened;
    this.#read(false);
    super.connectedCallback();
    this.addEventListener('input', this.#typed);
    this.addEventListener('change', this.#typed);
    this.addEventListener('click', this.#pressed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('input', this.#typed);
    this.removeEventListener('change', this.#typed);
    this.removeEventListener('click', this.#pressed);
  }

  protected override get figure(): Figure {
    if (!this.#hardened) throw new Error('no steel of the page could be worked out');
    return compositionLever(this.#hardened);
  }

  protected override show(now: Scene): void {
    super.show(now);
    this.#knives(now);
    if (this.#hardened) this.#say('said', compositionSaid(this.#hardened).join(' '));
  }

  get #knife(): HTMLSelectElement | null {
    return this.querySelector('#composition-knife');
  }

  /** The list of knives is the comparison's, and the button names the one that is chosen. */
  #knives({ entry }: Scene): void {
    const select = this.#knife;
    if (!select) return;
    const before = select.value;
    const same = withShownNames(entry.knives)
      .map(({ id, name }) => `${id} ${name}`)
      .join('\n');
    if ([...select.options].map(({ value, text }) => `${value} ${text}`).join('\n') !== same)
      select.replaceChildren(...withShownNames(entry.knives).map(({ id, name }) => new Option(name, id)));
    select.value = entry.knives.some(({ id }) => id === before) ? before : entry.subject;
    const chosen = entry.knives.find(({ id }) => id === select.value);
    const button = this.querySelector('button');
    if (button && chosen) button.textContent = takeSaid(chosen.name);
  }

  #texts = (of: (field: CompositionField) => string): CompositionTexts =>
    Object.fromEntries(fields.map((field) => [field, of(field)])) as CompositionTexts;

  #read(settled: boolean): ReadComposition {
    const read = readComposition(this.#texts((field) => askText(this, idOf(field))));
    if (read.ok) this.#hardened = read.hardened;
    for (const field of fields) {
      const problem = read.ok ? '' : (read.problems[field] ?? '');
      // A number half typed is not complained of yet.
      if (problem === '' || settled) askProblem(this, idOf(field), problem);
    }
    return read;
  }

  #typed = ({ target, type }: Event): void => {
    if (target instanceof HTMLSelectElement && target.id === 'composition-designation') {
      if (type !== 'change' || target.value === '') return;
      for (const [field, text] of Object.entries(textsOf(target.value))) {
        const input = this.querySelector<HTMLInputElement>(`#${idOf(field as CompositionField)}`);
        if (input) input.value = text;
      }
    } else if (target instanceof HTMLInputElement && target.id !== idOf('hardening')) {
      // A steel that was changed is no longer the standard's.
      const designation = this.querySelector<HTMLSelectElement>('#composition-designation');
      if (designation) designation.value = '';
    }
    this.#read(type === 'change');
    this.show(scene.value);
  };

  #pressed = ({ target }: Event): void => {
    if (!(target instanceof Element) || !target.closest('button')) return;
    const id = this.#knife?.value;
    const read = this.#read(true);
    if (!read.ok) {
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      this.#say('put-said', 'Not taken: see what is said at the field.');
      return;
    }
    const carbide = { volPercent: carbideOf(read.hardened.estimate) };
    const refused = changeOwn(
      (entry) => ({
        ...entry,
        knives: entry.knives.map((knife) => (knife.id === id ? { ...knife, carbide } : knife)),
      }),
      'carbide from composition',
    );
    const name = scene.value.knives.find((knife) => knife.id === id)?.name ?? '';
    this.#say('put-said', refused || carbideTaken(name, read.hardened));
  };

  #say(part: string, text: string): void {
    const place = this.place(part);
    if (place && place.textContent !== text) place.textContent = text;
  }
}
