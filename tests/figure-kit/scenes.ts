import { loft } from '../../src/components/scene.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import type { Scene } from '../../src/scene/scene.ts';
import type { KnifeEntry, ComparisonEntry } from '../../src/comparison/entry.ts';
import { inventedRuns, loftTruths } from '../../src/runs/invented.ts';
import type { Run } from '../../src/runs/log.ts';

const first = (entry: ComparisonEntry): KnifeEntry => {
  const [knife] = entry.knives;
  if (!knife) throw new Error('a comparison without knives');
  return knife;
};
export const base = loft();
const model = first(base);

/** The comparison of two knives, the second of which differs from the first in what is named. */
const against = (change: Partial<KnifeEntry>, more: Partial<ComparisonEntry> = {}): ComparisonEntry => {
  const { microbevelDeg: _micro, toughness: _tough, ...plain } = model;
  return {
    ...base,
    knives: [
      { ...plain, id: 'one', name: 'One' },
      { ...plain, id: 'two', name: 'Two', ...change },
    ],
    baseline: 'one',
    subject: 'two',
    ...more,
  };
};

/** A visitor's own: an invented comparison without runs falls back on the loft's. */
const { invented: _invented, runs: _runs, ...own } = against({});

const birds: Record<string, string> = { plover: 'one', dunlin: 'two' };

/** The loft's invented runs under the names of the two knives. */
const runs: Run[] = inventedRuns(loftTruths, 11).flatMap((run) => {
  const knife = typeof run.knife === 'string' ? birds[run.knife] : undefined;
  return knife === undefined ? [] : [{ ...run, knife }];
});

/** Comparisons that figures are drawn of, by what is odd about each. */
export const scenes: Record<string, ComparisonEntry> = {
  'the loft': base,
  'equal knives': against({}),
  'a knife at the finest corner of every range': against({
    angle: { deg: 4 },
    edgeMm: 0.01,
    finish: { um: 0.1 },
    hrc: 68,
    carbide: { volPercent: { MC: 25 } },
  }),
  'a knife at the coarsest corner of every range': against({
    angle: { deg: 45, perSide: true },
    edgeMm: 2.9,
    finish: { um: 250 },
    hrc: 20,
    carbide: { volPercent: {} },
  }),
  'a steel not known': against({ hrc: { unknown: true, low: 52, high: 64 } }),
  'a convex grind with a microbevel': against({
    microbevelDeg: 25,
    grind: { form: 'convex', spineMm: 3.2, heightMm: 20, radiusMm: 300 },
  }),
  'a name of eighty letters': against({ name: 'W'.repeat(80) }),
  'a name that is markup': against({ name: '<b>"&\'</b>' }),
  'eight knives': {
    ...base,
    knives: Array.from({ length: 8 }, (_, index) => ({
      ...model,
      id: `k${index}`,
      name: `Knife ${index}`,
      angle: { deg: 12 + index },
    })),
    baseline: 'k0',
    subject: 'k7',
  },
  'a chain of ten percentages': { ...base, faceValues: [100, 100, 100, 100, 100, -60, -60, 5, 0, 40] },
  'an empty chain': { ...base, faceValues: [] },
  'no runs at all': own,
  'runs of both': against({}, { runs }),
  'runs of one': against({}, { runs: runs.filter(({ knife }) => knife === 'two') }),
  'a run of each': against(
    {},
    { runs: ['one', 'two'].flatMap((name) => runs.filter(({ knife }) => knife === name).slice(0, 1)) },
  ),
  'runs that all ended early': against(
    {},
    { runs: runs.map((run) => ({ ...run, censored: true as const })) },
  ),
  'runs in a lot each': against({}, { runs: runs.map((run, index) => ({ ...run, batch: `lot ${index}` })) }),
  'a plan beyond anybody’s patience': against(
    {},
    { plan: { cv: 2, ratio: 1.01, batches: 20, blind: true, seed: 7 } },
  ),
  'a plan for next to no scatter': against(
    {},
    { plan: { cv: 0.01, ratio: 20, batches: 1, blind: false, seed: 7 } },
  ),
  'the pocket reading': { ...base, reading: 'quick' },
};

/** Each computes its values once, for all the figures. */
const known = new Map<ComparisonEntry, Scene>();
export const sceneFor = (entry: ComparisonEntry): Scene => {
  const scene = known.get(entry) ?? sceneOf(entry);
  known.set(entry, scene);
  return scene;
};

/** Some figures follow the knives, others the work, the reading or what is assumed: all of it is changed here. */
export const changed = against(
  {
    angle: { deg: 14 },
    edgeMm: 0.3,
    finish: { scale: 'JIS', grit: 600 },
    hrc: 60,
    carbide: { designation: 'AISI D2' },
  },
  {
    reading: 'quick',
    friction: 0.6,
    runs,
    slicePush: 0,
    assumptions: { angleExponent: 1.9, finishExponent: 0.9 },
  },
);
