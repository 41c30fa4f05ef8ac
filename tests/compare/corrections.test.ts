import { describe, expect, test } from 'vitest';
import { compare } from '../../src/model/index.ts';
import { comparedSaid, correctionSentence, corrections, publishedIn } from '../../src/compare/corrections.ts';
import { comparisonsFile } from '../../src/comparison/files.ts';
import { decodeLink, encodeLink } from '../../src/comparison/link/codec.ts';
import { toModel } from '../../src/comparison/to-model.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { loftRuns } from '../../src/runs/invented.ts';
import { judgeLog } from '../../src/runs/judge-log.ts';
import { notRecorded } from '../../src/runs/log.ts';
import type { Run } from '../../src/runs/log.ts';
import { aRun } from '../runs/runs.ts';
import { loft } from '../comparison/entries.ts';

const before: ComparisonEntry = { ...loft(), subject: 'dunlin', baseline: 'plover', runs: loftRuns() };
const sentences = (old: ComparisonEntry, now: ComparisonEntry): string[] =>
  corrections(old, now).map(correctionSentence);

/** The log with one run of Dunlin read wrongly at first. */
const mended: ComparisonEntry = {
  ...before,
  runs: (before.runs ?? []).map((run, index) =>
    run.knife === 'dunlin' && before.runs?.findIndex(({ knife }) => knife === 'dunlin') === index
      ? { ...run, cuts: (run.cuts ?? 0) + 100 }
      : run,
  ),
};

describe('the sentences of a correction', () => {
  test('are none where nothing changed', () => {
    expect(corrections(before, structuredClone(before))).toEqual([]);
    expect(corrections(before, { ...before, title: 'Another', reading: 'quick' })).toEqual([]);
  });

  test('of a log name the run and what follows from it, and both numbers are those of the versions', () => {
    const found = corrections(before, mended);
    expect(found.map(({ what }) => what)).toEqual([
      expect.stringMatching(/^Dunlin, coil 1, sharpening 1, until the end point, cuts$/),
      'Dunlin against Plover, by the runs, times as long',
      'Dunlin against Plover, by the runs, lower end of the interval',
      'Dunlin against Plover, by the runs, upper end of the interval',
    ]);
    // Recomputed from the logs alone.
    const ratio = ({ runs = [] }: ComparisonEntry) => judgeLog(runs, { knife: 'dunlin', against: 'plover' });
    expect(found[1]).toMatchObject({ before: ratio(before).ratio, now: ratio(mended).ratio });
    expect(found[2]).toMatchObject({ before: ratio(before).low, now: ratio(mended).low });
    expect(found[3]).toMatchObject({ before: ratio(before).high, now: ratio(mended).high });
  });

  test('of a comparison name the measure and both readings', () => {
    const knives = before.knives.map((knife) =>
      knife.id === 'dunlin' ? { ...knife, angle: { deg: 15 } } : knife,
    );
    const now = { ...before, knives };
    const product = (entry: ComparisonEntry, reading: 'careful' | 'quick') =>
      compare({ ...toModel(entry), baseline: 'plover' }, { reading }).rows.find(
        ({ knife }) => knife === 'dunlin',
      )?.multiplied;
    const found = corrections(before, now);
    expect(found.map(({ what }) => what)).toEqual([
      'Dunlin, edge angle per side, °',
      'Dunlin against Plover, by the careful estimate, times as long',
      'Dunlin against Plover, by the quick sum, times as long',
    ]);
    expect(found[1]).toMatchObject({ before: product(before, 'careful'), now: product(now, 'careful') });
    expect(found[2]).toMatchObject({ before: product(before, 'quick'), now: product(now, 'quick') });
    expect(sentences(before, now)[0]).toBe('Dunlin, edge angle per side, °: 14 before, 15 now.');
  });

  test('say none for what was not there, and tell numbers apart that differ little', () => {
    const { runs: _runs, ...without } = before;
    expect(sentences(without, before)).toContain('Runs of Dunlin in the log: none before, 9 now.');
    expect(sentences(before, without)).toContain('Runs of Dunlin in the log: 9 before, none now.');
    expect(correctionSentence({ what: 'It', before: 1.23456, now: 1.23461 })).toBe(
      'It: 1.23456 before, 1.23461 now.',
    );
    expect(correctionSentence({ what: 'It', before: 1.2341, now: 1.2349 })).toBe(
      'It: 1.234 before, 1.235 now.',
    );
  });
});

describe('what a log or a comparison leaves open', () => {
  const { runs: _runs, ...bare } = before;
  const whats = (old: ComparisonEntry, now: ComparisonEntry): string[] =>
    corrections(old, now).map(({ what }) => what);
  const log = (...runs: Partial<Run>[]): ComparisonEntry => ({ ...bare, runs: runs.map(aRun) });

  test('a run is named by the marks it has, and by its order where it shares them', () => {
    const unmarked = { batch: notRecorded, sharpening: notRecorded } as const;
    expect(
      whats(log(unmarked, unmarked), log({ ...unmarked, cuts: 130 }, { ...unmarked, cuts: 140 })),
    ).toEqual(['Plover, until the end point, cuts', 'Plover, run 2, until the end point, cuts']);
  });

  test('what was not recorded is no number, what was is one', () => {
    const open = { angleDeg: notRecorded, startSharpness: notRecorded, checkedEvery: notRecorded } as const;
    expect(sentences(log(open), log({ angleDeg: 21, startSharpness: 92, checkedEvery: 5 }))).toEqual([
      'Plover, coil 1, sharpening 1, angle as sharpened, °: none before, 21 now.',
      'Plover, coil 1, sharpening 1, sharpness at start: none before, 92 now.',
      'Plover, coil 1, sharpening 1, looked every, cuts: none before, 5 now.',
    ]);
  });

  test('a grain size and a kind of carbide are numbers of the knife', () => {
    const change = (um: number, CrC: number): ComparisonEntry => ({
      ...bare,
      knives: bare.knives.map((knife) =>
        knife.id === 'plover' ? { ...knife, finish: { um }, carbide: { volPercent: { CrC } } } : knife,
      ),
    });
    expect(sentences(change(15, 4), change(16, 5)).slice(0, 2)).toEqual([
      'Plover, finish, µm: 15 before, 16 now.',
      'Plover, CrC, volume per cent: 4 before, 5 now.',
    ]);
  });

  test('a version without one of the knives is looked at for its own two', () => {
    const without: ComparisonEntry = {
      ...bare,
      knives: bare.knives.filter(({ id }) => id !== 'dunlin'),
      subject: 'curlew',
    };
    const all = whats(without, bare);
    expect(all).toContain('Curlew against Plover, by the careful estimate, times as long');
    expect(all).toContain('Dunlin against Plover, by the careful estimate, times as long');
  });

  test('numbers that ten figures do not tell apart are given with ten', () => {
    // A sentence for equal numbers is never asked for by `corrections`.
    expect(correctionSentence({ what: 'It', before: 2, now: 2 })).toBe('It: 2 before, 2 now.');
  });
});

test('corrections stay in the document and travel in the link', () => {
  const kept: ComparisonEntry = {
    ...mended,
    corrections: [
      { date: '2026-11-25', reason: 'A slip of the pen.', changed: sentences(before, mended) },
      { date: '2026-12-01', reason: 'A scale was off.', changed: [] },
    ],
  };
  const read = decodeLink(encodeLink(kept));
  expect(read.ok && read.entry).toEqual(kept);
  expect(
    validate({ ...kept, corrections: [{ date: '2026-13-01', reason: 'x', changed: [] }] }),
  ).toMatchObject({
    ok: false,
    problems: [{ path: 'corrections.0.date', message: '“2026-13-01” is no day; write year, month, day' }],
  });
});

describe('a published version is read', () => {
  const entry = loft();

  test('from its link, and says what stayed behind', () => {
    expect(publishedIn(`https://example.org/compare/${encodeLink(entry)}`)).toEqual({
      entry,
      runsLeftBehind: false,
    });
    const runs = Array.from({ length: 1500 }, (_, index) =>
      aRun({ cuts: 1 + ((index * 7919) % 1013), batch: `lot ${index}` }),
    );
    expect(publishedIn(encodeLink({ ...entry, runs }))).toMatchObject({ entry, runsLeftBehind: true });
  });

  test('from its file', () => {
    expect(publishedIn(comparisonsFile([{ name: 'a', entry }]))).toMatchObject({ entry });
  });

  test.each([
    ['of another place', 'https://example.org/', /no link of a comparison/],
    ['cut short', encodeLink(entry).slice(0, 60), /./],
    ['that is no JSON', '{', /not JSON/],
    [
      'whose comparison cannot be read',
      comparisonsFile([{ name: 'a', entry: { ...entry, knives: [] } }]),
      /a/,
    ],
    ['with no comparison', comparisonsFile([]), /^The file holds no comparison\.$/],
  ])('or says why not, %s', (_what, given, why) => expect(publishedIn(given)).toMatch(why));
});

test('what was compared is counted, and runs that stayed behind are named', () => {
  expect([0, 1, 2].map((many) => comparedSaid(many))).toEqual([
    'No number is another now.',
    'One number is another now.',
    '2 numbers are others now.',
  ]);
  expect(comparedSaid(0, true)).toMatch(/^No number is another now\. Its runs were too many for the link/);
});
