import * as v from 'valibot';
import { expect, it } from 'vitest';
import { loft } from '../../src/components/scene.ts';
import { geometricMeanRatio } from '../../src/model/index.ts';
import { runSchema } from '../../src/runs/log.ts';
import { inventedRuns, loftRuns, loftTruths } from '../../src/runs/invented.ts';
import type { Truths } from '../../src/runs/invented.ts';

const cutsOf = (runs: ReturnType<typeof loftRuns>, knife: string, batch?: string): number[] =>
  runs.flatMap((run) =>
    run.knife === knife && (batch === undefined || run.batch === batch) ? [run.cuts ?? Number.NaN] : [],
  );

it('makes runs a log takes, the same for the same seed, of the knives the loft has', () => {
  for (const run of loftRuns()) expect(v.is(runSchema, run)).toBe(true);
  expect(loftRuns()).toEqual(loftRuns());
  expect(inventedRuns(loftTruths, 1)).not.toEqual(inventedRuns(loftTruths, 2));
  const knives = loft().knives.map(({ id, angle }) => [id, 'deg' in angle ? angle.deg : 0]);
  expect(loftTruths.knives.map(({ knife, angleDeg }) => [knife, { value: angleDeg, plusMinus: 1 }])).toEqual(
    knives,
  );
});

it('leaves a knife’s runs alone when another comes or goes', () => {
  const fewer: Truths = { ...loftTruths, knives: loftTruths.knives.slice(1) };
  expect(inventedRuns(fewer, 11)).toEqual(loftRuns().filter(({ knife }) => knife !== 'plover'));
});

it('scatters about the stated truths', () => {
  const many = inventedRuns({ ...loftTruths, sharpenings: 4000 }, 5);
  const curlew = cutsOf(many, 'curlew', 'coil 1');
  const logs = curlew.map(Math.log);
  const mean = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const sd = Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / (logs.length - 1));
  // Four standard errors of mean and of scatter.
  expect(Math.abs(mean - Math.log(176))).toBeLessThan((4 * 0.12) / Math.sqrt(4000));
  expect(Math.abs(sd / Math.sqrt(Math.log1p(0.12 ** 2)) - 1)).toBeLessThan(4 / Math.sqrt(8000));
  const drift = geometricMeanRatio(
    cutsOf(many, 'avocet', 'coil 2'),
    cutsOf(many, 'avocet', 'coil 1'),
    0.9999,
  );
  expect(drift.low).toBeLessThan(1.5);
  expect(drift.high).toBeGreaterThan(1.5);
});

it('refuses what makes no run', () => {
  expect(() => inventedRuns({ ...loftTruths, sharpenings: 0 }, 1)).toThrow(/sharpenings 0 is not/);
  expect(() => inventedRuns({ ...loftTruths, knives: [{ knife: 'Knot', cuts: 0 }] }, 1)).toThrow(/cuts 0/);
});
