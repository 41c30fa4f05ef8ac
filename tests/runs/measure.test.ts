import { describe, expect, test } from 'vitest';
import { geometricMeanRatio } from '../../src/model/index.ts';
import { logLives } from '../../src/runs/log-lives.ts';
import { measureLog } from '../../src/runs/measure.ts';
import type { Run } from '../../src/runs/log.ts';
import { aRun } from './runs.ts';

const log = (knife: string, lives: number[], change: Partial<Run> = {}): Run[] =>
  lives.map((cuts, i) => aRun({ knife, cuts, sharpening: String(i + 1), ...change }));
const pair = { knife: 'Dunlin', against: 'Plover' };

describe('the lives of a log', () => {
  test('are one a sharpening, between the last two looks, open where the run ended early', () => {
    const { lives, notes, unit } = logLives([
      aRun({ cuts: 100 }),
      aRun({ cuts: 144 }),
      aRun({ sharpening: '2', cuts: 110, checkedEvery: 25 }),
      aRun({ sharpening: '3', cuts: 20, checkedEvery: 25 }),
      aRun({ sharpening: '4', cuts: 90, censored: true, checkedEvery: 25 }),
    ]);
    expect(unit).toBe('cuts');
    expect(lives.map(({ low, high }) => [low, high])).toEqual([
      [expect.closeTo(120, 9), expect.closeTo(120, 9)],
      [85, 110],
      [0, 20],
      [90, Infinity],
    ]);
    expect(lives[0]?.rows).toEqual([0, 1]);
    expect(lives[0]?.low).toBe(lives[0]?.high);
    expect(notes).toEqual(['Runs that repeat a sharpening on the same lot; each sharpening counts once: 1.']);
  });

  test('say what was left out and what was taken for granted', () => {
    const { cuts: _cuts, ...bare } = aRun();
    const { lives, leftOut, notes } = logLives(
      [
        aRun({ startSharpness: 80 }),
        aRun({ startSharpness: 40, sharpening: '2' }),
        aRun({ sharpening: 'not recorded' }),
        aRun({ sharpening: 'not recorded' }),
        { ...bare, cutMm: 300 },
        { ...bare, series: [{ cut: 0, sharpness: 80 }] },
      ],
      { startWithin: { low: 70, high: 90 } },
    );
    expect(lives).toHaveLength(3);
    expect(leftOut).toEqual([
      { row: 1, why: 'it started at a sharpness of 40, not between 70 and 90' },
      { row: 4, why: 'it is counted in mm, not in cuts' },
      { row: 5, why: 'it has a series only: how far it went to the stop is not said' },
    ]);
    expect(notes).toEqual([
      'Runs that do not say which sharpening they are; each is taken as one of its own: 2.',
      'Runs that do not say how sharp they started; they are let through: 2.',
    ]);
  });

  test('of a card test are the depths of all cycles', () => {
    const { cuts: _cuts, ...bare } = aRun();
    expect(logLives([{ ...bare, cycles: [12, 10.5, 9] }])).toMatchObject({
      unit: 'mm',
      lives: [{ low: 31.5, high: 31.5 }],
    });
  });
});

describe('two knives of a log', () => {
  test('are compared across batches, or within them where batches hold both', () => {
    const [x, y] = [
      [120, 150, 180],
      [60, 75, 90],
    ] as const;
    const across = measureLog([...log('Dunlin', [...x]), ...log('Plover', [...y])], pair);
    expect(across).toMatchObject({ ok: true, withinBatches: false, measured: geometricMeanRatio(x, y) });
    const within = measureLog(
      ['coil 1', 'coil 2'].flatMap((batch) => [
        ...log('Dunlin', [...x], { batch }),
        ...log('Plover', [...y], { batch }),
      ]),
      pair,
    );
    expect(within).toMatchObject({
      ok: true,
      withinBatches: true,
      measured: { verdict: 'apart', longer: 'x' },
    });
  });

  test.each<[string, Run[], string]>([
    ['no run', log('Plover', [1, 2]), 'Dunlin has no run, at least 2 are needed'],
    ['one run', [...log('Dunlin', [1]), ...log('Plover', [1, 2])], 'Dunlin has 1 run, at least 2'],
    [
      'no scatter',
      [...log('Dunlin', [2, 2]), ...log('Plover', [1, 1])],
      'the scatter of Dunlin and Plover is 0',
    ],
    [
      'no end',
      [...log('Dunlin', [2, 3], { censored: true }), ...log('Plover', [1, 2])],
      'none of the 2 runs of Dunlin reached its stop',
    ],
  ])('with %s is said in words', (_what, runs, why) => {
    const measured = measureLog(runs, pair);
    expect(measured.ok).toBe(false);
    expect(measured.ok ? '' : measured.why).toContain(why);
  });
});
