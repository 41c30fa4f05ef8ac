import type { CostAsked } from '../../topics/cost/asked.ts';
import { costAskedFirst } from '../../topics/cost/values.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { priceGainOf } from '../../topics/cost/figure-price-gain.ts';
import { FigureElement } from './figure.ts';
import { scene } from '../page/page.ts';

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
