import { describe, expect, test } from 'vitest';
import { valueAt } from '../../../src/elements/figure/value-at.ts';
import { loft } from '../../../src/components/scene.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { settled } from '../../../src/topics/base/settled.ts';
import { sizes } from '../../../src/figure-kit/figure.ts';
import type { Figure, Handle, Place } from '../../../src/figure-kit/figure.ts';
import { everything, topics } from '../../../src/topics/all.ts';

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
  .flatMap(({ figures: own = [] }) => own)
  .filter(({ drag }) => drag !== undefined);

/** Places all over a drawing, by its own axes: the middles of bands, parts of what is measured. */
function placesOf(figure: Figure, size: (typeof sizes)[keyof typeof sizes]): Place[] {
  const { x, y } = figure.options(scene, size);
  const along = (axis: typeof x): number[] => {
    const [from, to, ...more] = (axis?.domain ?? []) as unknown[];
    return typeof from === 'number' && typeof to === 'number' && more.length === 0
      ? Array.from({ length: 8 }, (_, part) => from + ((to - from) * part) / 7)
      : Array.from({ length: more.length + 2 }, (_, band) => band);
  };
  return along(x).flatMap((right) => along(y).map((up) => ({ x: right, y: up })));
}

const handlesFound = (figure: Figure): { at: Place; handle: Handle }[] =>
  Object.values(sizes).flatMap((size) =>
    placesOf(figure, size).flatMap((at) => {
      const handle = figure.drag?.(scene, size, at);
      return handle ? [{ at, handle }] : [];
    }),
  );
const handles = new Map(figures.map((figure) => [figure, handlesFound(figure)]));

const write = (name: string, value: number) => sceneOf(everything.control(name).write(scene.entry, value));

test('there are figures to drag', () => expect(figures.length).toBeGreaterThan(15));

test.each(figures)('$id is dragged by controls there are, to values of theirs', (figure) => {
  const found = handles.get(figure) ?? [];
  expect(found.length).toBeGreaterThan(0);
  for (const { at, handle } of found) {
    const control = everything.control(handle.control);
    const value = valueAt(handle, control, scene.entry, at);
    const { low = control.min, high = control.last?.(scene.entry) ?? control.max } = handle.within ?? {};
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
  }
});

test.each(figures)('$id: where a value puts what is dragged, the pointer finds that value', (figure) => {
  const seen = new Set<string>();
  for (const { at, handle } of handles.get(figure) ?? []) {
    if ('value' in handle || seen.has(handle.control)) continue;
    const control = everything.control(handle.control);
    const last = control.last?.(scene.entry) ?? control.max;
    for (const part of [0.1, 0.25, 0.4, 0.6, 0.8, 0.95]) {
      const value = settled(control, scene.entry, control.min + part * (last - control.min));
      const stands = handle.stands(write(handle.control, value), at);
      const next = handle.stands(
        write(handle.control, settled(control, scene.entry, value + control.step)),
        at,
      );
      if (stands === next) continue;
      seen.add(handle.control);
      expect(valueAt({ ...handle, aim: () => stands }, control, scene.entry, at)).toBe(value);
    }
  }
});

describe('by hand', () => {
  const value = (id: string, at: Place, to: Place, size: keyof typeof sizes = 'wide') => {
    const handle = everything.figure(id).drag?.(scene, sizes[size], at);
    return handle && [handle.control, valueAt(handle, everything.control(handle.control), scene.entry, to)];
  };

  test('two wedges are dragged by their flanks: the angle is that whose tangent is width over depth', () => {
    const { x } = everything.figure('two-wedges').options(scene, sizes.wide);
    const across = Number((x as { domain: number[] }).domain[1]);
    // The first wedge stands at a quarter of the width; 1 across and 2.5 deep is 21.8°, and 22° on the slider.
    expect(value('two-wedges', { x: 0, y: 1 }, { x: across / 4 - 1, y: 2.5 })).toEqual([
      'baseline.angle',
      22,
    ]);
  });

  test('a bar is dragged to the per cent it stands above the one before', () => {
    // 2.1 over 1.4 is 1.5, which is 50% more.
    expect(value('growing-bars', { x: 2, y: 1.5 }, { x: 2, y: 2.1 })).toEqual(['percentage.2', 50]);
    expect(value('growing-bars', { x: 0, y: 1 }, { x: 0, y: 2 })).toBeUndefined();
  });

  test('a damped reading of no exponent has no place to be dragged to, and stays', () => {
    const flat = sceneOf({ ...loft(), faceValues: [-40], assumptions: { thicknessExponent: 0 } });
    const handle = everything.figure('less-bars').drag?.(flat, sizes.wide, { x: 1, y: 3 });
    expect(handle && valueAt(handle, everything.control('less'), flat.entry, { x: 4, y: 3 })).toBe(40);
  });

  test('a bevel regrind is dragged by the flank of the knife whose angle it is', () => {
    // 24° is Plover's, 14° Dunlin's; the first bevel stands 164 px from the left.
    const { x } = everything.figure('four-times').options(scene, sizes.wide);
    const centre = (164 * Number((x as { domain: number[] }).domain[1])) / 640;
    const flank = (deg: number) => ({ x: centre + 0.1, y: 0.1 / Math.tan((deg * Math.PI) / 180) });
    expect(value('four-times', flank(23), flank(26))).toEqual(['baseline.angle', 26]);
    expect(value('four-times', flank(15), flank(12))).toEqual(['subject.angle', 12]);
  });
});
