import { expect, test } from 'vitest';
import { compare } from '../../src/model/index.ts';
import { ofKnife } from '../../src/comparison/found.ts';
import { pairOf } from '../../src/scene/pair.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { pair } from '../topics/odd-comparisons.ts';

/** Two steels, and a third knife of so much HRC beside them. */
function beside(hrc: number): ComparisonEntry {
  const two = pair({ hrc: 63 }, { hrc: 57 });
  const [plover] = two.knives;
  return {
    ...two,
    knives: [...two.knives, ...(plover ? [{ ...plover, id: 'curlew', name: 'Curlew', hrc }] : [])],
  };
}

test.each([60, 49.9, 46, 20])('a third knife of %d HRC changes nothing between the two', (hrc) => {
  const scene = sceneOf(beside(hrc));
  const held = pairOf(scene);
  expect(held.knives.map(({ id }) => id)).toEqual(['plover', 'dunlin']);
  for (const structure of ['multiplied', 'added', 'toLimit'] as const)
    expect(ofKnife(compare(held).rows, 'dunlin')[structure]).toBe(scene.row.careful[structure]);
});
