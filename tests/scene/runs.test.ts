import { describe, expect, test } from 'vitest';
import { neededOf, pairsFor, planOf, sheetOf } from '../../src/topics/plan/values.ts';
import { planWords } from '../../src/topics/plan/words.ts';
import { runsWords } from '../../src/topics/runs/words.ts';
import { placeOf, runsOf } from '../../src/scene/runs.ts';
import { predictionCheckWords } from '../../src/topics/check-prediction/words.ts';
import { predictionCheckOf } from '../../src/scene/check-prediction.ts';
import { suspectsOf } from '../../src/topics/suspects/values.ts';
import { suspectsWords } from '../../src/topics/suspects/words.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import type { Scene } from '../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { loftRuns } from '../../src/runs/invented.ts';
import type { Run } from '../../src/runs/log.ts';
import { whatItTakes, withAttribute, compare } from '../../src/model/index.ts';
import { planCurve } from '../../src/topics/plan/figure-plan-curve.ts';
import { aRun } from '../runs/runs.ts';
import { loft } from '../comparison/entries.ts';

const sceneWith = (runs: Run[], more: Partial<ComparisonEntry> = {}): Scene =>
  sceneOf({ ...loft(), runs, ...more });
const all = { ...runsWords, ...predictionCheckWords, ...planWords, ...suspectsWords };
const say = (name: string, scene: Scene): string => (all[name]?.(scene) ?? []).filter(Boolean).join(' ');

/** Runs of one knife by their cuts, each a sharpening of its own. */
const cut = (knife: string, cuts: readonly number[], change: Partial<Run> = {}): Run[] =>
  cuts.map((many, index) => aRun({ knife, cuts: many, sharpening: `${knife} ${index}`, ...change }));

describe('the verdict', () => {
  test('apart, with the interval of Welch on logarithms', () => {
    const scene = sceneWith([...cut('Dunlin', [120, 150, 180]), ...cut('Plover', [60, 75, 90])]);
    const { measured, within, unit } = runsOf(scene);
    expect(unit).toBe('cuts');
    expect(within).toBe(false);
    expect(measured?.ratio).toBeCloseTo(2, 10);
    // By hand: ln 120, 150, 180 and half of them have s² = 0.041239 each; se = √(2·0.041239/3) = 0.16581, df 4,
    // t 0.975 = 2.776445 (standard table): 2·exp(±0.46036).
    expect(measured?.low).toBeCloseTo(2 * Math.exp(-0.46036), 3);
    expect(say('runs-verdict', scene)).toMatch(/×2\.00.*Apart: Dunlin lasts longer than Plover/);
  });

  test('not distinguished is said to be no alikeness, and how many more would tell', () => {
    const scene = sceneWith([...cut('Dunlin', [100, 150, 220]), ...cut('Plover', [90, 140, 200])]);
    expect(say('runs-verdict', scene)).toMatch(
      /Not told apart:.*does not make them alike.*more sharpenings of each/,
    );
  });

  test('alike is shown, not assumed', () => {
    const careful = [100, 101, 99, 102, 98, 100];
    const scene = sceneWith([
      ...cut('Dunlin', careful),
      ...cut(
        'Plover',
        [...careful].reverse().map((c) => c + 1),
      ),
    ]);
    expect(say('runs-verdict', scene)).toMatch(/Alike: .*between ×0\.8 and ×1\.25/);
  });

  test('apart and yet hardly different', () => {
    const scene = sceneWith([...cut('Dunlin', [110, 111, 112, 113]), ...cut('Plover', [100, 101, 102, 103])]);
    expect(say('runs-verdict', scene)).toMatch(/Apart:.*hardly matters/);
  });

  test('the loft is compared within its batches, which differ', () => {
    const scene = sceneWith(loftRuns());
    expect(runsOf(scene).within).toBe(true);
    expect(say('runs-odd', scene)).toMatch(/The lots differ: in coil 2/);
  });
});

describe('runs that give no interval are explained', () => {
  const dunlin = cut('Dunlin', [120, 150]);
  const cases: [string, Run[], RegExp][] = [
    ['none', [], /no runs of Dunlin yet, and none of Plover/],
    ['one knife without', dunlin, /Only Dunlin has runs/],
    ['one each', [...cut('Dunlin', [120]), ...cut('Plover', [60])], /have only one sharpening.*×2\.00/],
    [
      'all ended early',
      cut('Dunlin', [120, 150], { censored: true }).concat(cut('Plover', [60, 70])),
      /No run of Dunlin reached its stop/,
    ],
    [
      'no scatter',
      [...cut('Dunlin', [120, 120]), ...cut('Plover', [60, 60])],
      /do not show how much they scatter/,
    ],
    [
      'two series after one sharpening',
      [...cut('Dunlin', [120, 150], { sharpening: 'first' }), ...cut('Plover', [60, 70])],
      /Dunlin has only one sharpening/,
    ],
  ];
  test.each(cases)('%s', (_name, runs, reason) => {
    const scene = sceneWith(runs);
    expect(runsOf(scene).measured).toBeNull();
    expect(predictionCheckOf(scene)).toBeNull();
    expect(say('runs-verdict', scene)).toMatch(reason);
    for (const name of Object.keys(all)) expect(say(name, scene)).not.toMatch(/NaN|undefined|Infinity|null/);
  });
});

test('nothing of the log is passed over in silence', () => {
  const scene = sceneWith([
    ...cut('Dunlin', [120, 150]),
    ...cut('Plover', [60]),
    inMm('Plover', 900),
    ...cut('Heron', [10]),
  ]);
  expect(say('runs-entered', scene)).toMatch(/One run of the two in mm cannot be set beside them and waits/);
  expect(say('runs-entered', scene)).toMatch(/No knife of the line-up is called “Heron”/);
});

function inMm(knife: string, cutMm: number): Run {
  const { cuts: _cuts, ...run } = aRun({ knife, sharpening: 'in mm' });
  return { ...run, cutMm };
}

test('a run far from the others is named and counted', () => {
  const scene = sceneWith([
    ...cut('Dunlin', [120, 125, 130, 128, 122, 127, 900]),
    ...cut('Plover', [60, 62, 61, 63, 59, 64, 60]),
  ]);
  expect(say('runs-odd', scene)).toMatch(
    /Far from the others: Dunlin at 900 cuts in coil 1\. It is drawn and counted/,
  );
  expect(runsOf(scene).subject.lives).toHaveLength(7);
});

test('five that went equally far make no odd one of the sixth', () => {
  // Half of the runs have no width at all, so three times that width would call any other run far.
  const scene = sceneWith([...cut('Dunlin', [120, 120, 120, 120, 120, 145]), ...cut('Plover', [60, 70, 65])]);
  expect(runsOf(scene).subject.far).toEqual([]);
  expect(say('runs-odd', scene)).toBe('');
});

test('a run that ended early stands where it ended', () => {
  expect(placeOf({ low: 100, high: 125 })).toBe(125);
  expect(placeOf({ low: 100, high: Infinity })).toBe(100);
});

test('every sentence about the two changes when they are exchanged', () => {
  const entry: ComparisonEntry = { ...loft(), runs: loftRuns() };
  const exchanged = { ...entry, subject: entry.baseline, baseline: entry.subject };
  for (const name of Object.keys(all)) {
    // Suspects, the sheet and the starts cover all knives alike, whichever is looked at.
    if (['runs-suspects', 'runs-ruled-out', 'runs-sheet', 'runs-start'].includes(name)) continue;
    expect(say(name, sceneOf(exchanged)), name).not.toBe(say(name, sceneOf(entry)));
  }
});

test('a suspect put back makes the model say what was measured', () => {
  const scene = sceneWith(loftRuns());
  const ratio = runsOf(scene).measured?.ratio ?? 0;
  const found = suspectsOf(scene).find(
    ({ attribute, knife }) => attribute === 'angleDeg' && knife === 'dunlin',
  );
  expect(found?.to).toBe(
    whatItTakes(scene.comparison, {
      knife: 'dunlin',
      against: 'plover',
      attribute: 'angleDeg',
      target: ratio,
    }).value,
  );
  const changed = withAttribute(scene.comparison, 'dunlin', 'angleDeg', found?.to ?? 0);
  expect(compare(changed).rows.find(({ knife }) => knife === 'dunlin')?.product).toBeCloseTo(ratio, 6);
});

describe('the plan', () => {
  // Exact power of the pooled t test (design check values): CV 20 %, ratio 1.2: 20 a knife; CV 10 %, ratio 1.1: 19.
  test.each([
    [0.2, 1.2, 20],
    [0.1, 1.1, 19],
    [0.3, 1.5, 10],
  ])('CV %d and ratio %d take %d sharpenings of each', (cv, ratio, needed) => {
    const plan = { cv, ratio, batches: 2, blind: true, seed: 1 };
    expect(neededOf(plan).apart).toBe(needed);
    expect(say('runs-needed', sceneOf({ ...loft(), plan }))).toContain(`takes ${needed} sharpenings of each`);
  });

  // Check values of a paired plan (CV 20 %, ratio 1.2), exact paired t on logarithms: 21, 12 and 8 pairs.
  test.each([
    [0, 21],
    [0.5, 12],
    [0.7, 8],
  ])('with a correlation of %d it takes %d pairs', (correlation, pairs) => {
    const plan = { cv: 0.2, ratio: 1.2, correlation, batches: 2, blind: true, seed: 1 };
    expect(pairsFor(plan.cv, plan.ratio, correlation)).toBe(pairs);
    expect(say('runs-needed', sceneOf({ ...loft(), plan }))).toContain(
      `Cut in pairs on the same stock, with a correlation of ${correlation} between the two, it takes ${pairs} pairs.`,
    );
    const { columns, rows } = planCurve.table(sceneOf({ ...loft(), plan }));
    const chances = rows.map((row) => [
      Number(row[columns.indexOf('Sharpenings of each')]),
      row[columns.indexOf('In pairs, at ×1.20')] ?? '',
    ]);
    expect(chances.length).toBeGreaterThan(5);
    const shown = columns.indexOf('Chance of showing alike to within ×1.20');
    const { alike } = neededOf(plan);
    for (const row of rows) {
      const many = Number(row[columns.indexOf('Sharpenings of each')]);
      // The same number of runs as by the search of the model, 80 % being asked for.
      expect(parseInt((row[shown] ?? '').replace('over ', ''), 10) >= 80, `${many}`).toBe(
        many >= (alike ?? 0),
      );
    }
    for (const [many = 0, chance = ''] of chances as [number, string][])
      expect(parseInt(chance.replace('over ', ''), 10) >= 80, `${many}: ${chance}`).toBe(many >= pairs);
  });

  test('takes the scatter from the runs where they show it', () => {
    expect(planOf(sceneOf(loft()))).toMatchObject({ cv: 0.2, from: 'assumed' });
    // The invented truth is 12 %; nine runs a knife show it to about a fifth.
    const { cv, from } = planOf(sceneWith(loftRuns()));
    expect(from).toBe('the runs');
    expect(Math.abs(cv - 0.12)).toBeLessThan(0.05);
  });

  test('a sheet that cannot be is explained', () => {
    const twice = loft();
    const knives = twice.knives.map((knife) => ({ ...knife, name: 'Plover' }));
    expect(sheetOf(sceneOf({ ...twice, knives }))).toMatchObject({ ok: false });
    expect(say('runs-sheet', sceneOf({ ...twice, knives }))).toMatch(/There is no sheet: .*twice/);
  });

  describe('the window of the start', () => {
    const plan = { ratio: 1.25, batches: 1, blind: false, seed: 1, start: { low: 90, high: 110 } };
    const said = (starts: readonly (number | 'not recorded')[]) =>
      say(
        'runs-start',
        sceneWith(
          starts.map((startSharpness, index) => aRun({ sharpening: String(index + 1), startSharpness })),
          { plan },
        ),
      );

    test('names the edges outside it, and leaves none out', () => {
      expect(said([100, 82, 110, 110.5])).toBe(
        'Plover, sharpening 2, began at 82, outside the window from 90 to 110. Plover, sharpening 4, began at 110.5, outside the window from 90 to 110. They count all the same. Whoever leaves a run out says so, and why.',
      );
      const runs = [
        ...cut('Dunlin', [120, 150, 180], { startSharpness: 20 }),
        ...cut('Plover', [60, 75, 90]),
      ];
      expect(runsOf(sceneWith(runs, { plan })).measured).toEqual(runsOf(sceneWith(runs)).measured);
    });

    test('names a run without a sharpening by its knife alone', () =>
      expect(
        say('runs-start', sceneWith([aRun({ sharpening: 'not recorded', startSharpness: 82 })], { plan })),
      ).toContain('Plover began at 82, outside'));

    test('says so where all are inside, and where nobody wrote it down', () => {
      expect(said([90, 110])).toBe('All edges began within the window from 90 to 110.');
      expect(said([100, 'not recorded'])).toBe(
        'All edges whose start is recorded began within the window from 90 to 110. One run has no recorded start, and may lie outside.',
      );
      expect(said(['not recorded', 'not recorded'])).toBe('No run has its start recorded.');
      expect(say('runs-start', sceneWith(cut('Plover', [60])))).toBe('');
    });

    test('names six, and counts the rest', () => {
      expect(said(Array.from({ length: 9 }, () => 20))).toContain('So did 3 more.');
    });

    test('is a rule of the sheet', () => {
      expect(say('runs-sheet', sceneOf({ ...loft(), plan }))).toContain(
        'A run begins only with an edge whose sharpness reads from 90 to 110; any other is sharpened again.',
      );
    });
  });

  test('a control knife opens and closes every batch', () => {
    const plan = { cv: 0.2, ratio: 1.2, runs: 4, batches: 2, blind: true, seed: 1, control: 'Heron' };
    const held = sheetOf(sceneOf({ ...loft(), plan }));
    expect(held.ok && held.sheet.rows.map(({ label }) => label === 'Heron').filter(Boolean)).toHaveLength(4);
    expect(held.ok && held.sheet.rows.some(({ label }) => label === 'Dunlin')).toBe(false);
  });
});
