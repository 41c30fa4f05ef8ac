import { structures } from '../model/index.ts';
import type { Row, Structure } from '../model/index.ts';
import { factorOf, ofKnife } from '../comparison/found.ts';
import type { Scene } from './scene.ts';

/** A whole comparison of one knife with the baseline: by the quick sum, or by the careful estimate under one structure. */
export type Way = 'quick' | Structure;

/** The ways, in the order in which figures, tables and sentences take them. */
export const ways: readonly Way[] = ['quick', ...structures];

/** One knife of the comparison, by every way at the middle settings. */
export interface Stacked extends Record<Way, number> {
  id: string;
  name: string;
  isBaseline: boolean;
  rows: { quick: Row; careful: Row };
}

/** Every knife of the comparison, the longest-cutting by the careful estimate first; equals stay in the comparison's order. */
export function stackOf({ entry, knives, rows }: Scene): Stacked[] {
  const stacked = knives.map(({ id, name }) => {
    const [quick, careful] = [ofKnife(rows.quick, id), ofKnife(rows.careful, id)];
    return {
      id,
      name,
      isBaseline: id === entry.baseline,
      rows: { quick, careful },
      quick: quick.multiplied,
      multiplied: careful.multiplied,
      added: careful.added,
      toLimit: careful.toLimit,
    };
  });
  return inOrder(stacked, 'multiplied');
}

/** The knives by one way, the longest-cutting first. */
export const inOrder = (knives: readonly Stacked[], way: Way): Stacked[] =>
  [...knives].sort((a, b) => b[way] - a[way]);

/** The first and the last knife by one way, and how many times as long the one cuts as the other. */
export function ends(scene: Scene, way: Way): { first: Stacked; last: Stacked; ratio: number } {
  const order = inOrder(stackOf(scene), way);
  const [first, last] = [order[0], order.at(-1)];
  // Unreachable: a comparison has two knives at least.
  if (!first || !last) throw new RangeError('the comparison has no knives');
  return { first, last, ratio: first[way] / last[way] };
}

/** The two neighbours of that order that lie nearest to each other. */
export function nearest(scene: Scene): { longer: Stacked; shorter: Stacked; ratio: number } {
  const order = stackOf(scene);
  const pairs = order.flatMap((longer, index) => {
    const shorter = order[index + 1];
    return shorter ? [{ longer, shorter, ratio: longer.multiplied / shorter.multiplied }] : [];
  });
  const [first, ...others] = pairs;
  // Unreachable: a comparison has two knives at least.
  if (!first) throw new RangeError('a comparison of one knife has no neighbours');
  return others.reduce((best, pair) => (pair.ratio < best.ratio ? pair : best), first);
}

/** The tempting sum between first and last by the careful estimate: 1 and what each standing term adds to it. */
export function endsAdded(scene: Scene): number {
  const { first, last } = ends(scene, 'multiplied');
  return first.rows.careful.terms.reduce((sum, { id }) => {
    return sum + factorOf(first.rows.careful, id) / factorOf(last.rows.careful, id) - 1;
  }, 1);
}
