import { describe, expect, test } from 'vitest';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { hasSeries } from '../../../src/scene/has-series.ts';
import { endPointsWords } from '../../../src/topics/end-points/words.ts';
import { endPointsOf } from '../../../src/topics/end-points/values.ts';
import { decodeLink, encodeLink } from '../../../src/comparison/link/codec.ts';
import type { Run } from '../../../src/runs/log.ts';
import { seriesOf } from '../../../src/runs/log-series.ts';
import { aRun } from '../../runs/runs.ts';
import { loft } from '../../comparison/entries.ts';

const say = (name: string, entry: ComparisonEntry): string =>
  (endPointsWords[name]?.(sceneOf(entry)) ?? []).filter(Boolean).join(' ');

/** A run with readings along S = start/(1 + a·x^b). */
function along(knife: string, sharpening: string, start: number, a: number, b: number): Run {
  const { cuts: _cuts, ...run } = aRun({ knife, sharpening });
  const series = [0, 10, 30, 100, 300, 1000].map((cut) => ({ cut, sharpness: start / (1 + a * cut ** b) }));
  return { ...run, series };
}

// Starts of 100 and 92 as in the design's oracle; with b = 1 the ratio at a stop s is by hand
// (100/s − 1)/(92/s − 1) · a₂/a₁.
const runs = [along('dunlin', '1', 100, 0.01, 1), along('plover', '1', 92, 0.02, 1)];
const byHand = (endPoint: number): number => ((100 / endPoint - 1) / (92 / endPoint - 1)) * 2;
const entry: ComparisonEntry = { ...loft(), runs };

describe('the ratio at equal sharpness of a log', () => {
  test('is that of the curves at the stop that was chosen, and at half of the start', () => {
    const described = endPointsOf(
      sceneOf({ ...entry, plan: { ratio: 1.25, batches: 1, blind: true, seed: 1, endPoint: 40 } }),
    );
    expect(described.origin).toBe('own');
    expect(described.chosen).toMatchObject({
      endPoint: 40,
      ratio: expect.closeTo(byHand(40), 6) as number,
      low: null,
    });
    expect(described.half?.ratio).toBeCloseTo(2, 6);
    for (const { endPoint, ratio } of described.bySharpness)
      expect(ratio / byHand(endPoint)).toBeCloseTo(1, 6);
    const said = say('stops-ratio', {
      ...entry,
      plan: { ratio: 1.25, batches: 1, blind: true, seed: 1, endPoint: 40 },
    });
    expect(said).toMatch(/At a sharpness of 40 Dunlin has cut 2\.3 times as much as Plover\. .*One series/);
    expect(said).toMatch(/The end point is part of the result/);
  });

  test('is told at equal force where forces were read, which rise', () => {
    const forced = (knife: string, start: number, a: number): Run => {
      const { cuts: _cuts, ...run } = aRun({ knife, sharpening: '1' });
      return { ...run, series: [0, 10, 30, 100, 300].map((cut) => ({ cut, sharpness: start + a * cut })) };
    };
    const plan = { ratio: 1.25, batches: 1, blind: true, seed: 1, endPoint: 6 };
    const own = { ...loft(), plan, runs: [forced('dunlin', 3, 0.02), forced('plover', 4, 0.04)] };
    // By hand: (6 − 3)/0.02 = 150 cuts against (6 − 4)/0.04 = 50.
    expect(endPointsOf(sceneOf(own))).toMatchObject({
      read: 'force',
      chosen: { ratio: expect.closeTo(3, 6) as number },
    });
    const said = say('stops-ratio', own);
    expect(said).toContain('At a force of 6 Dunlin has cut 3 times as much as Plover.');
    expect(said).toMatch(/asked for no more than 4\.\d+ once, and for 9 in the end/);
    // Twice the first force: 3/0.02 against 4/0.04.
    expect(say('stops-loss', own)).toContain(
      'Where each edge asks for twice its first force, Dunlin has cut 1.5 times as much',
    );
    expect(say('stops-curves', own)).toContain('Dunlin, sharpening 1: y₀ = 3');

    const mixed = { ...own, runs: [forced('dunlin', 3, 0.02), along('plover', '1', 92, 0.02, 1)] };
    expect(endPointsOf(sceneOf(mixed)).read).toBeNull();
    expect(say('stops-ratio', mixed)).toContain('cannot be compared');
  });

  test('is not told beyond what the readings saw', () => {
    const plan = { ratio: 1.25, batches: 1, blind: true, seed: 1, endPoint: 99 };
    expect(endPointsOf(sceneOf({ ...entry, plan })).chosen).toBeNull();
    expect(say('stops-ratio', { ...entry, plan })).toMatch(/you chose, 99, there is no ratio/);
  });

  test('says which series have no part in it', () => {
    const flat = { ...along('dunlin', '2', 100, 0.01, 1), series: [{ cut: 1, sharpness: 5 }] };
    const { series, leftOut } = seriesOf(
      [...runs, flat, along('dunlin', '1', 90, 0.01, 1)],
      'dunlin',
      'Dunlin',
    );
    expect(series).toHaveLength(1);
    expect(leftOut).toEqual([
      'The series of Dunlin, 2, is left out: there are 1 readings, at least 3 are needed.',
      'A second series after sharpening 1 of Dunlin is left out: one edge counts once.',
    ]);
    const none = { ...entry, runs: [flat, ...runs.slice(1)] };
    expect(hasSeries(sceneOf(none))).toBe(true);
    expect(say('stops-ratio', none)).toMatch(/have no end point in common/);
    for (const name of Object.keys(endPointsWords))
      expect(say(name, none)).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  test('travels with the stop in the link', () => {
    const planned = { ...entry, plan: { ratio: 1.25, batches: 1, blind: true, seed: 1, endPoint: 40 } };
    const read = decodeLink(encodeLink(planned));
    expect(read.ok && read.entry).toEqual(planned);
  });
});

test('without readings they are imagined after the careful estimate, and that is said', () => {
  const scene = sceneOf(loft());
  const { origin, half, byLoss, bySharpness } = endPointsOf(scene);
  expect(origin).toBe('imagined');
  // The stated truth lies in the band.
  expect(half?.low).toBeLessThan(scene.row.careful.multiplied);
  expect(half?.high).toBeGreaterThan(scene.row.careful.multiplied);
  expect(byLoss.length + bySharpness.length).toBeGreaterThan(40);
  expect(say('stops-given', loft())).toMatch(/imagined.*Nobody cut them/);
  // Above the sharpest reading of one edge, yet below the start of its curve.
  const sharp = { ...loft(), plan: { ratio: 1.25, batches: 1, blind: true, seed: 1, endPoint: 93 } };
  const { chosen, subject, baseline } = endPointsOf(sceneOf(sharp));
  const edges = [...subject.series, ...baseline.series];
  expect(Math.min(...edges.flatMap(({ readings: [first] }) => first?.sharpness ?? []))).toBeLessThan(93);
  expect(Math.min(...edges.map(({ curve }) => curve.start.value))).toBeGreaterThan(93);
  expect(chosen?.curveFree).toBeNull();
  expect(say('stops-ratio', sharp)).toContain('Without curves there is no such number');
});

describe('readings that say little', () => {
  const readAt = (knife: string, cuts: readonly number[], reading: (cut: number) => number): Run => {
    const { cuts: _cuts, ...run } = aRun({ knife, sharpening: '1' });
    return { ...run, series: cuts.map((cut) => ({ cut, sharpness: reading(cut) })) };
  };
  const falls = (start: number, a: number) => (cut: number) => start / (1 + a * cut);
  const logged = (
    cuts: readonly number[],
    dunlin: (cut: number) => number,
    plover: (cut: number) => number,
  ) => ({
    ...loft(),
    runs: [readAt('dunlin', cuts, dunlin), readAt('plover', cuts, plover)],
  });
  const whole = [0, 10, 30, 100, 300, 1000];
  const plan = (endPoint: number) => ({ ratio: 1.25, batches: 1, blind: true, seed: 1, endPoint });

  test('of two edges with one start depend on no stop, and one number says it', () => {
    // (100/s − 1)/a: the stop cancels, and a₂/a₁ is left.
    const said = say('stops-ratio', logged(whole, falls(100, 0.01), falls(100, 0.02)));
    expect(said).toMatch(/At every end point between them it is about the same, about 2\.$/);
    expect(said).not.toContain('The end point is part of the result');
    // A start a thousandth lower tells at the sharp end alone, where the edge has lost little more than that.
    expect(say('stops-ratio', logged(whole, falls(100, 0.01), falls(99.9, 0.02)))).toMatch(
      /about the same, 2 to 2\.1\.$/,
    );
  });

  test('three of an edge leave its curve without intervals', () => {
    const said = say('stops-curves', logged([0, 50, 200], falls(100, 0.01), falls(92, 0.02)));
    expect(said).toBe(
      'Dunlin, sharpening 1: S₀ = 100, a = 0.0100, b = 1.00. Plover, sharpening 1: S₀ = 92.0, a = 0.0200, b = 1.00.',
    );
  });

  test('that begin below the stop have no ratio but by their curves', () => {
    // After 20 cuts 100/1.2 = 83 and 100/1.4 = 71 are left: no reading is as sharp as 95.
    const late = { ...logged([20, 50, 200, 500], falls(100, 0.01), falls(100, 0.02)), plan: plan(95) };
    const { chosen } = endPointsOf(sceneOf(late));
    expect(chosen).toMatchObject({ ratio: expect.closeTo(2, 6) as number, curveFree: null });
    expect(say('stops-ratio', late)).toContain(
      'Without curves there is no such number: the readings themselves do not all pass it.',
    );
  });

  test('that end before half of the start say how far they go, and the ratio there', () => {
    // Of Dunlin 100/1.4 = 71.4 is left at last; (1/0.714 − 1)/0.0004 = 1000 cuts against half as many.
    expect(say('stops-loss', logged(whole, falls(100, 0.0004), falls(92, 0.0008)))).toBe(
      'No end point at half of the start is common to all edges of Dunlin and Plover. With 71% of it left the ratio is 2.',
    );
  });

  test('of forces likewise, before twice the first force', () => {
    const rises = (start: number, a: number) => (cut: number) => start + a * cut;
    // Dunlin ends at 14/10 of its first force: 4/0.004 = 1000 cuts against 0.4 · 10.5/0.006 = 700.
    expect(say('stops-loss', logged(whole, rises(10, 0.004), rises(10.5, 0.006)))).toBe(
      'No end point at twice the first force is common to all edges of Dunlin and Plover. At 1.4 times that force the ratio is 1.4.',
    );
  });

  test('along many edges are named for a dozen, and the others counted', () => {
    const many = ['dunlin', 'plover'].flatMap((knife) =>
      Array.from({ length: 7 }, (_, place) => along(knife, `${place}`, 100 + place, 0.01, 1)),
    );
    const said = endPointsWords['stops-curves']?.(sceneOf({ ...entry, runs: many })) ?? [];
    expect(said).toHaveLength(13);
    expect(said.at(-1)).toBe('… and 2 more.');
  });
});
