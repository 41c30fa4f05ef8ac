import { describe, expect, it } from 'vitest';
import {
  equivalenceRunsNeeded,
  geometricMeanRatio,
  parameters,
  powerOfRuns,
  runsNeeded,
} from '../../../src/model/index.ts';
import {
  chanceAt,
  chances,
  meanIn,
  mostRuns,
  neededFor,
  ratioByBatch,
  reached,
  spread,
} from '../../../src/topics/are-they-different/values.ts';
import { differentControls } from '../../../src/topics/are-they-different/controls.ts';
import { differentWords } from '../../../src/topics/are-they-different/words.ts';
import { differentWorked } from '../../../src/topics/are-they-different/worked.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { resultsOf } from '../../../src/topics/worked-results.ts';
import { trialOf } from '../../../src/topics/are-they-different/trial.ts';
import { notRecorded } from '../../../src/runs/log.ts';
import type { Run } from '../../../src/runs/log.ts';
import { pair } from '../odd-comparisons.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

const nearlyAlike = (change: Partial<ComparisonEntry> = {}): ComparisonEntry => ({
  ...loft(),
  subject: 'curlew',
  baseline: 'avocet',
  ...change,
});

const run = (knife: string, cuts: number, change: Partial<Run> = {}): Run => ({
  knife,
  batch: 'one',
  sharpening: notRecorded,
  cuts,
  endPoint: notRecorded,
  checkedEvery: notRecorded,
  startSharpness: notRecorded,
  angleDeg: notRecorded,
  burrChecked: notRecorded,
  judge: notRecorded,
  ...change,
});

const described = (name: string, entry: ComparisonEntry): string =>
  (differentWords[name]?.(sceneOf(entry)) ?? []).filter((sentence) => sentence !== '').join(' ');

const runs = (curlew: readonly number[], avocet: readonly number[]): Run[] => [
  ...curlew.map((cuts) => run('curlew', cuts)),
  ...avocet.map((cuts) => run('avocet', cuts)),
];

describe('the runs of the example', () => {
  const trial = trialOf(sceneOf(nearlyAlike()));

  it('are the loft’s, and as good as equal within batches where all together leave it open', () => {
    expect(trial.origin).toBe('loft');
    expect(trial.across.low90).toBeLessThan(0.8);
    expect(trial.log.verdict).toBe('as good as equal');
    expect(trial.truth).toBeCloseTo(176 / 170, 12);
  });

  // In a design with as many runs of each knife in every batch the two ratios are one (any textbook on blocks).
  it('have one ratio, and within batches the mean of the batches’ ratios', () => {
    const byBatch = ratioByBatch(trial);
    expect(byBatch.map(({ batch }) => batch)).toEqual(['coil 1', 'coil 2', 'coil 3']);
    const mean = Math.exp(byBatch.reduce((sum, { ratio }) => sum + Math.log(ratio), 0) / 3);
    expect(trial.measured?.ratio).toBeCloseTo(mean, 5);
    expect(trial.across.ratio).toBeCloseTo(mean, 9);
  });

  it('do not belong to a knife with another edge, nor to one that is not invented', () => {
    const reground = { ...nearlyAlike(), knives: loftWith('curlew', { angle: { deg: 12 } }).knives };
    expect(trialOf(sceneOf(reground)).origin).toBe('imagined');
    const { invented: _, ...real } = nearlyAlike();
    expect(trialOf(sceneOf(real)).origin).toBe('imagined');
  });

  it('are imagined about the careful estimate where there are none', () => {
    const scene = sceneOf({ ...nearlyAlike(), knives: loftWith('curlew', { angle: { deg: 9 } }).knives });
    const { truth, measured } = trialOf(scene);
    expect(truth).toBe(scene.row.careful.multiplied);
    expect(Math.abs(Math.log((measured?.ratio ?? 0) / (truth ?? 1)))).toBeLessThan(0.25);
  });
});

describe('a visitor’s own runs', () => {
  const own = (all: Run[]): ComparisonEntry => nearlyAlike({ runs: all });

  it('are compared as the model compares them', () => {
    const [x, y] = [
      [210, 190, 205, 221],
      [100, 96, 111, 104],
    ];
    const trial = trialOf(sceneOf(own(runs(x, y))));
    expect(trial.origin).toBe('own');
    expect(trial.truth).toBeNull();
    expect(trial.across.ratio).toBeCloseTo(geometricMeanRatio(x, y).ratio, 12);
    expect(trial.across.low).toBeCloseTo(geometricMeanRatio(x, y).low, 9);
    expect(described('different', own(runs(x, y)))).toMatch(
      /That is a real difference: Curlew lasts longer\./,
    );
  });

  it.each([
    ['the log has none of one', runs([100, 110], []), /Only Curlew has runs to compare/],
    ['the log has one of one', runs([100, 110], [90]), /Avocet has fewer than two sharpenings/],
    ['none scatters', runs([100, 100], [90, 90]), /don’t show how much they vary/],
    [
      'they ended early',
      [...runs([100, 110], []), run('avocet', 90, { censored: true }), run('avocet', 95)],
      /fewer than two sharpenings/,
    ],
  ])('are explained where %s', (_name, all, why) => {
    const entry = own(all);
    expect(trialOf(sceneOf(entry)).origin).not.toBe('own');
    expect(described('different', entry)).toMatch(why);
  });

  it('stay each knife’s own where both bear one name, which then have a number', () => {
    const entry = own(runs([100, 110], [90, 80]));
    const twins = { ...entry, knives: entry.knives.map((knife) => ({ ...knife, name: 'Curlew' })) };
    expect(described('different', twins)).toMatch(
      /Curlew \(3\) lasted [\d.]+ to [\d.]+ times as long as Curlew \(4\); 1\.2 is the middle/,
    );
  });

  it('count what ended early as at least so long', () => {
    const open = [...runs([100, 120, 150], [100, 121, 149]), run('curlew', 160, { censored: true })];
    const scene = sceneOf(own(open));
    expect(trialOf(scene).across.ratio).toBeGreaterThan(134.8 / 122);
    expect(differentWorked['different']?.(scene).givens).toMatch(/ended early \(1\)/);
  });

  it('leave open what they do not show', () => {
    expect(described('different', own(runs([100, 160], [90, 150])))).toMatch(
      /can’t be told apart by these runs: either may last longer\. That doesn’t make them equal\./,
    );
  });
});

describe('the plan', () => {
  // Exact power of the pooled t test (model’s checks, R’s power.t.test (memory)): CV 20%, ratio 1.2 → 20 a knife.
  it('crosses its power where it says', () => {
    for (const scene of [
      sceneOf(nearlyAlike()),
      sceneOf({ ...loft(), subject: 'curlew', baseline: 'plover' }),
    ]) {
      const { within, alike } = neededFor(scene);
      expect(chanceAt(scene, within ?? 2).within).toBeGreaterThanOrEqual(0.8);
      if (within !== null && within > 2) expect(chanceAt(scene, within - 1).within).toBeLessThan(0.8);
      if (alike !== null && alike > 2) expect(chanceAt(scene, alike - 1).alike).toBeLessThan(0.8);
      expect(scene.row.careful.multiplied > 1.25).toBe(alike === null);
    }
  });

  // Half the difference asks for four times the runs: n goes as 1/Δ² (rule of thumb 16/Δ², common practice).
  it('asks for about 16 over the square of the difference in spreads', () => {
    const scene = sceneOf(nearlyAlike());
    const effect = Math.log(scene.row.careful.multiplied) / Math.sqrt(Math.log1p(spread.within ** 2));
    expect((neededFor(scene).within ?? 0) / (16 / effect ** 2)).toBeGreaterThan(0.95);
    expect((neededFor(scene).within ?? 0) / (16 / effect ** 2)).toBeLessThan(1.1);
  });

  // The model seeks the same by doubling and halving, over all numbers of runs.
  it.each([14, 15, 15.5, 16, 16.5, 17, 17.6, 18.5, 19.5, 21])(
    'asks for what the model asks for at %d°',
    (deg) => {
      const scene = sceneOf({ ...nearlyAlike(), knives: loftWith('curlew', { angle: { deg } }).knives });
      const ratio = scene.row.careful.multiplied;
      const needed = neededFor(scene);
      for (const [count, cv] of [
        [needed.within, spread.within],
        [needed.mixed, spread.mixed],
      ] as const) {
        const exact =
          cv === spread.mixed
            ? runsNeeded({ cv, ratio })
            : // Two runs fill two batches, and more are spread over the loft's three.
              powerOfRuns({ runs: 2, cv, ratio, batches: 2 }) >= 0.8
              ? 2
              : runsNeeded({ cv, ratio, batches: 3 });
        if (exact < 140) expect(count).toBe(exact);
        else expect(Math.abs((count ?? 0) / exact - 1)).toBeLessThan(0.05);
      }
      if (needed.alike === null) expect(ratio < 0.8 || ratio > 1.25).toBe(true);
      else if (needed.alike < 140)
        expect(needed.alike).toBe(equivalenceRunsNeeded({ cv: spread.within, ratio, batches: 3 }));
    },
  );

  // The exact count by the model, where the page gives a round one.
  it('rounds a number of runs nobody cuts, to within a twentieth', () => {
    const scene = sceneOf(nearlyAlike());
    const exact = runsNeeded({ cv: spread.mixed, ratio: scene.row.careful.multiplied });
    const { mixed } = neededFor(scene);
    expect(exact).toBeGreaterThan(150);
    expect(Math.abs((mixed ?? 0) / exact - 1)).toBeLessThan(0.05);
    expect(described('runs-plan', nearlyAlike())).toMatch(/about \d+ runs/);
  });

  it('grows with the runs, and is always a chance', () => {
    for (const subject of ['dunlin', 'curlew']) {
      const curve = chances(sceneOf({ ...loft(), subject, baseline: 'avocet' }));
      expect(curve.length).toBeGreaterThan(8);
      curve.forEach((at, index) => {
        for (const share of [at.within, at.mixed, at.alike]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        expect(at.within).toBeGreaterThanOrEqual((curve[index - 1]?.within ?? 0) - 1e-9);
        // Batches take degrees of freedom, which show where the chance is nearly 1.
        expect(at.mixed).toBeLessThanOrEqual(at.within + 1e-4);
      });
    }
  });

  // Read off between computed chances: against the exact ones, which the model computes by the noncentral t.
  it('draws the curves within a hundredth of the exact chances', () => {
    for (const subject of ['dunlin', 'curlew', 'plover']) {
      const scene = sceneOf({ ...loft(), subject, baseline: 'avocet' });
      const curve = chances(scene);
      for (let runs = 2; runs <= mostRuns(scene); runs += 1) {
        const after = curve.findIndex((at) => at.runs >= runs - 1e-9);
        const [low, high] = [curve[Math.max(0, after - 1)], curve[after]];
        if (!low || !high) throw new Error(`no chance is drawn at ${runs} runs`);
        const share = high.runs === low.runs ? 0 : (runs - low.runs) / (high.runs - low.runs);
        const exact = chanceAt(scene, runs);
        for (const of of ['within', 'mixed', 'alike'] as const)
          expect(Math.abs(low[of] + share * (high[of] - low[of]) - exact[of])).toBeLessThan(0.01);
      }
    }
  });

  it('knows that level knives are never distinguished', () => {
    const entry = nearlyAlike();
    const [curlew] = entry.knives.filter(({ id }) => id === 'curlew');
    const twin = curlew ? { ...curlew, id: 'avocet', name: 'Avocet' } : [];
    const level = { ...entry, knives: [...entry.knives.filter(({ id }) => id !== 'avocet'), twin].flat() };
    expect(neededFor(sceneOf(level)).within).toBeNull();
    expect(described('runs-plan', level)).toMatch(/No number of runs shows a difference that isn’t there/);
  });
});

/** Runs of a knife in one batch each. */
const inBatches = (
  knife: string,
  batches: Record<string, readonly number[]>,
  change: Partial<Run> = {},
): Run[] =>
  Object.entries(batches).flatMap(([batch, all]) =>
    all.map((cuts) => run(knife, cuts, { batch, ...change })),
  );

describe('the sentences of a log', () => {
  const own = (...all: Run[][]): ComparisonEntry => nearlyAlike({ runs: all.flat() });
  const scattered = (cuts: number, knife: string, batches: readonly string[]): Run[] =>
    inBatches(knife, Object.fromEntries(batches.map((batch) => [batch, [cuts * 0.95, cuts * 1.05]])));
  const mm = (all: Run[]): Run[] => all.map(({ cuts = 0, ...one }) => ({ ...one, cutMm: cuts }));

  it.each<[string, string, ComparisonEntry, RegExp]>([
    [
      'as many of both, in one lot',
      'runs-given',
      own(inBatches('curlew', { a: [100, 110] }), inBatches('avocet', { a: [90, 95] })),
      /^The log has 2 sharpenings of Curlew and as many of Avocet, in one batch\.$/,
    ],
    [
      'more of one, in several lots',
      'runs-given',
      own(inBatches('curlew', { a: [100, 110], b: [120] }), inBatches('avocet', { a: [90, 95] })),
      /^The log has 3 sharpenings of Curlew and 2 of Avocet, in 2 batches\.$/,
    ],
    [
      'no lot on record',
      'runs-given',
      own(
        inBatches('curlew', { [notRecorded]: [100, 110] }),
        inBatches('avocet', { [notRecorded]: [90, 95] }),
      ),
      /, without a batch on record\.$/,
    ],
    ['the loft’s', 'runs-given', nearlyAlike(), /^The loft has .*They are invented: nobody cut them\.$/],
    [
      'what was cut in mm',
      'runs-trouble',
      own(mm(runs([100, 110.5], [90, 95]))),
      /^One sharpening of Curlew made 110\.5 mm of cut, one of Avocet 90\.00: ×1\.23\./,
    ],
    [
      'a difference that is real and small',
      'runs-within',
      own(runs([110, 111, 112, 113], [100, 101, 102, 103])),
      /That is a real difference: Curlew lasts longer\. It is a small one, under 25% either way\./,
    ],
    [
      'the other knife lasting longer',
      'runs-within',
      own(runs([50, 51, 52], [100, 101, 102])),
      /That is a real difference: Avocet lasts longer\./,
    ],
    [
      'all runs together',
      'runs-across',
      own(runs([50, 51, 52], [100, 101, 102])),
      /^Put all runs together, .* That would be the answer if every batch cut alike\. It is no verdict yet\./,
    ],
    [
      'no batch they share',
      'runs-lots',
      own(inBatches('curlew', { a: [100, 110] }), inBatches('avocet', { b: [90, 95] })),
      /^No batch on record was cut with both Curlew and Avocet/,
    ],
    [
      'no batch they share, and so no verdict',
      'runs-within',
      own(inBatches('curlew', { a: [100, 110] }), inBatches('avocet', { b: [90, 95] })),
      /cannot be separated.*Cut next: Curlew in b, or Avocet in a\./,
    ],
    [
      'more batches than are listed',
      'runs-lots',
      own(
        scattered(120, 'curlew', ['a', 'b', 'c', 'd', 'e', 'f', 'g']),
        scattered(100, 'avocet', ['a', 'b', 'c', 'd', 'e', 'f', 'g']),
      ),
      /times as long as Avocet: (1\.2 in [a-f],? (and )?){5}1\.2 in f, and so on through 7 batches\.$/,
    ],
    [
      'batches of one knife only',
      'runs-within',
      own(scattered(120, 'curlew', ['a', 'b']), scattered(100, 'avocet', ['a'])),
      /2 runs can’t enter the ratio\.$/,
    ],
    [
      'a truth nobody knows',
      'runs-truth',
      own(runs([100, 110], [90, 95])),
      /^What is true of Curlew and Avocet nobody knows: these were really cut\./,
    ],
    [
      'runs that lean the wrong way',
      'runs-truth',
      nearlyAlike(),
      // The truths are 176 and 170 cuts: 1.035.
      /Curlew lasts 1\.04 times as long as Avocet\. The range holds it\. Yet the runs lean the other way, to 0\.96/,
    ],
    [
      'runs after the careful estimate',
      'runs-truth',
      { ...nearlyAlike(), knives: loftWith('curlew', { angle: { deg: 12 } }).knives },
      /as long as Avocet, by the careful estimate\. The range holds it\./,
    ],
    [
      'no batch, and a prediction below',
      'different',
      own(
        inBatches('curlew', { [notRecorded]: [300, 310, 320] }),
        inBatches('avocet', { [notRecorded]: [100, 101, 102] }),
      ),
      /3\.1 is the middle.* lies below the 95% range from [\d.]+ to [\d.]+\.$/,
    ],
    ['a prediction above', 'different', own(runs([50, 51, 52], [100, 101, 102])), /lies above the 95% range/],
    [
      'batches, and a prediction inside',
      'different',
      own(scattered(102, 'curlew', ['a', 'b']), scattered(100, 'avocet', ['a', 'b'])),
      / lies inside the 95% range/,
    ],
    [
      'a scatter without bounds',
      'different',
      own(runs([1, 1e9], [1, 2e9])),
      /Curlew lasted under 0\.001 to over 100,000 times as long/,
    ],
  ])('%s', (_name, of, entry, said) => {
    expect(described(of, entry)).toMatch(said);
  });
});

it('works its example in mm, from lives known to the last look, and names no more than a dozen', () => {
  const looked = Array.from({ length: 13 }, (_, index) => 400 + 25 * index);
  const inMm = (all: Run[]): Run[] =>
    all.map(({ cuts = 0, ...one }) => ({ ...one, cutMm: cuts, checkedEvery: 76 }));
  const scene = sceneOf(nearlyAlike({ runs: inMm(runs(looked, [400, 500])) }));
  // A life between two looks counts as their geometric mean: √(324 · 400) = 360.0, √(424 · 500) = 460.4.
  expect(differentWorked['different']?.(scene).givens).toMatch(
    /^Curlew: 360\.0, .* and 1 more\. Avocet: 360\.0 and 460\.4\. Millimetres cut after each sharpening\.$/,
  );
});

it('asks for no number where two knives differ by less than runs ever show', () => {
  const { knives } = nearlyAlike();
  const [curlew] = knives.filter(({ id }) => id === 'curlew');
  if (!curlew) throw new Error('the loft has no Curlew');
  const hair = { ...curlew, id: 'avocet', name: 'Avocet', angle: { deg: 17.001 } };
  const entry = { ...nearlyAlike(), knives: [curlew, hair] };
  // 16/d² with d = ln ratio over 0.12, far beyond a million (rule of thumb, common practice).
  expect(16 / (Math.log(sceneOf(entry).row.careful.multiplied) / 0.12) ** 2).toBeGreaterThan(1e6);
  expect(neededFor(sceneOf(entry))).toMatchObject({ within: null, mixed: null });
  expect(described('runs-plan', entry)).toMatch(
    / level, with all factors multiplied at the middle settings\. No number of runs shows a difference that isn’t there\./,
  );
});

it('asks for no number to show alike what lies a hair within the bound', () => {
  // Alike within ×1.25: of a ratio of 1.25/1.0002 the room to the bound is ln 1.0002. The standard error of n runs a knife
  // is 0.12 √(2/n), and 2 (1.645 + 0.842)² (0.12/ln 1.0002)² is 4.5 million.
  const { finishExponent } = parameters;
  const um = 30 * (1.25 / 1.0002) ** (1 / finishExponent.default);
  const scene = sceneOf(pair({ finish: { um } }, { finish: { um: 30 } }));
  expect(scene.row.careful.multiplied).toBeCloseTo(1.25 / 1.0002, 6);
  expect(neededFor(scene).alike).toBeNull();
});

it('gives no interval by hand where the runs that ended do not scatter', () => {
  const early = [150, 170].map((cuts) => run('curlew', cuts, { censored: true }));
  const scene = sceneOf(nearlyAlike({ runs: [...runs([120, 120], [60, 60]), ...early] }));
  const work = differentWorked['different']?.(scene);
  expect(work?.givens).toMatch(/Runs that ended early \(2\) are left out of this sum by hand/);
  const [, , ratio, error, ...interval] = work?.steps ?? [];
  expect(ratio?.values['ratio']).toBe('2.000');
  expect(error?.say).toMatch(/^These logarithms do not scatter, so the sum by hand has no interval\./);
  expect(error?.values['error']).toBe('0');
  // What is not computed is left open in no blank.
  expect(interval.map(resultsOf)).toEqual([[], [], []]);
});

it('counts a life as one number: exact, between two looks, or as far as it went', () => {
  expect(reached({ low: 90, high: 90 })).toBeCloseTo(90, 12);
  // √(80 · 125) = 100.
  expect(reached({ low: 80, high: 125 })).toBeCloseTo(100, 12);
  expect(reached({ low: 0, high: 25 })).toBe(25);
  expect(reached({ low: 90, high: Infinity })).toBe(90);
  const lives = [
    { low: 40, high: 40, batch: 'a', rows: [] },
    { low: 90, high: 90, batch: 'a', rows: [] },
    { low: 70, high: 70, rows: [] },
  ];
  // √(40 · 90) = 60.
  expect(meanIn(lives, 'a')).toEqual({ mean: expect.closeTo(60, 9) as number, runs: 2 });
  expect(meanIn(lives, undefined)?.runs).toBe(1);
  expect(meanIn(lives, 'b')).toBeNull();
});

describe('the choice of the two', () => {
  it('goes through every other knife and never takes one twice', () => {
    const control = differentControls['chosen.subject'];
    const seen = [0, 1, 2].map((value) => control?.write(nearlyAlike(), value).subject);
    expect(seen).toEqual(['curlew', 'dunlin', 'plover']);
    expect(control?.last?.(nearlyAlike())).toBe(2);
    expect(control?.read(nearlyAlike())).toBe(0);
    const other = differentControls['chosen.baseline'];
    expect([0, 1, 2].map((value) => other?.write(nearlyAlike(), value).baseline)).toEqual([
      'avocet',
      'dunlin',
      'plover',
    ]);
  });
});
