import { describe, expect, test } from 'vitest';
import { sceneOf } from '../../src/lineup/scene.ts';
import type { LineUpEntry } from '../../src/lineup/schema.ts';
import { hasSeries } from '../../src/lineup/series-held.ts';
import { stopsWords } from '../../src/lineup/stops-words.ts';
import { stopsOf } from '../../src/lineup/stops.ts';
import { decodeLink, encodeLink } from '../../src/lineup/link.ts';
import type { Run } from '../../src/runs/log.ts';
import { seriesOf } from '../../src/runs/log-series.ts';
import { aRun } from '../runs/runs.ts';
import { loft } from './entries.ts';

const say = (name: string, entry: LineUpEntry): string =>
  (stopsWords[name]?.(sceneOf(entry)) ?? []).filter(Boolean).join(' ');

/** A run with readings along S = start/(1 + a·x^b). */
function along(knife: string, sharpening: string, start: number, a: number, b: number): Run {
  const { cuts: _cuts, ...run } = aRun({ knife, sharpening });
  const series = [0, 10, 30, 100, 300, 1000].map((cut) => ({ cut, sharpness: start / (1 + a * cut ** b) }));
  return { ...run, series };
}

// Starts of 100 and 92 as in the design's oracle; with b = 1 the ratio at a stop s is by hand
// (100/s − 1)/(92/s − 1) · a₂/a₁.
const runs = [along('Dunlin', '1', 100, 0.01, 1), along('Plover', '1', 92, 0.02, 1)];
const byHand = (stop: number): number => ((100 / stop - 1) / (92 / stop - 1)) * 2;
const entry: LineUpEntry = { ...loft(), runs };

describe('the ratio at equal sharpness of a log', () => {
  test('is that of the curves at the stop that was chosen, and at half of the start', () => {
    const told = stopsOf(
      sceneOf({ ...entry, plan: { ratio: 1.25, lots: 1, blind: true, seed: 1, stop: 40 } }),
    );
    expect(told.origin).toBe('own');
    expect(told.chosen).toMatchObject({
      stop: 40,
      ratio: expect.closeTo(byHand(40), 6) as number,
      low: null,
    });
    expect(told.half?.ratio).toBeCloseTo(2, 6);
    for (const { stop, ratio } of told.bySharpness) expect(ratio / byHand(stop)).toBeCloseTo(1, 6);
    const said = say('stops-ratio', {
      ...entry,
      plan: { ratio: 1.25, lots: 1, blind: true, seed: 1, stop: 40 },
    });
    expect(said).toMatch(/At a sharpness of 40 Dunlin has cut ×2\.31 as much as Plover\. One series/);
    expect(said).toMatch(/The stop is part of the result/);
  });

  test('is told at equal force where forces were read, which rise', () => {
    const forced = (knife: string, start: number, a: number): Run => {
      const { cuts: _cuts, ...run } = aRun({ knife, sharpening: '1' });
      return { ...run, series: [0, 10, 30, 100, 300].map((cut) => ({ cut, sharpness: start + a * cut })) };
    };
    const plan = { ratio: 1.25, lots: 1, blind: true, seed: 1, stop: 6 };
    const own = { ...loft(), plan, runs: [forced('Dunlin', 3, 0.02), forced('Plover', 4, 0.04)] };
    // By hand: (6 − 3)/0.02 = 150 cuts against (6 − 4)/0.04 = 50.
    expect(stopsOf(sceneOf(own))).toMatchObject({
      read: 'force',
      chosen: { ratio: expect.closeTo(3, 6) as number },
    });
    const said = say('stops-ratio', own);
    expect(said).toContain('At a force of 6 Dunlin has cut ×3.00 as much as Plover.');
    expect(said).toMatch(/asked for no more than 4\.\d+ once, and for 9 in the end/);
    // Twice the first force: 3/0.02 against 4/0.04.
    expect(say('stops-loss', own)).toContain(
      'Where each edge asks for twice its first force, Dunlin has cut ×1.50',
    );
    expect(say('stops-curves', own)).toContain('Dunlin, sharpening 1: y₀ = 3');

    const mixed = { ...own, runs: [forced('Dunlin', 3, 0.02), along('Plover', '1', 92, 0.02, 1)] };
    expect(stopsOf(sceneOf(mixed)).read).toBeNull();
    expect(say('stops-ratio', mixed)).toContain('cannot be held against each other');
  });

  test('is not told beyond what the readings saw', () => {
    const plan = { ratio: 1.25, lots: 1, blind: true, seed: 1, stop: 99 };
    expect(stopsOf(sceneOf({ ...entry, plan })).chosen).toBeNull();
    expect(say('stops-ratio', { ...entry, plan })).toMatch(/you chose, 99, there is no ratio/);
  });

  test('says which series have no part in it', () => {
    const flat = { ...along('Dunlin', '2', 100, 0.01, 1), series: [{ cut: 1, sharpness: 5 }] };
    const { series, leftOut } = seriesOf([...runs, flat, along('Dunlin', '1', 90, 0.01, 1)], 'Dunlin');
    expect(series).toHaveLength(1);
    expect(leftOut).toEqual([
      'The series of Dunlin, 2, is left out: there are 1 readings, at least 3 are needed.',
      'A second series after sharpening 1 of Dunlin is left out: one edge counts once.',
    ]);
    const none = { ...entry, runs: [flat, ...runs.slice(1)] };
    expect(hasSeries(sceneOf(none))).toBe(true);
    expect(say('stops-ratio', none)).toMatch(/have no stop in common/);
    for (const name of Object.keys(stopsWords))
      expect(say(name, none)).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  test('travels with the stop in the link', () => {
    const planned = { ...entry, plan: { ratio: 1.25, lots: 1, blind: true, seed: 1, stop: 40 } };
    const read = decodeLink(encodeLink(planned));
    expect(read.ok && read.entry).toEqual(planned);
  });
});

test('without readings they are imagined after the close reading, and that is said', () => {
  const scene = sceneOf(loft());
  const { origin, half, byLoss, bySharpness } = stopsOf(scene);
  expect(origin).toBe('imagined');
  // The stated truth lies in the band.
  expect(half?.low).toBeLessThan(scene.row.close.product);
  expect(half?.high).toBeGreaterThan(scene.row.close.product);
  expect(byLoss.length + bySharpness.length).toBeGreaterThan(40);
  expect(say('stops-given', loft())).toMatch(/imagined.*Nobody cut them/);
});
