import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { loft } from '../../../src/components/scene.ts';
import { costAskedFirst } from '../../../src/topics/cost/values.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { draw } from '../../../src/figure-kit/draw.ts';
import { sizes } from '../../../src/figure-kit/figure.ts';
import { priceGainOf } from '../../../src/topics/cost/figure-price-gain.ts';

const scene = sceneOf(loft());
const first = costAskedFirst(scene);

test.each(Object.entries(sizes))('labels of offers at one price stand clear of each other, %s', (_, size) => {
  // Three steels of nearly one hardness, all for the same money: their points all but coincide.
  const [, , steel] = first.offers;
  if (steel?.offer.kind !== 'steel') throw new Error('the third offer is a steel');
  const { offer } = steel;
  const offers = [61, 61.1, 61.2].map((hrc) => ({ ...steel, offer: { ...offer, hrc }, price: 50 }));
  const { document } = parseHTML('<html><body></body></html>');
  const figure = priceGainOf(() => ({ ...first, offers }));
  const svg = draw(figure, scene, size, document as unknown as Document, 'x');
  const heights = [...svg.querySelectorAll('text')]
    .filter(({ textContent }) => textContent?.startsWith('Another steel'))
    .map((text) => Number(/,([\d.]+)\)/.exec(text.getAttribute('transform') ?? '')?.[1]))
    .sort((a, b) => a - b);
  expect(heights).toHaveLength(3);
  for (const [index, height] of heights.slice(1).entries())
    expect(height - (heights[index] ?? 0)).toBeGreaterThan(14);
});

test('offers without a price are no points, and that is said', () => {
  const offers = first.offers.map(({ price: _price, ...offer }) => offer);
  const figure = priceGainOf(() => ({ ...first, offers }));
  expect(figure.table(scene).rows).toEqual([['no offer with a price', '–', '–']]);
  expect(figure.caption(scene)).toMatch(/No offer has a price yet\.$/);
});
