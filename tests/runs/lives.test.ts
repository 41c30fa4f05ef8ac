import { describe, expect, it, test, vi } from 'vitest';
import { bringCurves } from '../../src/runs/bring-curves.ts';
import { livesOf, reachOf, sharpeningsOf } from '../../src/runs/lives.ts';
import { notRecorded } from '../../src/runs/log.ts';
import type { Run } from '../../src/runs/log.ts';

const run = (change: Partial<Run>): Run => ({
  knife: 'knot',
  batch: 'one',
  sharpening: notRecorded,
  endPoint: notRecorded,
  checkedEvery: notRecorded,
  startSharpness: notRecorded,
  angleDeg: notRecorded,
  burrChecked: notRecorded,
  judge: notRecorded,
  ...change,
});
bringCurves();
const knives = ['knot', 'ruff'] as const;
const whys = (runs: readonly Run[], endPoint?: number): [number, string][] =>
  livesOf(runs, { knives, endPoint }).leftOut.map(({ row, why }) => [row, why]);

it('reads how far a run went from whichever column says it', () => {
  expect(reachOf(run({ cuts: 120 }))).toEqual({ reach: 120, unit: 'cuts' });
  expect(reachOf(run({ cutMm: 900 }))).toEqual({ reach: 900, unit: 'mm' });
  expect(reachOf(run({ cycles: [10, 8.5, 7] }))).toEqual({ reach: 25.5, unit: 'mm' });
  const series = [
    { cut: 0, sharpness: 90 },
    { cut: 40, sharpness: 60 },
  ];
  expect(reachOf(run({ series })).reach).toBe(40);
});

it('takes a life as exact, as within the last look, or as open', () => {
  const runs = [
    run({ cuts: 100 }),
    run({ cuts: 100, checkedEvery: 25 }),
    run({ cuts: 100, checkedEvery: 1 }),
    run({ cuts: 100, censored: true, checkedEvery: 25 }),
    run({ cuts: 20, checkedEvery: 25, batch: notRecorded }),
  ];
  expect(livesOf(runs, { knives }).lives.map(({ life }) => life)).toEqual([
    { cuts: 100 },
    { from: 75, to: 100 },
    { cuts: 100 },
    { atLeast: 100 },
    { from: 0, to: 20 },
  ]);
});

test('what is counted otherwise, cut nothing or is a card score is no life, and is named', () => {
  const runs = [
    run({ cuts: 100 }),
    run({ cuts: 90, knife: 'ruff' }),
    run({ cutMm: 80 }),
    run({ cycles: [11, 10, 9] }),
    run({ series: [{ cut: 0, sharpness: 90 }] }),
    run({ cuts: 60, series: [{ cut: 60, sharpness: 90 }] }),
  ];
  expect(livesOf(runs, { knives }).lives.map(({ row }) => row)).toEqual([0, 1]);
  expect(whys(runs)).toEqual([
    [2, 'it is counted in mm, not in cuts'],
    [3, 'a card test gives a score, not a life'],
    [4, 'it has readings, and no end point is chosen for them'],
    [5, 'it has readings, and no end point is chosen for them'],
  ]);
});

describe('the edge', () => {
  const twice = [
    run({ cuts: 100, sharpening: '1' }),
    run({ cuts: 400, sharpening: '1' }),
    run({ cuts: 90, sharpening: '1', batch: 'two' }),
    run({ cuts: 80 }),
    run({ cuts: 70 }),
  ];
  const edges = (numbersRestart?: boolean) =>
    livesOf(twice, { knives, numbersRestart }).lives.map(({ edge }) => edge);

  it('of one number is one, in whatever batch, until the log says that numbers start again', () => {
    expect(new Set(edges()).size).toBe(3);
    expect(new Set(edges(true)).size).toBe(4);
    expect(new Set(edges(false)).size).toBe(3);
  });

  it('has one life in every batch, by geometric means', () => {
    const lives = sharpeningsOf(livesOf(twice, { knives }).lives, 'knot');
    // √(100 · 400) = 200.
    expect(lives[0]?.high).toBeCloseTo(200, 9);
    expect(lives[0]?.rows).toEqual([0, 1]);
    expect(lives[1]).toEqual({ low: 90, high: 90, batch: 'two', sharpening: '1', rows: [2] });
    expect(lives).toHaveLength(4);
  });
});

describe('a run with readings', () => {
  /** S = 100/(1 + cut/100): 50 at 100 cuts, 40 at 150. */
  const along = (knife: string, cuts: readonly number[], change: Partial<Run> = {}): Run =>
    run({ knife, series: cuts.map((cut) => ({ cut, sharpness: 100 / (1 + cut / 100) })), ...change });
  const [full, short] = [along('knot', [0, 25, 50, 100, 200]), along('ruff', [0, 20, 40, 60])];

  it('lives until its curve crosses the end point, and is open where it does not', () => {
    const { lives, by } = livesOf([full, short], { knives, endPoint: 50 });
    expect(by).toBe('readings');
    expect(lives.map(({ life }) => life)).toEqual([
      { cuts: expect.closeTo(100, 4) as number },
      { atLeast: 60 },
    ]);
  });

  it('of two readings crosses in a straight line', () => {
    const two = [along('knot', [0, 100]), along('ruff', [0, 100])];
    // From 100 at 0 to 50 at 100 cuts: 75 at 50.
    expect(livesOf(two, { knives, endPoint: 75 }).lives[0]?.life).toEqual({
      cuts: expect.closeTo(50, 9) as number,
    });
  });

  it('is never set beside a run that was counted to a sign', () => {
    const counted = run({ cuts: 300 });
    expect(whys([full, short, counted], 50)).toEqual([[2, 'it has no readings that lead to the end point']]);
    // Where one knife has no readings, lives are counted, and readings say nothing.
    const by = livesOf([full, counted, run({ knife: 'ruff', cuts: 200 })], { knives, endPoint: 50 });
    expect(by).toMatchObject({ by: 'counts', leftOut: [{ row: 0 }] });
    expect(by.lives.map(({ row }) => row)).toEqual([1, 2]);
  });

  it('that begins past the end point, or rises where the others fall, is named', () => {
    const rising = run({
      series: [
        { cut: 0, sharpness: 3 },
        { cut: 100, sharpness: 6 },
      ],
    });
    expect(whys([full, short, along('knot', [300, 400]), rising], 50)).toEqual([
      [2, 'its first reading is already past the end point'],
      [3, 'its readings rise where the others fall'],
    ]);
  });

  it('keeps its own count where that goes beyond its last reading', () => {
    const counted = [along('knot', [0, 50], { cuts: 80 }), run({ knife: 'ruff', cuts: 50 })];
    expect(livesOf(counted, { knives }).lives.map(({ life }) => life)).toEqual([{ cuts: 80 }, { cuts: 50 }]);
  });

  it('waits for curves that are not here yet, and sends for them once', async () => {
    vi.resetModules();
    const { fetchCurvesBy } = await import('../../src/runs/curves-at-hand.ts');
    const fresh = await import('../../src/runs/lives.ts');
    const fetched = vi.fn();
    fetchCurvesBy(fetched);
    const { lives, leftOut } = fresh.livesOf([full, short], { knives, endPoint: 50 });
    expect(lives).toEqual([]);
    expect(leftOut.map(({ why }) => why)).toEqual(Array(2).fill('its curve is still being fitted'));
    expect(fetched).toHaveBeenCalledOnce();
  });
});
