import { describe, expect, it } from 'vitest';
import { measuredRatio } from '../../../src/model/index.ts';
import type { BatchLife } from '../../../src/model/index.ts';
import { studentQuantile } from '../../../src/model/statistics/distributions.ts';
import { uniformStream } from '../../../src/model/statistics/random.ts';
import { estimateRatio } from '../../../src/model/runs/estimate.ts';

const exact = (...lives: number[]): BatchLife[] => lives.map((life) => ({ low: life, high: life }));
const early = (life: number): BatchLife => ({ low: life, high: Infinity });

describe('intervals on simulated runs hold the truth as often as they say', { timeout: 300_000 }, () => {
  // Seeded, so that a failure stays one; the standard error of a share is 0.4 points at 3000 trials.
  const trials = 3000;
  const truth = 1.4;
  const stream = uniformStream(11);
  const normal = (): number => Math.sqrt(-2 * Math.log(stream())) * Math.cos(2 * Math.PI * stream());
  const quantiles = new Map<number, number>();
  /** The 95 % interval; quantiles that come again are kept. */
  const interval = (x: BatchLife[], y: BatchLife[], withinBatches = false): { low: number; high: number } => {
    const { logRatio, error, df } = estimateRatio(x, y, withinBatches);
    const t = quantiles.get(df) ?? studentQuantile(0.975, df);
    quantiles.set(df, t);
    return { low: Math.exp(logRatio - t * error), high: Math.exp(logRatio + t * error) };
  };
  /** Share of the trials whose interval holds the truth; a refusal gives none, and few may be refused. */
  const covered = (once: () => { low: number; high: number }, tries = trials): number => {
    let [hits, refused] = [0, 0];
    for (let i = 0; i < tries; i += 1) {
      try {
        const { low, high } = once();
        if (low <= truth && truth <= high) hits += 1;
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        refused += 1;
      }
    }
    expect(refused / tries).toBeLessThan(0.005);
    return hits / (tries - refused);
  };
  const batch = (name: string, shift: number, n: number, life: number, look?: number): BatchLife[] =>
    Array.from({ length: n }, () => {
      const cuts = life * shift * Math.exp(0.2 * normal());
      if (look === undefined) return { low: cuts, high: cuts, batch: name };
      const before = Math.floor(cuts / look) * look;
      return { low: before, high: before + look, batch: name };
    });

  it('and are those of the measured ratio', () => {
    const [x, y] = [exact(100, 120, 150), exact(60, 75, 90)];
    expect(measuredRatio({ x, y })).toMatchObject(interval(x, y));
  });

  it.each([4, 5, 8])('Welch on logarithms, %i runs a knife with unequal scatter: within 1.5 points', (n) => {
    const runs = (mean: number, sd: number): BatchLife[] =>
      exact(...Array.from({ length: n }, () => mean * Math.exp(sd * normal())));
    const share = covered(() => interval(runs(truth, 0.2), runs(1, 0.12)));
    expect(Math.abs(share - 0.95)).toBeLessThan(0.015);
  });

  it('a batch that cuts 30 % shorter, a look every 25 cuts: 94–96 %', () => {
    const share = covered(() => {
      const runs = (life: number): BatchLife[] =>
        [1, 0.7, 1].flatMap((shift, i) => batch(`lot ${i}`, shift, 3, life, 25));
      return interval(runs(200 * truth), runs(200), true);
    });
    expect(share).toBeGreaterThan(0.94);
    expect(share).toBeLessThan(0.96);
  });

  it('runs given up at 525 cuts, and a look every 25: 94–96 %', () => {
    const share = covered(() => {
      const runs = (life: number): BatchLife[] =>
        batch('', 1, 12, life, 25).map(({ low, high }) => (low >= 525 ? early(525) : { low, high }));
      return interval(runs(300 * truth), runs(300));
    });
    expect(share).toBeGreaterThan(0.94);
    expect(share).toBeLessThan(0.96);
  });

  it('with a third of the runs of one knife given up they are wider than they need to be, never narrower', () => {
    const share = covered(() => {
      const runs = (life: number): BatchLife[] =>
        batch('', 1, 9, life, 25).map(({ low, high }) => (low >= 450 ? early(450) : { low, high }));
      return interval(runs(300 * truth), runs(300));
    });
    expect(share).toBeGreaterThan(0.945);
  });

  it('across batches that the knives do not share alike they do not', () => {
    // What comparing within batches is for: here x is cut mostly on the harder lot.
    const share = covered(() =>
      interval(
        [...batch('a', 1, 2, 100 * truth), ...batch('b', 0.7, 6, 100 * truth)],
        [...batch('a', 1, 6, 100), ...batch('b', 0.7, 2, 100)],
      ),
    );
    expect(share).toBeLessThan(0.85);
  });

  it('a batch that cuts 30 % shorter, a look every 25 cuts, and runs given up at 475: 94–96 %', () => {
    const share = covered(() => {
      const runs = (life: number): BatchLife[] =>
        [1, 0.7, 1].flatMap((shift, i) =>
          batch(`lot ${i}`, shift, 4, life, 25).map((own) =>
            own.low >= 475 ? { ...early(475), batch: `lot ${i}` } : own,
          ),
        );
      return interval(runs(300 * truth), runs(300), true);
    }, 1500);
    expect(share).toBeGreaterThan(0.94);
    expect(share).toBeLessThan(0.96);
  });
});
