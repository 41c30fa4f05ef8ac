import { describe, expect, test } from 'vitest';
import { comparisonMarkdown } from '../../src/compare/sheet/markdown.ts';
import { exponentsOf } from '../../src/scene/routes.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { ComparisonEntry, PlanEntry } from '../../src/comparison/entry.ts';
import { explainedText } from '../../src/topics/explained/text.ts';
import { sentencesOf } from '../../src/phrases/sentences-of.ts';
import { whatItTakes } from '../../src/model/index.ts';
import { notRecorded } from '../../src/runs/log.ts';
import type { Run } from '../../src/runs/log.ts';
import { everything } from '../../src/topics/all.ts';
import { aRun } from '../runs/runs.ts';
import { oddComparisons, pair } from './odd-comparisons.ts';
import { exact } from '../model/knives.ts';

/** Sentences that hardly any comparison calls up, each asked of one made for it; and what it must say there. */
type Rare = [why: string, words: string, entry: ComparisonEntry, said: RegExp];

function described(of: string, entry: ComparisonEntry): string {
  // Nobody ever reads a sentence about a comparison the site refuses.
  expect(validate(entry)).toMatchObject({ ok: true });
  return everything
    .words(of)(sceneOf(entry))
    .filter((sentence) => sentence !== '')
    .join(' ');
}
const check = (all: readonly Rare[]) => {
  test.each(all)('%s', (_, of, entry, said) => {
    expect(described(of, entry)).toMatch(said);
  });
};

const unknown = (low: number, high: number) => ({ unknown: true as const, low, high });
const real = ({ invented: _demo, ...entry }: ComparisonEntry): ComparisonEntry => entry;
const withRuns = (runs: Run[], rest: Partial<ComparisonEntry> = {}): ComparisonEntry =>
  real({ ...pair({ angle: { deg: 15 } }), runs, ...rest });
const cut = (knife: string, cuts: readonly number[], change: Partial<Run> = {}): Run[] =>
  cuts.map((many, index) => aRun({ knife, cuts: many, sharpening: `${knife} ${index}`, ...change }));
const inMm = (runs: Run[]): Run[] => runs.map(({ cuts = 0, ...run }) => ({ ...run, cutMm: cuts }));

/** Alike in slicing, not in rolling: a slimmer edge with a finish so much finer. */
const slicesAlike = (): ComparisonEntry => {
  const slim = pair({ angle: { deg: 17 }, finish: { um: 30 } });
  const { comparison } = sceneOf(slim);
  const { value } = whatItTakes(comparison, { knife: 'dunlin', against: 'plover', attribute: 'finish' });
  return pair({ angle: { deg: 17 }, finish: { um: value ?? 0 } });
};

describe('the chain', () => {
  check([
    [
      'one measure is not known',
      'answer',
      pair({ hrc: unknown(56, 62) }),
      /One measure isn’t known: a middle value stands in, and the range is wider for it\./,
    ],
    [
      'the terms cancel: (20/16)² of the angle against 32/50 of the grain, in the head',
      'shares',
      pair(
        { angle: { deg: 16 }, finish: { um: 32 } },
        { angle: { deg: 20 }, finish: { um: 50 } },
        { reading: 'quick' },
      ),
      /^Gains and losses of Dunlin nearly cancel/,
    ],
    [
      'two steels of the table',
      'steel-tie',
      pair({ carbide: { designation: 'AISI D2' } }, { carbide: { designation: 'AISI 52100' } }),
      /^AISI D2 is the steel of Dunlin; Plover is of AISI 52100\./,
    ],
    [
      // FEPA P above P2500 is refused; JIS reaches 8000.
      'numbers beyond a list',
      'grits-by-scale',
      pair({ finish: { scale: 'JIS', grit: 5000 } }, { finish: { scale: 'JIS', grit: 6000 } }),
      /FEPA P: no answer, since its list here runs from 80 to 2500 and neither 5000 nor 6000 lies in it\./,
    ],
    [
      // Only JIS goes beyond 2500 here.
      'one number, on one list alone',
      'grits-by-scale',
      pair({ finish: { scale: 'JIS', grit: 6000 } }, { finish: { scale: 'JIS', grit: 6000 } }),
      /^Dunlin and Plover bear one number, 6000\. Read on one scale, whichever it is, that is one size\.$/,
    ],
    [
      // The ordinary room at that exponent, P120 over P2000, is (125/10.3)^0.001 = 1.0025.
      'a finish that counts for next to nothing, and is still all there is',
      'range-race',
      pair({ finish: { um: 200 } }, { finish: { um: 0.5 } }, { assumptions: { finishExponent: 0.001 } }),
      /By the careful estimate most of the difference lies in the finish, in favour of Dunlin: ×1\.01 for Dunlin\.$/,
    ],
    ['nothing but steel', 'answer-all-steel', pair({ hrc: 63 }), /it is the steel, and nothing else\.$/],
    [
      'two effects so small that adding does no harm',
      'explained-surprise',
      pair({ edgeMm: 0.36, finish: { scale: 'FEPA-P', grit: 360 } }),
      /^For Dunlin and Plover adding and multiplying come to nearly the same/,
    ],
    [
      'effects that set each other off',
      'percentages',
      slicesAlike(),
      /Here Dunlin and Plover come out level\./,
    ],
    [
      'two effects whose product is as good as nothing',
      'percentages',
      // Each about 1%, and 0.01 × 0.01 is 0.0001.
      pair({ angle: { deg: 19.7 }, edgeMm: 0.394, finish: { um: 36 } }, { finish: { um: 35 } }),
      /hardly another number/,
    ],
    [
      'a microbevel against the wedge',
      'two-routes',
      pair({ angle: { deg: 12 }, microbevelDeg: 26 }),
      /pull opposite ways: the wedge counts for Dunlin, the apex against it\./,
    ],
    [
      'a wedge against the microbevel',
      'two-routes',
      pair({ angle: { deg: 20 } }, { angle: { deg: 12 }, microbevelDeg: 26 }),
      /pull opposite ways: the wedge counts against Dunlin, the apex for it\./,
    ],
    [
      'two waists',
      'behind-opened',
      pair(
        { grind: { form: 'hollow', spineMm: 3, heightMm: 22, radiusMm: 80 }, edgeMm: 0.8 },
        { grind: { form: 'hollow', spineMm: 3, heightMm: 22, radiusMm: 80 }, edgeMm: 0.8 },
      ),
      /Dunlin and Plover have a waist/,
    ],
    [
      'no carbide',
      'explained-compared',
      pair({ carbide: { volPercent: {} } }),
      /Dunlin: .*hardness 59 HRC, no carbide\. Plover/,
    ],
    [
      'an assumption that is not known',
      'band',
      pair({}, {}, { assumptions: { finishExponent: unknown(0, 0.6) } }),
      /Left open for all knives: what finish is worth/,
    ],
  ]);
});

describe('the limits', () => {
  check([
    [
      'an edge in the doubtful degrees (floor 5.08° to 5.17° at 59 HRC, tan 5°·(697/674)^½ and the same without the root)',
      'limits-floor',
      pair({ angle: { deg: 5.5 } }),
      /At 5\.5° Dunlin is within the doubtful degrees from 4° to 6°\.$/,
    ],
    [
      'slicing level, rolling not',
      'limits-turning',
      slicesAlike(),
      /In slicing all stand level: only the other trials set them apart\./,
    ],
    [
      'rolls later, chips sooner: harder, and half as tough',
      'limits',
      pair({ hrc: 62, toughness: 10 }, { hrc: 56, toughness: 20 }),
      /Rolling and chipping part company: Dunlin rolls later, Plover chips later/,
    ],
    [
      'rolls sooner, chips later',
      'limits',
      pair({ hrc: 56, toughness: 20 }, { hrc: 62, toughness: 10 }),
      /Rolling and chipping part company: Plover rolls later, Dunlin chips later/,
    ],
  ]);
});

describe('a position', () => {
  const holding = (position: ComparisonEntry['position'] & object): ComparisonEntry =>
    pair({ angle: { deg: 15 }, edgeMm: 0.3 }, {}, { position });
  const between = exponentsOf(sceneOf(pair({})));

  check([
    [
      'that changes nothing',
      'argue-follows',
      holding({ structure: 'multiplied' }),
      /^You hold that all factors multiply\. .* That is the same as with the switches untouched\.$/,
    ],
    [
      'that moves the ratio',
      'argue-follows',
      holding({ structure: 'added' }),
      /^You hold that the forces add\. .* With the switches untouched it is about [\d.]+ times as long\.$/,
    ],
    [
      'of one floor for every steel',
      'argue-floor',
      holding({ floor: 'still' }),
      /^You hold one floor for every steel\. Dunlin at 15° stands above its floor of 5°\. Plover at 20° stands above its floor of 5°\.$/,
    ],
    [
      // At an exponent of the wedge and the whole tooth depth “between” is tooth depth in full.
      'that no number of runs tells from another',
      'argue-settle-apex',
      pair({}, {}, { assumptions: { angleExponent: between.wedge + between.tooth } }),
      /No number of runs can tell: both say the same\./,
    ],
  ]);
});

describe('a log', () => {
  const even = [95, 100, 105];
  const both = [...cut('dunlin', even), ...cut('plover', even)];
  const batches = (knife: string, names: readonly string[]): Run[] =>
    names.flatMap((batch) =>
      cut(knife, even, { batch }).map((run) => ({
        ...run,
        sharpening: `${knife} ${batch} ${run.sharpening}`,
      })),
    );
  const plan: PlanEntry = { ratio: 1.25, batches: 3, blind: true, seed: 1 };

  check([
    [
      'measured in mm',
      'runs-entered',
      withRuns(inMm(both)),
      /^The log has 3 runs of Dunlin and 3 runs of Plover, in mm cut\./,
    ],
    [
      'mostly in mm',
      'runs-verdict',
      withRuns([...inMm(both), ...cut('plover', [50])]),
      /Not in the ratio: Plover plover 0 in coil 1, because it is counted in cuts, not in mm\./,
    ],
    [
      'with a batch of one knife only',
      'runs-verdict',
      withRuns([...batches('dunlin', ['a', 'b', 'c']), ...batches('plover', ['a', 'b'])]),
      /Not in the ratio: Dunlin .* in c, Dunlin .* in c and Dunlin .* in c, because c holds no run of Plover\./,
    ],
    [
      'with a run that ended early',
      'runs-verdict',
      withRuns([...both, aRun({ knife: 'dunlin', cuts: 130, sharpening: 'last', censored: true })]),
      /One sharpening ended before the end point and counts as “at least so long”\./,
    ],
    [
      'with runs that ended early',
      'runs-verdict',
      withRuns([
        ...both,
        ...cut('dunlin', [130, 131], { censored: true, batch: 'late' }).map((run, i) => ({
          ...run,
          sharpening: `late ${i}`,
        })),
      ]),
      /2 sharpenings ended before the end point and count as “at least so long”\./,
    ],
    [
      'with a scatter nobody masters',
      'runs-verdict',
      withRuns([...cut('dunlin', [1, 1e9]), ...cut('plover', [1, 9e8])]),
      /Dunlin lasted under 0\.001 to over 100,000 times as long as Plover/,
    ],
    [
      'with a run far off, of no batch',
      'runs-odd',
      withRuns([
        ...cut('dunlin', [120, 125, 130, 128, 122, 127, 900], { batch: notRecorded }),
        ...cut('plover', even, { batch: notRecorded }),
      ]),
      /^Far from the others: Dunlin at 900 cuts\. It is drawn/,
    ],
    [
      'with more runs far off than are listed',
      'runs-odd',
      withRuns([
        ...cut('dunlin', [
          ...Array.from({ length: 24 }, (_, i) => 120 + i / 10),
          900,
          901,
          902,
          903,
          904,
          905,
        ]),
        ...cut('plover', even),
      ]),
      /Dunlin at 904 cuts in coil 1 and 1 more\. They are drawn/,
    ],
    [
      'with one run',
      'explained-runs',
      withRuns(cut('dunlin', [120])),
      /^One measured run goes along with this comparison: one run of Dunlin, 0 runs of Plover\./,
    ],
    [
      'of a knife whose name is written from right to left',
      'explained-runs',
      { ...real(pair({ name: 'סכין' })), runs: cut('dunlin', [120, 130]) },
      /^2 measured runs go along with this comparison: 2 runs of \u2068סכין\u2069, 0 runs of Plover\./,
    ],
    [
      'that says less than was predicted',
      'runs-square',
      withRuns([...cut('dunlin', [9.5, 10, 10.5]), ...cut('plover', even)]),
      /so something needs explaining\. Dunlin did worse against Plover than predicted/,
    ],
    [
      'that says more',
      'runs-square',
      withRuns([...cut('dunlin', [1900, 2000, 2100]), ...cut('plover', even)]),
      /so something needs explaining\. Dunlin did better against Plover than predicted/,
    ],
    [
      'beside a prediction without a band',
      'runs-square',
      withRuns(both, exact),
      /Without a single cut: Dunlin should cut about 1\.5 times as long as Plover\. The runs say 0\.89 to 1\.1; 1 is the middle\. Everything was entered as exact/,
    ],
    [
      'under a few codes',
      'runs-entered',
      withRuns([...both, ...cut('dunlin', [120]).map((run) => ({ ...run, knife: { called: 'KM47' } }))], {
        plan,
      }),
      /Runs under KM47 get their knives when the log is closed\./,
    ],
  ]);
});

describe('a plan of runs', () => {
  const planned = (change: Partial<PlanEntry>): ComparisonEntry =>
    real({
      ...pair({ angle: { deg: 15 } }),
      plan: { ratio: 1.25, batches: 3, blind: true, seed: 1, ...change },
    });

  check([
    [
      // 2 (1.960 + 0.842)² ln 5/(ln 1.01)² = 255,180 and 2 (1.645 + 1.282)² ln 5/(ln 1.01)² = 278,500, the normal
      // approximations of any handbook of sample sizes, ln 5 being the variance of logarithms at a CV of 2.
      'as far as a plan may go',
      'runs-needed',
      planned({ cv: 2, ratio: 1.01 }),
      /takes 255,1\d\d sharpenings of each\. To show that they are as good as equal, within that ratio, takes 278,[45]\d\d sharpenings of each\./,
    ],
    [
      'some of whose runs have no recorded start',
      'runs-start',
      {
        ...planned({ start: { low: 90, high: 110 } }),
        runs: ([100, notRecorded, notRecorded] as const).map((startSharpness, place) =>
          aRun({ startSharpness, sharpening: `${place}` }),
        ),
      },
      /^All edges whose start is recorded began within the window from 90 to 110\. 2 runs have no recorded start, and may lie outside\.$/,
    ],
    [
      'beyond a sheet',
      'runs-sheet',
      planned({ cv: 0.5, ratio: 1.2 }),
      /The scatter asks for \d+; this sheet holds 39 unless you set more\./,
    ],
    [
      'short of what the scatter asks for: 20 a knife by the exact power of the t test',
      'runs-sheet',
      planned({ cv: 0.2, ratio: 1.2, runs: 6, batches: 1 }),
      /That is fewer than the 20 the scatter asks for, so a real difference between Dunlin and Plover may well stay hidden\./,
    ],
    [
      'with a control knife',
      'runs-sheet',
      planned({ cv: 0.2, ratio: 1.2, control: 'Heron' }),
      /Heron is cut first and last in every batch, so that a change of stock or hand shows\.$/,
    ],
    ['in the open', 'runs-sheet', planned({ blind: false }), /It begins with (Dunlin|Plover)\.$/],
  ]);
});

test('a comparison that is not invented is not called so, in any text', () => {
  const entry = pair({ angle: { deg: 15 } });
  for (const [one, invented] of [
    [entry, true],
    [real(entry), false],
  ] as const) {
    const scene = sceneOf(one);
    const texts = [
      explainedText(scene, 'one sentence', 'plain text', 'https://keenfold.example/'),
      comparisonMarkdown(scene, 'https://keenfold.example/'),
      described('explained-compared', one),
      described('whose', one),
    ];
    for (const text of texts) expect(/invented/i.test(text), text).toBe(invented);
  }
});

test('sentences nobody wrote are refused by their name', () => {
  expect(() => sentencesOf({}, 'heron', sceneOf(oddComparisons['equal'] ?? pair({})))).toThrow(
    'no sentences are named heron',
  );
});
