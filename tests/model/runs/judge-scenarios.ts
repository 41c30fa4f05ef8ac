/**
 * Logs as people keep them, made up from a known truth: what the judge of logs is accepted by. `npm run simulate` makes
 * ten thousand of each and the unit test a few hundred.
 */
import { judgeRuns } from '../../../src/model/index.ts';
import type { Judgement, LoggedRun, RunLife } from '../../../src/model/index.ts';
import { normalScore } from '../../../src/model/statistics/normal-score.ts';
import { uniformStream } from '../../../src/model/statistics/random.ts';

/** Runs of one knife in one batch. */
interface Group {
  knife: 'Dunlin' | 'Plover';
  /** Left out where no batch was written down. */
  batch?: string;
  runs: number;
  /** Standard deviation of the logarithm of one life. */
  logSd: number;
  /** The batch was not written down for the first so many runs of the group. */
  batchForgotten?: number;
}

/** Logarithms of a life, and of the knife's usual life in its batch and over all batches. */
interface DrawnRun {
  life: number;
  usualInBatch: number;
  usual: number;
}

export interface Scenario {
  name: string;
  groups: Group[];
  /** The knife is sharpened this often, and every edge is cut in every batch; a new edge for every run if left out. */
  edges?: { count: number; /** The edge's share of the variance of one life. */ share: number };
  /** The edge is looked at every so many cuts. */
  lookEvery?: number;
  /** The logarithm of the cuts at which a run is given up before its end point, or null. */
  givenUp?: (run: DrawnRun, uniform: () => number) => number | null;
  /** Least share of logs that must get an interval, in percent. */
  leastUsable: number;
}

/** Runs of one knife vary so much, as a standard deviation of logarithms. */
const SD = 0.15;
/** Batches lie this far apart, as a standard deviation of logarithms. */
const BATCH_SD = 0.3;

const batchNames = (count: number): string[] => Array.from({ length: count }, (_, i) => `coil ${i + 1}`);

/** Two knives with the same number of runs in every batch. */
export const balanced = (runs: number, batches: number, sds: [number, number] = [SD, SD]): Group[] =>
  (['Dunlin', 'Plover'] as const).flatMap((knife, k) =>
    batches === 0
      ? [{ knife, runs, logSd: sds[k] ?? 0 }]
      : batchNames(batches).map((batch, b) => ({
          knife,
          batch,
          // What is left over goes to the first batches.
          runs: Math.floor(runs / batches) + (b < runs % batches ? 1 : 0),
          logSd: sds[k] ?? 0,
        })),
  );

const unequal = (runs: [number, number], batches: number, sds: [number, number]): Group[] => [
  ...balanced(runs[0], batches, [sds[0], 0]).filter(({ knife }) => knife === 'Dunlin'),
  ...balanced(runs[1], batches, [0, sds[1]]).filter(({ knife }) => knife === 'Plover'),
];

/** One batch that both share, beside one of each knife alone. */
const oneShared = (runs: number): Group[] => [
  ...balanced(runs, 1),
  { knife: 'Dunlin', batch: 'coil 2', runs: 3, logSd: SD },
  { knife: 'Plover', batch: 'coil 3', runs: 3, logSd: SD },
];

type GivingUp = NonNullable<Scenario['givenUp']>;
const above = (life: number, stop: number): number | null => (life > stop ? stop : null);
const twoInThree = normalScore(2 / 3);
const waysOfGivingUp: [name: string, givenUp: GivingUp][] = [
  ['at a stop', ({ life, usualInBatch }) => above(life, usualInBatch + twoInThree * SD)],
  [
    'at one stop for both batches',
    ({ life, usual }) => above(life, usual + twoInThree * Math.hypot(SD, BATCH_SD)),
  ],
  // For a reason that has nothing to do with the edge.
  ['at random', ({ life }, uniform) => (uniform() < 1 / 3 ? life + Math.log(uniform()) : null)],
];

const usable = 99;
export const scenarios: Scenario[] = [
  ...[3, 4, 6, 9].map((n) => ({
    name: `balanced, 3 batches, ${n} runs a knife`,
    groups: balanced(n, 3),
    leastUsable: usable,
  })),
  {
    name: 'balanced, 3 batches, 9 runs, scatter 0.30 and 0.08',
    groups: balanced(9, 3, [0.3, 0.08]),
    leastUsable: usable,
  },
  ...[2, 3, 4, 6].map((n) => ({
    name: `one shared batch beside unshared ones, ${n} runs a knife in it`,
    groups: oneShared(n),
    leastUsable: usable,
  })),
  ...[0, 3].flatMap((batches) =>
    (
      [
        [
          [3, 9],
          [0.3, 0.08],
        ],
        [
          [3, 9],
          [0.08, 0.3],
        ],
        [
          [6, 6],
          [0.25, 0.08],
        ],
      ] as [[number, number], [number, number]][]
    ).map(([runs, sds]) => ({
      name: `${runs.join(' against ')} runs, scatter ${sds.join(' and ')}, ${batches || 'no'} batches`,
      groups: unequal(runs, batches, sds),
      leastUsable: usable,
    })),
  ),
  ...[0.2, 0.5, 0.8].map((share) => ({
    name: `2 edges a knife, each in 3 batches, the edge ${share} of the variance`,
    groups: balanced(6, 3),
    edges: { count: 2, share },
    leastUsable: usable,
  })),
  {
    name: 'one of 18 runs without a batch',
    groups: balanced(9, 3).map((group, i) => (i === 0 ? { ...group, batchForgotten: 1 } : group)),
    leastUsable: usable,
  },
  ...[0, 3].flatMap((batches) =>
    [3, 4, 5, 6].map((n) => ({
      name: `looked at every 25, ${n} runs a knife, ${batches || 'no'} batches`,
      groups: balanced(n, batches),
      lookEvery: 25,
      leastUsable: usable,
    })),
  ),
  ...waysOfGivingUp.map(([when, givenUp]) => ({
    name: `a third of 6 runs given up ${when}, 2 batches`,
    groups: balanced(6, 2),
    givenUp,
    leastUsable: 80,
  })),
  ...waysOfGivingUp.toSpliced(1, 1).map(([when, givenUp]) => ({
    name: `a third of 6 runs given up ${when}, no batches`,
    groups: balanced(6, 0),
    givenUp,
    leastUsable: 80,
  })),
];

/** Batches of either knife alone: nothing can be said. */
export const disjoint: Scenario = {
  name: 'no shared batch',
  groups: [
    { knife: 'Dunlin', batch: 'coil 1', runs: 6, logSd: SD },
    { knife: 'Plover', batch: 'coil 2', runs: 6, logSd: SD },
  ],
  leastUsable: 0,
};

/** A stream of normal and even chances for one scenario. */
export function chances(seed: number): { uniform: () => number; normal: () => number } {
  const uniform = uniformStream(seed);
  return { uniform, normal: () => normalScore(uniform()) };
}

/** One log in which Dunlin lasts `ratio` times as long as Plover. */
export function makeLog(
  { groups, edges, lookEvery, givenUp }: Scenario,
  { uniform, normal }: ReturnType<typeof chances>,
  ratio: number,
): LoggedRun[] {
  const usualLife = 60 * 5 ** uniform();
  const batchShift = new Map<string, number>();
  const edgeShift = new Map<string, number>();
  const keep = (of: Map<string, number>, name: string, sd: number): number => {
    const value = of.get(name) ?? sd * normal();
    of.set(name, value);
    return value;
  };
  const share = edges?.share ?? 0;
  return groups.flatMap(({ knife, batch, runs, logSd, batchForgotten = 0 }, g) =>
    Array.from({ length: runs }, (_, i): LoggedRun => {
      const edge = edges ? `${i % edges.count}` : `${g}.${i}`;
      const usual = Math.log(usualLife * (knife === 'Dunlin' ? ratio : 1));
      const usualInBatch = usual + (batch === undefined ? 0 : keep(batchShift, batch, BATCH_SD));
      const life =
        usualInBatch +
        (share > 0 ? keep(edgeShift, `${knife} ${edge}`, logSd * Math.sqrt(share)) : 0) +
        logSd * Math.sqrt(1 - share) * normal();
      const stop = givenUp?.({ life, usualInBatch, usual }, uniform) ?? null;
      return {
        knife,
        batch: i < batchForgotten ? undefined : batch,
        edge,
        life: lifeOf(life, stop, lookEvery),
      };
    }),
  );
}

function lifeOf(logLife: number, stop: number | null, lookEvery: number | undefined): RunLife {
  if (stop !== null) return { atLeast: Math.exp(stop) };
  const cuts = Math.exp(logLife);
  if (lookEvery === undefined) return { cuts };
  const from = Math.floor(cuts / lookEvery) * lookEvery;
  return { from, to: from + lookEvery };
}

const judge = (log: readonly LoggedRun[]): Judgement =>
  judgeRuns(log, { knife: 'Dunlin', against: 'Plover' });

export const isDifference = ({ verdict }: Pick<Judgement, 'verdict'>): boolean =>
  verdict === 'longer' || verdict === 'shorter';

export interface Outcome {
  /** Percent of logs of equal knives that got an interval, and of those the percent with "a real difference". */
  usable: number;
  falseAlarms: number;
  /** Percent of intervals that hold the true ratio of unequal knives. */
  coverage: number;
  /** Percent of logs at a true ratio of 1.25 that are called as good as equal. */
  falseAlike: number;
}

/** The true ratio that intervals should hold. */
const TRUTH = 1.25;

/** At most so many percent of equal knives are called different, and at least so many percent of intervals are right. */
const MOST_FALSE = 6.5;
const LEAST_COVERAGE = 93.5;

/** What a simulation shows beyond the limits, each eased by so many of its standard errors; empty where all is well. */
export function passed(scenario: Scenario, outcome: Outcome, logs: number, errors: number): string[] {
  const ease = (percent: number, of: number): number => errors * Math.sqrt((percent * (100 - percent)) / of);
  const intervals = (logs * outcome.usable) / 100;
  const { usable, falseAlarms, coverage, falseAlike } = outcome;
  return [
    ...(usable >= scenario.leastUsable - ease(scenario.leastUsable, logs) ? [] : [`only ${usable}% usable`]),
    ...(falseAlarms <= MOST_FALSE + ease(MOST_FALSE, intervals) ? [] : [`${falseAlarms}% false alarms`]),
    ...(falseAlike <= MOST_FALSE + ease(MOST_FALSE, intervals)
      ? []
      : [`${falseAlike}% falsely as good as equal`]),
    ...(coverage >= LEAST_COVERAGE - ease(LEAST_COVERAGE, intervals) ? [] : [`${coverage}% coverage`]),
  ];
}

/** Makes and judges so many logs of equal knives, and as many of unequal ones. */
export function simulate(scenario: Scenario, logs: number, seed: number): Outcome {
  const chance = chances(seed);
  let [intervals, alarms, held, unequal, alike] = [0, 0, 0, 0, 0];
  for (let i = 0; i < logs; i += 1) {
    const equal = judge(makeLog(scenario, chance, 1));
    if (equal.low !== null) intervals += 1;
    if (isDifference(equal)) alarms += 1;
    const { low, high, verdict } = judge(makeLog(scenario, chance, TRUTH));
    if (low === null || high === null) continue;
    unequal += 1;
    if (low <= TRUTH && TRUTH <= high) held += 1;
    if (verdict === 'as good as equal') alike += 1;
  }
  const percent = (part: number, whole: number): number => (whole === 0 ? Number.NaN : (100 * part) / whole);
  return {
    usable: percent(intervals, logs),
    falseAlarms: percent(alarms, intervals),
    coverage: percent(held, unequal),
    falseAlike: percent(alike, logs),
  };
}
