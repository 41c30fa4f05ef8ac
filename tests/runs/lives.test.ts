import { expect, it } from 'vitest';
import { livesOf, reachOf } from '../../src/runs/lives.ts';
import { notRecorded } from '../../src/runs/log.ts';
import type { Run } from '../../src/runs/log.ts';

const run = (change: Partial<Run>): Run => ({
  knife: 'Knot',
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

it('reads how far a run went from whichever column says it', () => {
  expect(reachOf(run({ cuts: 120 }))).toEqual({ reach: 120, unit: 'cuts' });
  expect(reachOf(run({ cutMm: 900 }))).toEqual({ reach: 900, unit: 'mm' });
  expect(reachOf(run({ cycles: [10, 8.5, 7] }))).toEqual({ reach: 25.5, unit: 'mm' });
  expect(
    reachOf(
      run({
        series: [
          { cut: 0, sharpness: 90 },
          { cut: 40, sharpness: 60 },
        ],
      }),
    ).reach,
  ).toBe(40);
});

it('takes a life as exact, as within the last look, or as open', () => {
  const runs = [
    run({ cuts: 100 }),
    run({ cuts: 100, checkedEvery: 25 }),
    run({ cuts: 100, checkedEvery: 1 }),
    run({ cuts: 100, censored: true, checkedEvery: 25 }),
    run({ cuts: 20, checkedEvery: 25, batch: notRecorded }),
  ];
  expect(livesOf(runs, 'Knot', 'cuts')).toEqual([
    { low: 100, high: 100, batch: 'one' },
    { low: 75, high: 100, batch: 'one' },
    { low: 100, high: 100, batch: 'one' },
    { low: 100, high: Infinity, batch: 'one' },
    { low: 0, high: 20 },
  ]);
});

it('counts two runs after one sharpening as one, and no run of another knife, unit or length 0', () => {
  const runs = [
    run({ cuts: 100, sharpening: '1' }),
    run({ cuts: 400, sharpening: '1' }),
    run({ cuts: 90, sharpening: '1', batch: 'two' }),
    run({ cuts: 80, knife: 'Ruff' }),
    run({ cutMm: 80 }),
    run({ series: [{ cut: 0, sharpness: 90 }] }),
  ];
  const lives = livesOf(runs, 'Knot', 'cuts');
  expect(lives).toHaveLength(2);
  expect(lives[0]?.high).toBeCloseTo(200, 9);
  expect(lives[1]).toEqual({ low: 90, high: 90, batch: 'two', sharpening: '1' });
  expect(livesOf(runs, 'Knot', 'mm')).toEqual([{ low: 80, high: 80, batch: 'one' }]);
});
