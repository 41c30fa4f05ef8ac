import type { CostAsked } from '../lineup/cost.ts';
import { costAskedFirst } from '../lineup/cost.ts';
import type { Figure } from '../plots/figure.ts';
import { priceGainOf } from '../plots/price-gain.ts';
import { FigureElement } from './figure.ts';
import { scene } from './page.ts';

/** The figure of the offers that are typed beside it. */
export class PriceGainElement extends FigureElement {
  #asked: CostAsked | undefined;
  #figure = priceGainOf((now) => this.#asked ?? costAskedFirst(now));

  protected override get figure(): Figure {
    return this.#figure;
  }

  ask(asked: CostAsked): void {
    this.#asked = asked;
    this.show(scene.peek());
  }
}
