import { describe, expect, test } from 'vitest';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import type { Run } from '../../src/runs/log.ts';
import { runsOf } from '../../src/scene/runs.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { lookedEarly, writtenPlan } from '../../src/test/plan-changes.ts';
import { predictionCheckWords } from '../../src/topics/check-prediction/words.ts';
import { alarmsAsked, simulate, simulatedSaid } from '../../src/topics/plan/simulated.ts';
import { runDots } from '../../src/topics/runs/figure-run-dots.ts';
import { runsWords } from '../../src/topics/runs/words.ts';
import { aRun } from '../runs/runs.ts';
import { loft } from '../comparison/entries.ts';

const sceneWith = (runs: Run[], more: Partial<ComparisonEntry> = {}): Scene =>
  sceneOf({ ...loft(), runs, ...more });
const all = { ...runsWords, ...predictionCheckWords };
const say = (name: string, scene: Scene): string => (all[name]?.(scene) ?? []).filter(Boolean).join(' ');

/** Runs of one knife by their cuts, each a sharpening of its own. */
const cut = (knife: string, cuts: readonly number[]): Run[] =>
  cuts.map((many, index) => aRun({ knife, cuts: many, sharpening: `${knife} ${index}` }));

/** The loft with two of its knives alone: one pair to judge. */
const two = (more: Partial<ComparisonEntry>): ComparisonEntry => ({
  ...loft(),
  knives: loft().knives.filter(({ id }) => id === 'plover' || id === 'dunlin'),
  ...more,
});

describe('a number planned is a promise', () => {
  const plan = { ratio: 1.25, batches: 1, blind: true, seed: 1 };
  const log = (each: number) => [
    ...cut('dunlin', [120, 150, 180, 140, 160, 130, 150].slice(0, each)),
    ...cut('plover', [60, 75, 90, 70, 80, 65, 75].slice(0, each)),
  ];
  const at = (each: number, more: object) => sceneOf(two({ runs: log(each), plan: { ...plan, ...more } }));

  test('until it is reached there are dots, a count and no verdict', () => {
    const scene = at(4, { runs: 6 });
    expect(runsOf(scene)).toMatchObject({
      measured: null,
      promised: { waiting: true, reached: 4, planned: 6 },
    });
    expect(say('runs-verdict', scene)).toMatch(
      /^Four of six planned sharpenings of Dunlin and Plover are cut\./,
    );
    expect(say('runs-verdict', scene)).not.toMatch(/real difference|times as long/);
    expect(say('runs-square', scene)).toContain('no measured range');
    expect(say('runs-verdict', at(0, { runs: 6 }))).toMatch(/^None of six planned sharpenings/);
    expect(runDots.caption(scene)).toContain('The verdict waits for the number planned.');
  });

  test('a verdict asked for before is marked as an early look, for that number only', () => {
    const looked = lookedEarly(at(4, { runs: 6 }));
    expect(looked.plan?.looks).toEqual([4]);
    const said = say('runs-verdict', sceneOf(looked));
    expect(said).toMatch(/^An early look, after four of six planned sharpenings\. Dunlin lasted/);
    expect(runsOf(sceneOf({ ...looked, runs: log(5) })).promised.waiting).toBe(true);
  });

  test('once it is reached the verdict is there, and nothing else said', () => {
    expect(say('runs-verdict', at(6, { runs: 6 }))).toMatch(/^Dunlin lasted/);
    expect(say('runs-verdict', at(6, {}))).toContain('No number of sharpenings was planned.');
    expect(alarmsAsked(at(6, { runs: 6 }))).toBeNull();
  });

  test('a log topped up says so, with the false alarms of such logs', () => {
    const scene = at(7, { runs: 6, looks: [4] });
    expect(say('runs-verdict', scene)).toMatch(
      /^This log was topped up: its verdict was seen before, after four and six sharpenings of each\./,
    );
    const asked = alarmsAsked(scene);
    expect(asked).toEqual({ kind: 'false alarms', runs: 4, topUps: [2, 1], batches: 1, family: 1 });
    const chance = asked ? simulate(asked) : NaN;
    // Three looks at 5% each: more than 5, far less than 15 in a hundred (own calculation).
    expect(chance).toBeGreaterThan(0.06);
    expect(chance).toBeLessThan(0.13);
    expect(asked && simulatedSaid(asked, 0.087)).toBe(
      'By simulation, a log looked at like this calls equal knives different in about 9% of tests, where 5% is meant.',
    );
  });

  test('planning more once the verdict was seen is a top-up', () => {
    expect(writtenPlan(at(6, { runs: 6 }), 'runs', '8')).toMatchObject({ plan: { runs: 8, looks: [6] } });
    expect(writtenPlan(at(4, { runs: 6 }), 'runs', '8')).toMatchObject({ plan: { runs: 8 } });
    expect(writtenPlan(at(4, { runs: 6 }), 'runs', '8')).not.toHaveProperty('plan.looks');
  });

  test('an end point set with readings in the log is marked', () => {
    const series = [0, 50, 100, 200].map((cuts) => ({ cut: cuts, sharpness: 100 / (1 + cuts / 100) }));
    const scene = sceneOf(two({ runs: [{ ...aRun({ knife: 'dunlin' }), series }] }));
    expect(writtenPlan(scene, 'endPoint', '50')).toMatchObject({
      plan: { endPoint: 50, endPointLate: true },
    });
    expect(writtenPlan(at(4, {}), 'endPoint', '50')).not.toHaveProperty('plan.endPointLate');
  });
});

describe('what changes on the way', () => {
  const heron = (cuts: number[], change: Partial<Run> = {}): Run[] =>
    cuts.map((many, i) => ({
      ...aRun({ cuts: many, sharpening: `h${i}` }),
      ...change,
      knife: { called: 'Heron' },
    }));
  const plan = { ratio: 1.25, batches: 1, blind: true, seed: 1, control: 'Heron' };
  const both = [...cut('dunlin', [120, 130, 125]), ...cut('plover', [60, 65, 62])];

  test('is seen by the control knife’s first and last runs, by date and order', () => {
    const dates = ['2026-11-25', '2026-11-24', '2026-11-25', '2026-11-24', '2026-11-25', '2026-11-24'];
    const runs = heron([80, 100, 83, 104, 79, 102]).map((run, i) => ({ ...run, date: dates[i] ?? '' }));
    expect(say('runs-odd', sceneWith([...both, ...runs], { plan }))).toMatch(
      /The control knife’s last runs lasted 0\.\d+ to 0\.\d+ times as long as its first\. Something besides the knives changed/,
    );
    expect(say('runs-odd', sceneWith([...both, ...heron([100, 99])], { plan }))).toContain(
      'The control knife has 2 runs; four, with some scatter, are the least.',
    );
  });

  test('within a batch is seen where the order is on record', () => {
    const ordered = ['dunlin', 'plover'].flatMap((knife, k) =>
      cut(knife, [100, 103, 98, 101, 80, 83, 79, 82]).map((run, i) => ({ ...run, order: 2 * i + k + 1 })),
    );
    expect(say('runs-odd', sceneWith(ordered))).toMatch(
      /Late in a batch, runs lasted 0\.\d+ to 0\.\d+ times as long as early in it\. So the order of work matters here/,
    );
    expect(say('runs-odd', sceneWith(ordered.map(({ order: _order, ...run }) => run)))).not.toMatch(
      /Late in a batch/,
    );
  });
});

test('a run left out stays in the log, with its reason', () => {
  const runs = [...cut('dunlin', [120, 130, 125]), ...cut('plover', [60, 65, 62])];
  const left = { ...aRun({ knife: 'dunlin', cuts: 5, sharpening: 'x' }), leftOutBecause: 'the rope was wet' };
  const scene = sceneWith([...runs, left]);
  expect(runsOf(scene).measured).toEqual(runsOf(sceneWith(runs)).measured);
  expect(say('runs-verdict', scene)).toContain(
    'Not in the ratio: Dunlin x in coil 1, because it was left out: the rope was wet.',
  );
});
