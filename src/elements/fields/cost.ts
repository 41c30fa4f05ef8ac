import { costsOf } from '../../topics/cost/values.ts';
import { costFieldNames } from '../../topics/cost/fields.ts';
import type { CostTexts } from '../../topics/cost/fields.ts';
import { readCost } from '../../topics/cost/read-cost.ts';
import { costTable } from '../../topics/cost/words.ts';
import type { Scene } from '../../scene/scene.ts';
import { afterDrawing } from '../page/after-drawing.ts';
import { askProblem, askText } from './ask.ts';
import { createKnifePair } from './knife-pair.ts';
import { example, scene } from '../page/page.ts';
import { PriceGainElement } from '../figure/price-gain.ts';
import { SceneElement } from '../page/scene-element.ts';
import { fillHeads, fillRows } from '../page/table-rows.ts';

/** What it would cost: reads the offers from their fields; what cannot be read leaves the last good table. */
export class CostElement extends SceneElement {
  #pair = createKnifePair(this.querySelector('#cost-knife'), this.querySelector('#cost-against'));
  #told = false;

  override connectedCallback(): void {
    super.connectedCallback();
    if (!customElements.get('kf-price-gain')) customElements.define('kf-price-gain', PriceGainElement);
    this.addEventListener('input', this.#typed);
    this.addEventListener('change', this.#typed);
  }

  protected override show(now: Scene): void {
    // What was built is right as long as nothing was changed.
    if (this.#told || now.entry !== example) afterDrawing(this.#tell);
  }

  #typed = ({ target, type }: Event): void => {
    this.#pair.choose(target);
    this.#tell();
    if (type === 'change') this.#complain();
  };

  #read = () => {
    const texts = costFieldNames.map((name) => [name, askText(this, `cost-${name}`)]);
    return readCost(Object.fromEntries(texts) as CostTexts, scene.value, this.#pair.show(scene.value));
  };

  /** Says at each field what is wrong with it: once it is left, not while it is typed. */
  #complain = (): void => {
    const read = this.#read();
    const problems = read.ok ? [] : read.problems;
    for (const name of costFieldNames)
      askProblem(this, `cost-${name}`, problems.find(({ field }) => field === name)?.message ?? '');
  };

  #tell = (): void => {
    this.#told = true;
    const read = this.#read();
    if (!read.ok) return;
    this.#complain();
    const { columns, rows } = costTable(scene.value, read.asked, costsOf(scene.value, read.asked));
    const table = this.querySelector('table.cost');
    fillHeads(table, columns);
    fillRows(table, rows);
    const figure = this.querySelector('kf-price-gain');
    if (figure instanceof PriceGainElement) figure.ask(read.asked);
  };
}
