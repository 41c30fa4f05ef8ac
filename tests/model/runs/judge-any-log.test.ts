import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeRuns } from '../../../src/model/index.ts';
import type { Judgement, LoggedRun, RunLife } from '../../../src/model/index.ts';

const cuts = (value: number): RunLife => ({ cuts: value });
const atLeast = (value: number): RunLife => ({ atLeast: value });
/** Every life its own sharpening. */
const runsOf = (knife: string, lives: number[]): LoggedRun[] =>
  lives.map((life, i) => ({ knife, edge: `${knife} ${i}`, life: cuts(life) }));
const judge = (runs: LoggedRun[], more: Partial<Parameters<typeof judgeRuns>[1]> = {}): Judgement =>
  judgeRuns(runs, { knife: 'Dunlin', against: 'Plover', ...more });
const numbers = ({ ratio, low, high, low90, high90, df }: Judgement) => [ratio, low, high, low90, high90, df];

describe('any log a person may keep', () => {
  const life = fc.oneof(
    fc.double({ min: 1e-9, max: 1e9, noNaN: true }).map(cuts),
    fc.integer({ min: 98, max: 102 }).map(cuts),
    fc.integer({ min: 0, max: 300 }).map(atLeast),
    fc.integer({ min: 0, max: 12 }).map((n) => ({ from: 25 * n, to: 25 * n + 25 })),
  );
  const log = fc.array(
    fc.record({
      knife: fc.constantFrom('Dunlin', 'Plover', 'Curlew'),
      batch: fc.constantFrom(undefined, '', 'coil 1', 'coil 2', 'coil 3'),
      edge: fc.constantFrom('1', '2', '3', '4', '5', '6'),
      life,
    }),
    { maxLength: 24 },
  );

  it('gets a verdict without an error, and numbers that are numbers', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(log, fc.integer({ min: 1, max: 3 }), (runs, family) => {
        const judged = judge(runs, { family });
        const { ratio, low, high, low90, high90, df, verdict } = judged;
        for (const value of numbers(judged)) if (value !== null) expect(Number.isFinite(value)).toBe(true);
        const none = verdict === 'cannot be separated' || verdict === 'too few runs';
        expect([low, high, low90, high90, df].every((value) => (value === null) === none)).toBe(true);
        if (low === null || high === null || low90 === null || high90 === null) return;
        expect(low <= low90 && low90 <= (ratio ?? 0) && (ratio ?? 0) <= high90 && high90 <= high).toBe(true);
        if (verdict === 'longer') expect(low).toBeGreaterThanOrEqual(1);
        if (verdict === 'shorter') expect(high).toBeLessThanOrEqual(1);
        if (verdict === 'as good as equal') expect([low90 >= 0.8, high90 <= 1.25]).toEqual([true, true]);
      }),
      { numRuns: 3000, seed: 6 },
    );
  });

  it('is judged the same in another unit, and in another order', { timeout: 60_000 }, () => {
    const scaled = (of: RunLife): RunLife =>
      'cuts' in of
        ? { cuts: of.cuts * 2 }
        : 'atLeast' in of
          ? { atLeast: of.atLeast * 2 }
          : { from: of.from * 2, to: of.to * 2 };
    fc.assert(
      fc.property(log, (runs) => {
        const judged = numbers(judge(runs));
        for (const other of [runs.map((run) => ({ ...run, life: scaled(run.life) })), runs.toReversed()])
          numbers(judge(other)).forEach((value, i) => {
            const stated = judged[i] ?? null;
            if (stated === null || value === null) expect(value).toBe(stated);
            else expect(Math.abs(Math.log(value / stated))).toBeLessThan(1e-6);
          });
      }),
      { numRuns: 500, seed: 7 },
    );
  });

  it('may hold a ratio of a billion', () => {
    const judged = judge([...runsOf('Dunlin', [1e9, 1.1e9, 1.2e9]), ...runsOf('Plover', [1, 1.1, 1.2])]);
    expect(judged.verdict).toBe('longer');
    expect(judged.ratio).toBeCloseTo(1e9, -3);
  });

  it('has an end even where two runs of a knife differ by all there is', () => {
    const judged = judge([...runsOf('Dunlin', [1e-300, 1e300]), ...runsOf('Plover', [1e-300, 1e300])]);
    expect(judged.verdict).toBe('not distinguished');
    expect(judged.high).toBeLessThan(Infinity);
    expect(judged.low).toBeGreaterThan(0);
  });
});
