import { BenchElement } from './bench.ts';
import { CallElement } from './call.ts';
import { CheckElement } from './check.ts';
import { FigureElement } from './figure.ts';
import { NumElement } from './num.ts';
import { SliderElement } from './slider.ts';
import { WordsElement } from './words.ts';
import { WorkedElement } from './worked.ts';

const elements: Record<string, CustomElementConstructor> = {
  'kf-bench': BenchElement,
  'kf-call': CallElement,
  'kf-check': CheckElement,
  'kf-figure': FigureElement,
  'kf-num': NumElement,
  'kf-slider': SliderElement,
  'kf-words': WordsElement,
  'kf-worked': WorkedElement,
};

export function defineAll(): void {
  for (const [name, element] of Object.entries(elements)) {
    if (!customElements.get(name)) customElements.define(name, element);
  }
}
