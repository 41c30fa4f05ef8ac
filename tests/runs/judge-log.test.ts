import { describe, expect, it } from 'vitest';
import { judgeRuns } from '../../src/model/index.ts';
import { judgeLog, measuredOf } from '../../src/runs/judge-log.ts';
import { loftRuns } from '../../src/runs/invented.ts';
import { notRecorded } from '../../src/runs/log.ts';
import type { NamedRun, Run } from '../../src/runs/log.ts';
import { aRun } from './runs.ts';

const log = (knife: string, lives: number[], change: Partial<NamedRun> = {}): Run[] =>
  lives.map((cuts, i) => aRun({ knife, cuts, sharpening: String(i + 1), ...change }));
const pair = { knife: 'dunlin', against: 'plover' };

describe('the judgement on a log', () => {
  it('is the model’s own, with the pairs of all its knives at once', () => {
    const runs = loftRuns();
    const alone = judgeRuns(
      runs.map(({ knife, batch, sharpening, cuts = 0 }) => ({
        knife: typeof knife === 'string' ? knife : '',
        batch,
        edge: sharpening,
        life: { cuts },
      })),
      { ...pair, family: 6 },
    );
    const judged = judgeLog(runs, pair);
    expect(judged).toMatchObject({ ...alone, family: 6 });
    expect(judged.confidence).toBeCloseTo(1 - 0.05 / 6, 12);
    const two = runs.filter(({ knife }) => knife === 'dunlin' || knife === 'plover');
    expect(judgeLog(two, pair)).toMatchObject({ family: 1, confidence: 0.95 });
  });

  it('counts no pair with a knife that has a single sharpening, or is none of the comparison’s', () => {
    const strange = log('plover', [5, 6, 7]).map((run) => ({ ...run, knife: { called: 'Heron' } }));
    const runs = [
      ...log('dunlin', [120, 150]),
      ...log('plover', [60, 70]),
      ...log('curlew', [90]),
      ...strange,
    ];
    expect(judgeLog(runs, pair).family).toBe(1);
  });

  it('says where in the log stands what was left out, and why', () => {
    const runs = [
      ...log('curlew', [1]),
      aRun({ knife: 'dunlin', cuts: 9, batch: notRecorded }),
      ...log('dunlin', [120, 150]),
      ...log('plover', [60, 70]),
    ];
    const { cuts: _cuts, ...card } = aRun({ knife: 'plover' });
    expect(judgeLog([...runs, { ...card, cycles: [10] }], pair).leftOut).toEqual([
      { row: 1, why: 'its batch is not recorded' },
      { row: 6, why: 'a card test gives a score, not a life' },
    ]);
  });

  it('asks once whether a number that stands in several batches is one edge', () => {
    const runs = ['coil 1', 'coil 2'].flatMap((batch) => [
      ...log('dunlin', [120, 150], { batch }),
      ...log('plover', [60, 70], { batch }),
    ]);
    expect(judgeLog(runs, pair).askedNumber).toEqual({
      knife: 'dunlin',
      sharpening: '1',
      batches: ['coil 1', 'coil 2'],
    });
    expect(judgeLog(runs, pair).runs).toEqual({ dunlin: 2, plover: 2 });
    const answered = judgeLog(runs, { ...pair, numbersRestart: true });
    expect(answered).toMatchObject({ askedNumber: null, runs: { dunlin: 4, plover: 4 } });
  });

  it('without a shared batch is no verdict, though it can show what ignoring batches would say', () => {
    const runs = [
      ...log('dunlin', [120, 150, 130], { batch: 'coil 1' }),
      ...log('plover', [60, 70, 65], { batch: 'coil 2' }),
    ];
    expect(judgeLog(runs, pair)).toMatchObject({ verdict: 'cannot be separated', ratio: null, low: null });
    expect(measuredOf(judgeLog(runs, pair))).toBeNull();
    expect(judgeLog(runs, { ...pair, ignoreBatches: true })).toMatchObject({ verdict: 'longer' });
  });

  it('is never NaN: no runs, one of each, no scatter, all given up, lives of 1e9', () => {
    const logs = [
      [],
      log('dunlin', [120, 150]),
      [...log('dunlin', [120]), ...log('plover', [60])],
      [...log('dunlin', [120, 120]), ...log('plover', [60, 60])],
      [...log('dunlin', [120, 150], { censored: true }), ...log('plover', [60, 70], { censored: true })],
      [...log('dunlin', [1e9, 9e8]), ...log('plover', [1, 1.1])],
    ];
    for (const runs of logs) {
      const judged = judgeLog(runs, pair);
      for (const value of [judged.ratio, judged.low, judged.high, judged.low90, judged.high90, judged.df])
        expect(value === null || Number.isFinite(value)).toBe(true);
    }
    expect(judgeLog(logs[5] ?? [], pair).ratio).toBeCloseTo(Math.sqrt(9e17) / Math.sqrt(1.1), -3);
  });
});
