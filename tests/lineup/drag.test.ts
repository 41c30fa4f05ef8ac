import { describe, expect, test } from 'vitest';
import { settled } from '../../src/lineup/settled.ts';
import { loft } from '../../src/figures/scene.ts';
import { sceneOf } from '../../src/lineup/scene.ts';
import { sizes } from '../../src/plots/figure.ts';
import { everything, topics } from '../../src/topics/all.ts';

const scene = sceneOf({ ...loft(), faceValues: [40, 40] });
const angle = everything.control('subject.angle');

describe('a dragged value', () => {
  test.each([
    [14.2, 14],
    [14.3, 14.5],
    [-5, 8],
    [1e9, 30],
  ])('of %d stands at %d on the slider', (value, stands) =>
    expect(settled(angle, scene.entry, value)).toBe(stands),
  );
});

const figures = Object.values(topics)
  .flatMap(({ figures: all = [] }) => all)
  .filter(({ drag }) => drag !== undefined);

test('there are figures to drag', () => expect(figures.length).toBeGreaterThan(5));

test.each(figures)('$id is dragged by a control there is, to a number', ({ drag }) => {
  for (const size of Object.values(sizes))
    for (const at of [
      { x: 1, y: 1 },
      { x: 2, y: 0 },
    ]) {
      const handle = drag?.(scene, size, at);
      expect(handle).toBeDefined();
      if (handle) expect(everything.control(handle.control).min).toBeLessThan(Infinity);
      expect(Number.isFinite(handle?.value(at))).toBe(true);
    }
});

test('two wedges are dragged by their flanks: the angle is that whose tangent is width over depth', () => {
  const wedges = everything.figure('two-wedges');
  const handle = wedges.drag?.(scene, sizes.wide, { x: 0, y: 1 });
  expect(handle?.control).toBe('baseline.angle');
  // The first wedge stands at a quarter of the width; a place as far from its middle as it is deep is 45°.
  const { x } = wedges.options(scene, sizes.wide);
  const across = Number((x as { domain: number[] }).domain[1]);
  expect(handle?.value({ x: across / 4 - 1, y: 1 })).toBeCloseTo(45, 10);
});

test('a bar is dragged to the per cent it stands above the one before', () => {
  const handle = everything.figure('growing-bars').drag?.(scene, sizes.wide, { x: 2, y: 1.5 });
  expect(handle?.control).toBe('percentage.2');
  // By hand: 2.1 over 1.4 is 1.5, which is 50 % more.
  expect(handle?.value({ x: 2, y: 2.1 })).toBeCloseTo(50, 10);
  expect(everything.figure('growing-bars').drag?.(scene, sizes.wide, { x: 0, y: 1 })).toBeUndefined();
});
