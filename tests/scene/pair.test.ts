import { expect, test } from 'vitest';
import { compare } from '../../src/model/index.ts';
import { ofKnife } from '../../src/comparison/found.ts';
import { pairOf } from '../../src/scene/pair.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { pair } from '../topics/odd-comparisons.ts';

/** Two steels within the published line, and a third knife of so much HRC beside them. */
function beside(hrc: number): ComparisonEntry {
  const two = pair({ hrc: 63 }, { hrc: 57 });
  const [plover] = two.knives;
  return {
    ...two,
    knives: [...two.knives, ...(plover ? [{ ...plover, id: 'curlew', name: 'Curlew', hrc }] : [])],
  };
}

// The published line is used from 50 to 66 HRC (Thomas 2018), once for a whole comparison.
test.each([
  [60, ['plover', 'dunlin']],
  [46, ['plover', 'dunlin', 'curlew']],
])('a third knife of %d HRC leaves %j for what is asked of the two', (hrc, ids) => {
  const scene = sceneOf(beside(hrc));
  const held = pairOf(scene);
  expect(held.knives.map(({ id }) => id)).toEqual(ids);
  expect(ofKnife(compare(held).rows, 'dunlin').product).toBe(scene.row.careful.product);
});

test('the two alone would be said to differ otherwise where the third is too soft for the line', () => {
  const [soft, firm] = [sceneOf(beside(46)), sceneOf(beside(60))];
  expect(soft.row.careful.product).not.toBeCloseTo(firm.row.careful.product, 3);
});
