import { describe, expect, test } from 'vitest';
import { valueAt } from '../../../src/elements/figure/value-at.ts';
import { loft } from '../../../src/components/scene.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { edgeShape, halfOutline, thicknessAboveApexMm } from '../../../src/figure-kit/outline.ts';
import { sizes } from '../../../src/figure-kit/figure.ts';
import type { Handle, Place } from '../../../src/figure-kit/figure.ts';
import { nameWithin, shortName, textPx } from '../../../src/figure-kit/short-name.ts';
import { nominal } from '../../../src/model/index.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { Scene } from '../../../src/scene/scene.ts';
import { everything } from '../../../src/topics/all.ts';
import { comparedAtMm, edgesOf, lengthShownMm, thickestMm } from '../../../src/topics/edges/section.ts';
import { oddComparisons, pair } from '../odd-comparisons.ts';

const figure = everything.figure('edges');
const loftScene = sceneOf(loft());
const all: [string, Scene][] = [
  ['the loft', loftScene],
  ...Object.entries(oddComparisons).map(([name, entry]): [string, Scene] => [name, sceneOf(entry)]),
];
const extremes = [4, 45].flatMap((deg) =>
  [0.001, 0.01, 5, 20].map((edgeMm): [string, Scene] => [
    `${deg}° from ${edgeMm} mm`,
    sceneOf(
      pair({ angle: { deg }, edgeMm, grind: { form: 'flat', spineMm: Math.max(3, edgeMm), heightMm: 16 } }),
    ),
  ]),
);
const degrees = (across: number, up: number): number => (Math.atan2(across, up) * 180) / Math.PI;

/** By the definition of an angle per side and of the thickness behind the edge: own calculation. */
describe.each(all)('the outlines of %s', (_name, scene) => {
  test('have their thickness behind the edge at the shoulder, and their angle below it', () => {
    for (const { knife } of edgesOf(scene)) {
      const { foot, shoulder } = edgeShape(knife);
      expect(2 * shoulder.halfMm).toBeCloseTo(nominal(knife.edgeMm), 12);
      expect(thicknessAboveApexMm(knife, shoulder.upMm)).toBeCloseTo(nominal(knife.edgeMm), 12);
      const flank = degrees(shoulder.halfMm - foot.halfMm, shoulder.upMm - foot.upMm);
      expect(flank).toBeCloseTo(nominal(knife.angleDeg), 9);
      if (knife.microbevelAngleDeg !== undefined)
        expect(degrees(foot.halfMm, foot.upMm)).toBeCloseTo(nominal(knife.microbevelAngleDeg), 9);
    }
  });

  test('go up point by point, as thick as they are said to be', () => {
    for (const { knife } of edgesOf(scene)) {
      const points = halfOutline(knife, comparedAtMm(scene));
      points.forEach(({ upMm, halfMm }, at) => {
        if (at > 0) expect(upMm).toBeGreaterThan(points[at - 1]?.upMm ?? 0);
        expect(thicknessAboveApexMm(knife, upMm)).toBeCloseTo(2 * halfMm, 9);
      });
    }
  });
});

test('a flat blade of 0.6 mm at the shoulder and 3 mm 14 mm above it thickens in a straight line', () => {
  // 24° per side: the bevel is 0.3 / tan 24° = 0.674 mm high. 8 mm from the edge are 7.326 mm above the shoulder.
  expect(thicknessAboveApexMm(loftScene.baselineKnife, 8)).toBeCloseTo(0.6 + (2.4 * 7.326) / 14, 3);
});

test('the caption says both thicknesses 8 mm from the edge', () =>
  expect(figure.caption(loftScene)).toBe('At 8 mm from the edge Plover is 1.9 mm thick and Dunlin 0.7 mm.'));

describe('the length that is drawn', () => {
  test.each([...all, ...extremes])(
    'of %s holds both bevels and no more thickness than has room',
    (_name, scene) => {
      const edges = edgesOf(scene);
      const length = lengthShownMm(edges, 8, 608, 190);
      for (const edge of edges) {
        expect(edge.shape.shoulder.upMm).toBeLessThan(length);
        expect((thickestMm(edge, length) * 608) / length).toBeLessThanOrEqual(190);
      }
      const longest = Math.max(...edges.map(({ shape }) => shape.shoulder.upMm));
      // The larger bevel can be seen: it takes at least a fortieth of the length.
      expect(longest / length).toBeGreaterThan(1 / 40);
    },
  );

  test('is 8 mm of the loft’s, and 6 mm on a narrow sheet', () => {
    expect(lengthShownMm(edgesOf(loftScene), 8, 608, 190)).toBe(8);
    expect(lengthShownMm(edgesOf(loftScene), 6, 310, 120)).toBe(6);
  });

  test.each([...all, ...extremes])('%s is to one scale in both directions', (_name, scene) => {
    for (const of of ['edges', 'edges-standing'] as const)
      for (const size of Object.values(sizes)) {
        const { x, y, width = 0, height = 0 } = everything.figure(of).options(scene, size);
        const span = (axis: typeof x): number => {
          const [from = 0, to = 0] = (axis?.domain ?? []) as number[];
          return Math.abs(to - from);
        };
        expect(span(x) / width).toBeCloseTo(span(y) / height, 9);
      }
  });
});

describe.each(Object.entries(sizes))('by hand, on a %s sheet', (_size, size) => {
  /** The centre lines of the two edges, found where a drag takes hold of them. */
  const holdAt = (scene: Scene, at: Place): Handle | undefined => figure.drag?.(scene, size, at);
  const found = (scene: Scene, control: string, x: number, out = 0): { handle: Handle; ys: number[] } => {
    const { y } = figure.options(scene, size);
    const top = (y as { domain: number[] }).domain[1] ?? 0;
    const ys = Array.from({ length: 2000 }, (_, step) => (top * step) / 2000).filter(
      (at) => holdAt(scene, { x, y: at })?.control === control,
    );
    const handle = holdAt(scene, { x, y: centreOf(ys) + out });
    if (!handle) throw new Error(`nothing holds ${control}`);
    return { handle, ys };
  };
  const centreOf = (ys: readonly number[]): number => ((ys[0] ?? 0) + (ys.at(-1) ?? 0)) / 2;
  const valueOf = (handle: Handle, at: Place, entry: ComparisonEntry): number =>
    valueAt(handle, everything.control(handle.control), entry, at);

  test.each(edgesOf(loftScene))('$role: the shoulder stands where its thickness puts it', (edge) => {
    const { shoulder } = edge.shape;
    const { handle, ys } = found(loftScene, `${edge.role}.edge`, shoulder.upMm, shoulder.halfMm);
    const centre = centreOf(ys);
    const at = (thick: number): Place => ({ x: shoulder.upMm, y: centre + thick / 2 });
    expect(valueOf(handle, at(edge.shape.edgeMm), loftScene.entry)).toBeCloseTo(edge.shape.edgeMm, 9);
    expect(valueOf(handle, at(0.4), loftScene.entry)).toBe(0.4);
    expect(valueOf(handle, at(0), loftScene.entry)).toBe(0.01);
  });

  test.each(edgesOf(loftScene))('$role: the flank stands where its angle puts it', (edge) => {
    const { shoulder, angleDeg } = edge.shape;
    // A little beyond the tip there is no shoulder near.
    const taken = 0.12 * Math.tan((angleDeg * Math.PI) / 180);
    const { handle, ys } = found(loftScene, `${edge.role}.angle`, 0.12, taken);
    const centre = centreOf(ys);
    const at = (deg: number, x: number): Place => ({ x, y: centre - x * Math.tan((deg * Math.PI) / 180) });
    expect(valueOf(handle, at(angleDeg, shoulder.upMm), loftScene.entry)).toBe(angleDeg);
    for (const deg of [4, 12.5, 20, 44.5]) expect(valueOf(handle, at(deg, 1), loftScene.entry)).toBe(deg);
  });

  test('where it is taken changes nothing', () => {
    const [edge] = edgesOf(loftScene);
    const x = edge?.shape.shoulder.upMm ?? 0;
    const { handle, ys } = found(loftScene, 'baseline.edge', x, 0.25);
    expect(valueOf(handle, { x, y: centreOf(ys) + 0.25 }, loftScene.entry)).toBe(0.6);
    expect(valueOf(handle, { x, y: centreOf(ys) + 0.3 }, loftScene.entry)).toBe(0.7);
  });

  test('a typed ± stays', () => {
    const taken = 0.12 * Math.tan((24 * Math.PI) / 180);
    const { handle, ys } = found(loftScene, 'baseline.angle', 0.12, taken);
    const to = { x: 1, y: centreOf(ys) + Math.tan((22.1 * Math.PI) / 180) };
    const control = everything.control(handle.control);
    const written = control.write(loftScene.entry, valueOf(handle, to, loftScene.entry));
    expect(written.knives[0]?.angle).toEqual({ deg: { value: 22, plusMinus: 1 } });
  });

  test('what is made equal is dragged by the knife it is taken from alone', () => {
    const equal = sceneOf({ ...loft(), madeEqual: ['angleDeg', 'edgeMm'] });
    const [, own] = edgesOf(equal);
    const x = own?.shape.shoulder.upMm ?? 0;
    expect(() => found(equal, 'subject.edge', x)).toThrow();
    expect(() => found(equal, 'subject.angle', 0.05)).toThrow();
    expect(found(equal, 'baseline.edge', x).ys.length).toBeGreaterThan(0);
  });
});

describe('a name on a drawing', () => {
  test('is cut to its room', () => {
    expect(nameWithin('Plover', 100)).toBe('Plover');
    const cut = nameWithin('W'.repeat(10_000), 120);
    expect(cut).toMatch(/^W+…$/);
    expect(textPx(cut)).toBeLessThanOrEqual(120);
  });
  test('from right to left stays closed in itself', () =>
    expect(shortName(`\u2068${'א'.repeat(50)}\u2069`, 10)).toMatch(/^\u2068א+…\u2069$/));
});
