import { describe, expect, it, test } from 'vitest';
import { judgeRuns } from '../../../src/model/index.ts';
import type { Judgement, LoggedRun, RunLife } from '../../../src/model/index.ts';

const cuts = (value: number): RunLife => ({ cuts: value });
const atLeast = (value: number): RunLife => ({ atLeast: value });
/** Every life its own sharpening, in the batches named in turn, if any. */
const runsOf = (
  knife: string,
  lives: (number | RunLife)[],
  batches: (string | undefined)[] = [],
): LoggedRun[] =>
  lives.map((life, i) => ({
    knife,
    edge: `${knife} ${i}`,
    batch: batches.length === 0 ? undefined : batches[i % batches.length],
    life: typeof life === 'number' ? cuts(life) : life,
  }));
const judge = (runs: LoggedRun[], more: Partial<Parameters<typeof judgeRuns>[1]> = {}): Judgement =>
  judgeRuns(runs, { knife: 'Dunlin', against: 'Plover', ...more });
const numbers = ({ ratio, low, high, low90, high90, df }: Judgement) => [ratio, low, high, low90, high90, df];
const nothing = { low: null, high: null, low90: null, high90: null, df: null };

describe('what the judge says', () => {
  const plover = runsOf('Plover', [100, 110, 120, 130]);

  it('longer and shorter, and the one is the other turned round', () => {
    const log = [...runsOf('Dunlin', [205, 215, 250, 255]), ...plover];
    const longer = judge(log);
    expect(longer.verdict).toBe('longer');
    expect(longer.method).toBe('Welch’s t on the logs of the lives, no batch recorded');
    expect(longer).toMatchObject({ runs: { Dunlin: 4, Plover: 4 }, batches: [], leftOut: [] });
    const shorter = judgeRuns(log, { knife: 'Plover', against: 'Dunlin' });
    expect(shorter.verdict).toBe('shorter');
    expect((shorter.low ?? 0) * (longer.high ?? 0)).toBeCloseTo(1, 12);
    expect((shorter.ratio ?? 0) * (longer.ratio ?? 0)).toBeCloseTo(1, 12);
  });

  it('as good as equal only inside the bounds, with the 90% interval', () => {
    const log = [...runsOf('Dunlin', [101, 109, 121, 129]), ...plover];
    const equal = judge(log);
    expect(equal.verdict).toBe('as good as equal');
    expect(equal.low90).toBeGreaterThan(0.8);
    expect(equal.high90).toBeLessThan(1.25);
    // The bounds are just passed or not, by the interval's own end.
    const end = Math.max(equal.high90 ?? 0, 1 / (equal.low90 ?? 0));
    expect(judge(log, { alike: end * 1.0001 }).verdict).toBe('as good as equal');
    expect(judge(log, { alike: end * 0.9999 }).verdict).toBe('not distinguished');
  });

  it('a real difference before as good as equal', () => {
    const close = judge([
      ...runsOf('Dunlin', [104, 105, 106, 105]),
      ...runsOf('Plover', [100, 101, 99, 100]),
    ]);
    expect(close.verdict).toBe('longer');
    expect(close.high90).toBeLessThan(1.25);
  });

  it('not distinguished where the runs scatter too much for either', () => {
    const wide = judge([...runsOf('Dunlin', [80, 150, 200]), ...runsOf('Plover', [70, 120, 190])]);
    expect(wide.verdict).toBe('not distinguished');
    expect(wide.low).toBeLessThan(1);
    expect(wide.high).toBeGreaterThan(1);
  });

  it('a difference exactly where the interval leaves 1 out', () => {
    const log = [...runsOf('Dunlin', [120, 150, 140, 170]), ...plover];
    const at = (alpha: number) => judge(log, { alpha });
    let [low, high] = [1e-6, 0.5];
    for (let i = 0; i < 40; i += 1) {
      const middle = Math.sqrt(low * high);
      if (at(middle).verdict === 'longer') high = middle;
      else low = middle;
    }
    expect(at(high).low).toBeCloseTo(1, 9);
  });
});

describe('batches', () => {
  const both = ['coil 1', 'coil 2'];
  const dunlin = [150, 100, 160, 105];
  const plover = [120, 85, 130, 80];

  it('are blocked on: a harder batch changes nothing', () => {
    const log = [...runsOf('Dunlin', dunlin, both), ...runsOf('Plover', plover, both)];
    const hard = log.map((run) =>
      run.batch === 'coil 2' && 'cuts' in run.life ? { ...run, life: cuts(run.life.cuts * 7) } : run,
    );
    const [easy, hardened] = [judge(log), judge(hard)];
    expect(easy.batches).toEqual(both);
    expect(easy.method).toBe(
      'least squares within batches on the logs of the lives, each knife with its own scatter (Satterthwaite)',
    );
    numbers(easy).forEach((value, i) => expect(numbers(hardened)[i]).toBeCloseTo(value ?? NaN, 9));
    // Within batches Dunlin lasts 1.26, 1.18, 1.23 and 1.31 times as long; across them nobody could tell.
    expect(easy.verdict).toBe('longer');
    expect(judge(log.map((run) => ({ ...run, batch: undefined }))).verdict).toBe('not distinguished');
  });

  it('of one run each are the paired t on the logs', () => {
    // Paired t: differences ln(150/120), ln(100/85), ln(160/130); mean 0.19776, sd/√3 0.01818, t(2) 97.5 % 4.30265 (own calculation).
    const three = ['coil 1', 'coil 2', 'coil 3'];
    const paired = judge([
      ...runsOf('Dunlin', [150, 100, 160], three),
      ...runsOf('Plover', [120, 85, 130], three),
    ]);
    const differences = [150 / 120, 100 / 85, 160 / 130].map(Math.log);
    const mean = differences.reduce((sum, d) => sum + d, 0) / 3;
    const error = Math.sqrt(differences.reduce((sum, d) => sum + (d - mean) ** 2, 0) / 6);
    expect(paired.df).toBeCloseTo(2, 9);
    expect(paired.ratio).toBeCloseTo(Math.exp(mean), 12);
    expect(paired.high).toBeCloseTo(Math.exp(mean + 4.3026527 * error), 7);
    expect(paired.method).toContain('one scatter for both knives');
  });

  it('that only one knife was cut in are left out, and runs without a batch, by name', () => {
    const log = [
      ...runsOf('Dunlin', dunlin, both),
      ...runsOf('Plover', plover, both),
      ...runsOf('Dunlin', [900], ['coil 3']),
      ...runsOf('Plover', [10], ['coil 4']),
      { knife: 'Plover', edge: 'last', life: cuts(5) },
      { knife: 'Curlew', edge: 'a', batch: 'coil 3', life: cuts(40) },
    ];
    const judged = judge(log);
    expect(judged.leftOut).toEqual([
      { run: 8, why: 'batch coil 3 holds no run of Plover' },
      { run: 9, why: 'batch coil 4 holds no run of Dunlin' },
      { run: 10, why: 'its batch is not recorded' },
    ]);
    expect({ ...judged, leftOut: [] }).toEqual(judge(log.slice(0, 8)));
  });

  it('that never meet give no verdict, whatever the lives', () => {
    const judged = judge([
      ...runsOf('Dunlin', [500, 510, 520], ['coil 1']),
      ...runsOf('Plover', [50, 51, 52], ['coil 2']),
    ]);
    expect(judged).toMatchObject({ verdict: 'cannot be separated', ratio: null, ...nothing, batches: [] });
    expect(judged.leftOut).toHaveLength(6);
    expect(judged.method).toBe('none: no batch holds both knives, so knife and batch cannot be separated');
  });

  it('written down for one knife only give no verdict either', () => {
    const judged = judge([...runsOf('Dunlin', [500, 510], ['coil 1']), ...runsOf('Plover', [50, 51])]);
    expect(judged.verdict).toBe('cannot be separated');
    expect(judged.leftOut[2]).toEqual({ run: 2, why: 'its batch is not recorded' });
  });
});

describe('one sharpening counts once', () => {
  it('however often its edge was cut: the geometric mean of its lives', () => {
    const plover = runsOf('Plover', [60, 80, 75]);
    const thrice = [
      ...[90, 100, 1000 / 9].map((life) => ({ knife: 'Dunlin', edge: 'first', life: cuts(life) })),
      ...runsOf('Dunlin', [120, 110]),
    ];
    const judged = judge([...thrice, ...plover]);
    expect(judged.runs).toEqual({ Dunlin: 3, Plover: 3 });
    const once = judge([...runsOf('Dunlin', [100, 120, 110]), ...plover]);
    numbers(judged).forEach((value, i) => expect(value).toBeCloseTo(numbers(once)[i] ?? NaN, 9));
  });

  it('so many lives of a single edge are too few', () => {
    const one = [100, 105, 95, 102].map((life) => ({ knife: 'Dunlin', edge: 'only', life: cuts(life) }));
    const judged = judge([...one, ...runsOf('Plover', [60, 80, 75])]);
    expect(judged).toMatchObject({ verdict: 'too few runs', ...nothing, runs: { Dunlin: 1, Plover: 3 } });
    expect(judged.method).toBe('none: one sharpening of a knife does not show how much its lives vary');
  });

  it('and an edge of one knife is no edge of the other', () => {
    const log = ['Dunlin', 'Plover'].flatMap((knife, k) =>
      [0, 1, 2].map((edge) => ({ knife, edge: `${edge}`, life: cuts(100 + 7 * edge + 90 * k) })),
    );
    expect(judge(log).runs).toEqual({ Dunlin: 3, Plover: 3 });
  });
});

describe('lives that are not known exactly', () => {
  it('looked at: between two looks, with at least the scatter of the looks', () => {
    const look = { from: 100, to: 125 };
    const judged = judge([...runsOf('Dunlin', [look, look, look]), ...runsOf('Plover', [look, look, look])]);
    // Uniform between two logs: variance ln(1.25)²/12 for each run. All lives lie between the same two looks, so the
    // same again for each knife that more runs would not average out. t(4) 97.5% is 2.776445 (tables).
    const variance = Math.log(1.25) ** 2 / 12;
    expect(judged.ratio).toBeCloseTo(1, 12);
    expect(judged.df).toBeCloseTo(4, 9);
    expect(judged.high).toBeCloseTo(Math.exp(2.776445 * Math.sqrt((2 / 3 + 2) * variance)), 6);
    expect(judged.method).toContain('a life between two looks counts as their log midpoint');
  });

  it('given up early: the textbook geometric mean of 100, 120, 150 and over 160', () => {
    const judged = judge([
      ...runsOf('Dunlin', [100, 120, 150, atLeast(160)]),
      ...runsOf('Plover', [90, 100, 1000 / 9]),
    ]);
    // Maximum likelihood, 134.84 (SciPy, minimised numerically).
    expect(judged.ratio).toBeCloseTo(1.3484, 4);
    expect(judged.method).toBe(
      'normal maximum likelihood on the logs of the lives, each knife with its own scatter, no batch recorded; a run given up early lasts at least that long',
    );
  });

  it('blunt at the first look: shorter than it, not left out', () => {
    const sharp = [110, 130, 120, 125];
    const log = (dunlin: (number | RunLife)[]) => [...runsOf('Dunlin', dunlin), ...runsOf('Plover', sharp)];
    const late = judge(log([90, 100, 95, { from: 0, to: 60 }]));
    expect(late.runs).toEqual({ Dunlin: 4, Plover: 4 });
    expect(late.ratio).toBeLessThan(judge(log([90, 100, 95])).ratio ?? 0);
    expect(late.method).toContain('an edge blunt at the first look lasts at most that long');
  });

  it('given up before the first cut says nothing', () => {
    const log = [...runsOf('Dunlin', [100, 110, atLeast(0)]), ...runsOf('Plover', [60, 80])];
    expect(judge(log).leftOut).toEqual([{ run: 2, why: 'it was given up before the first cut' }]);
    const mixed = [atLeast(50), { from: 0, to: 40 }].map((life) => ({ knife: 'Dunlin', edge: 'x', life }));
    expect(judge([...mixed, ...runsOf('Dunlin', [100, 110]), ...runsOf('Plover', [60, 80])]).leftOut).toEqual(
      [0, 1].map((run) => ({ run, why: 'the lives of its edge are open to both sides' })),
    );
  });

  it('in a batch in which no run reached its end point are named and left out', () => {
    const coils = ['coil 1', 'coil 2'];
    const judged = judge([
      ...runsOf('Dunlin', [100, atLeast(80), 120, atLeast(90), 110], coils),
      ...runsOf('Plover', [90, atLeast(80), 95, atLeast(80), 99], coils),
    ]);
    expect(judged.batches).toEqual(['coil 1']);
    expect(judged.leftOut.map(({ run }) => run)).toEqual([1, 3, 6, 8]);
    expect(judged.leftOut[0]?.why).toBe('no run in batch coil 2 reached its end point');
    expect(judged.runs).toEqual({ Dunlin: 3, Plover: 3 });
    expect(judged.ratio).toBeCloseTo((100 * 120 * 110) ** (1 / 3) / (90 * 95 * 99) ** (1 / 3), 9);
  });

  it.each<[string, LoggedRun[], string]>([
    [
      'all of a knife given up',
      [...runsOf('Dunlin', [90, 80, 85].map(atLeast)), ...runsOf('Plover', [60, 65, 80])],
      'fewer than two sharpenings of a knife were cut to their end point',
    ],
    [
      'nearly all of both, of one value',
      [...runsOf('Dunlin', [100, 100, atLeast(50)]), ...runsOf('Plover', [100, 100, atLeast(50)])],
      'the runs that reached their end point do not show how much lives vary',
    ],
    [
      'batch by batch the other knife',
      [
        ...runsOf('Dunlin', [100, atLeast(90), 110, atLeast(95)], ['coil 1', 'coil 2']),
        ...runsOf('Plover', [atLeast(50), 80, atLeast(50), 85], ['coil 1', 'coil 2']),
      ],
      'no batch holds a run of both knives that reached its end point',
    ],
    [
      'too many of them',
      [
        ...runsOf('Dunlin', [100, 101, atLeast(90)], ['coil 1', 'coil 2']),
        ...runsOf('Plover', [80, 85, atLeast(50)], ['coil 1', 'coil 2']),
      ],
      'too few runs reached their end point to show how much lives vary',
    ],
  ])('%s: too few runs, with the reason', (_, log, why) => {
    expect(judge(log)).toMatchObject({ verdict: 'too few runs', ...nothing, method: `none: ${why}` });
  });
});

describe('a log that is too short says so', () => {
  it.each<[string, LoggedRun[], string]>([
    ['no run at all', [], 'a knife has no run that can be compared'],
    ['one knife without runs', runsOf('Dunlin', [100, 120]), 'a knife has no run that can be compared'],
    [
      'every run given up, without batches',
      [...runsOf('Dunlin', [atLeast(5)]), ...runsOf('Plover', [atLeast(5)])],
      'a knife has no run that can be compared',
    ],
    [
      'one run a knife',
      [...runsOf('Dunlin', [100]), ...runsOf('Plover', [50])],
      'one sharpening of a knife does not show how much its lives vary',
    ],
    [
      'no scatter',
      [...runsOf('Dunlin', [100, 100]), ...runsOf('Plover', [50, 50])],
      'the lives do not vary at all, so they do not show by how much they could',
    ],
  ])('%s', (_, log, why) => {
    const judged = judge(log);
    expect(judged).toMatchObject({ verdict: 'too few runs', ...nothing, method: `none: ${why}` });
  });

  it('but gives the ratio it has', () => {
    expect(judge([...runsOf('Dunlin', [100]), ...runsOf('Plover', [50])]).ratio).toBeCloseTo(2, 12);
  });
});

describe('several pairs at once', () => {
  const log = [...runsOf('Dunlin', [120, 150, 140, 170]), ...runsOf('Plover', [100, 110, 120, 130])];

  it('share the chance of an error evenly', () => {
    const [of3, alone] = [judge(log, { family: 3 }), judge(log, { alpha: 0.05 / 3 })];
    expect([of3.low, of3.high]).toEqual([alone.low, alone.high]);
    expect(of3.low90).toBeLessThan(alone.low90 ?? 0);
    expect(judge(log).verdict).toBe('longer');
    expect(of3.verdict).toBe('not distinguished');
    expect(of3.method).toContain('Bonferroni for 3 pairs');
  });
});

describe('what is no log or no question is refused by name, value and range', () => {
  const good = [...runsOf('Dunlin', [100, 110]), ...runsOf('Plover', [60, 80])];

  test.each<[RunLife, string]>([
    [cuts(0), 'life of run 1, 0 cuts, is not a finite number above 0'],
    [cuts(-3), 'life of run 1, -3 cuts, is not a finite number above 0'],
    [cuts(NaN), 'life of run 1, NaN cuts, is not a finite number above 0'],
    [cuts(Infinity), 'life of run 1, Infinity cuts, is not a finite number above 0'],
    [atLeast(-1), 'life of run 1, at least -1, is not a finite number of 0 or above'],
    [atLeast(Infinity), 'life of run 1, at least Infinity, is not a finite number of 0 or above'],
    [{ from: 50, to: 25 }, 'life of run 1, from 50 to 25, is not in order from 0 upwards'],
    [{ from: -25, to: 25 }, 'life of run 1, from -25 to 25, is not in order from 0 upwards'],
    [{ from: 0, to: 0 }, 'life of run 1, from 0 to 0, is not in order from 0 upwards'],
    [{ from: NaN, to: 25 }, 'life of run 1, from NaN to 25, is not in order from 0 upwards'],
  ])('a life of %o', (life, says) => {
    const log = good.map((run, i) => (i === 1 ? { ...run, life } : run));
    expect(() => judge(log)).toThrow(new RangeError(says));
  });

  test.each<[Partial<Parameters<typeof judgeRuns>[1]>, string]>([
    [{ against: 'Dunlin' }, 'against Dunlin is the knife itself: two different knives are needed'],
    [{ alpha: 0 }, 'alpha 0 is not between 0.000001 and 0.5'],
    [{ alpha: 0.6 }, 'alpha 0.6 is not between 0.000001 and 0.5'],
    [{ alike: 1 }, 'alike 1 is not above 1 and up to 10'],
    [{ alike: 11 }, 'alike 11 is not above 1 and up to 10'],
    [{ alike: NaN }, 'alike NaN is not above 1 and up to 10'],
    [{ family: 0 }, 'family 0 is not a whole number from 1 to 1000'],
    [{ family: 1.5 }, 'family 1.5 is not a whole number from 1 to 1000'],
    [{ family: 1001 }, 'family 1001 is not a whole number from 1 to 1000'],
  ])('%o', (question, says) => {
    expect(() => judge(good, question)).toThrow(new RangeError(says));
  });
});
