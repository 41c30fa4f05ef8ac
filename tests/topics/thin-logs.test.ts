import { describe, expect, test } from 'vitest';
import { sceneOf } from '../../src/scene/scene.ts';
import { readRun, showRun } from '../../src/test/run-fields.ts';
import type { RunTexts } from '../../src/test/run-fields.ts';
import { readCsv } from '../../src/runs/csv.ts';
import { validateRun } from '../../src/runs/log.ts';
import type { Run } from '../../src/runs/log.ts';
import { topics } from '../../src/topics/all.ts';
import { aRun } from '../runs/runs.ts';
import { loft } from '../comparison/entries.ts';

/** Logs that say too little, and cells that say nothing: each is explained in words, on every page that shows runs. */
const broken = /NaN|undefined|Infinity|∞|null|\[object/;

const cut = (knife: string, cuts: readonly number[], change: Partial<Run> = {}): Run[] =>
  cuts.map((many, index) => aRun({ knife, cuts: many, sharpening: `${knife} ${index}`, ...change }));

/** Of each log: what the page of runs says, and what the lesson on telling apart says. */
const thin: [string, Run[], RegExp, RegExp][] = [
  ['no run at all', [], /no life of Dunlin and none of Plover yet/, /carries no runs of Dunlin and Plover/],
  [
    'one knife without runs',
    cut('dunlin', [120, 150]),
    /Only Dunlin has runs to compare\. Cut Plover/,
    /Only Dunlin has runs to compare/,
  ],
  [
    'the other without',
    cut('plover', [60, 70]),
    /Only Plover has runs to compare\. Cut Dunlin/,
    /Only Plover has runs to compare/,
  ],
  [
    'one run of each',
    [...cut('dunlin', [120]), ...cut('plover', [60])],
    /fewer than two sharpenings.*One doesn’t show how much lives vary/,
    /Dunlin and Plover have fewer than two sharpenings/,
  ],
  [
    'one run of one of them',
    [...cut('dunlin', [120, 130, 150]), ...cut('plover', [60])],
    /Plover has fewer than two sharpenings/,
    /Plover has fewer than two sharpenings/,
  ],
  [
    'no scatter',
    [...cut('dunlin', [120, 120, 120]), ...cut('plover', [60, 60, 60])],
    /don’t show how much they vary\. All are alike/,
    /don’t show how much they vary/,
  ],
  [
    'no scatter and no difference',
    [...cut('dunlin', [60, 60]), ...cut('plover', [60, 60])],
    /equal numbers are no proof of it/,
    /don’t show how much they vary/,
  ],
  [
    'all between the same looks',
    [...cut('dunlin', [120, 120], { checkedEvery: 25 }), ...cut('plover', [60, 60], { checkedEvery: 25 })],
    /a life between two looks counts as their log midpoint/,
    /can’t be told apart by these runs/,
  ],
  [
    'all runs ended early',
    [...cut('dunlin', [120, 150], { censored: true }), ...cut('plover', [60, 70], { censored: true })],
    /No run of Dunlin reached its end point\. All of them ended early/,
    /No run of Dunlin reached its end point/,
  ],
  [
    'all of one ended early',
    [...cut('dunlin', [120, 150]), ...cut('plover', [60, 70], { censored: true })],
    /No run of Plover reached its end point/,
    /No run of Plover reached its end point/,
  ],
  [
    'a series that stands at a cut of 0',
    cut('dunlin', [120, 150]).concat(nowhere('plover'), nowhere('plover')),
    /Only Dunlin has runs/,
    /Only Dunlin has runs to compare/,
  ],
];

/** A run whose only reading is the one before the first cut. */
function nowhere(knife: string): Run {
  const { cuts: _cuts, ...run } = aRun({ knife, sharpening: 'not recorded' });
  return { ...run, series: [{ cut: 0, sharpness: 90 }] };
}

describe.each(thin)('a log with %s', (_name, runs, ofRuns, ofDifferent) => {
  // A visitor's own comparison: an invented one falls back on the loft's runs.
  const { invented: _demo, ...own } = loft();
  const scene = sceneOf({ ...own, ...(runs.length > 0 ? { runs } : {}) });
  const said = (topic: string, of: string): string =>
    (topics[topic]?.words?.[of]?.(scene) ?? []).filter(Boolean).join(' ');

  test('is explained, in the page of runs and in the lesson', () => {
    expect(said('runs', 'runs-verdict')).toMatch(ofRuns);
    expect(said('are-they-different', 'different')).toMatch(ofDifferent);
  });

  test('leaves no broken word or number anywhere', () => {
    for (const name of ['runs', 'are-they-different', 'plan', 'check-prediction', 'end-points', 'suspects']) {
      const { words = {}, numbers = {}, worked = {} } = topics[name] ?? {};
      for (const [of, say] of Object.entries(words)) {
        for (const sentence of say(scene)) {
          expect(sentence, of).not.toMatch(broken);
          expect(sentence === '' || /[.?:!]$/.test(sentence), `${of}: ${sentence}`).toBe(true);
        }
      }
      for (const [of, number] of Object.entries(numbers))
        expect(JSON.stringify(number(scene)), of).not.toMatch(/NaN|undefined|Infinity/);
      for (const [of, work] of Object.entries(worked))
        expect(JSON.stringify(work(scene)), of).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

/** Cells of a log that are no length cut. */
const cells: [string, string, RegExp][] = [
  ['zero', '0', /^the number of cuts 0 is not above 0 and up to/],
  ['negative', '-12', /^the number of cuts -12 is not above 0 and up to/],
  ['a word', 'many', /^the number of cuts “many” is not a number/],
  ['not a number', 'NaN', /^the number of cuts “NaN” is not a number/],
  ['without end', 'Infinity', /^the number of cuts “Infinity” is not a number/],
  ['beyond any number', '1e999', /^the number of cuts “1e999” is not a number/],
];

describe.each(cells)('a cut that is %s', (_name, cell, message) => {
  test('is refused in words, at its line of the file and at its field', () => {
    const read = readCsv(`knife,lot,cuts\nPlover,a,60\nPlover,a,${cell}\n`);
    expect(read.runs).toHaveLength(1);
    expect(read.problems).toMatchObject([{ line: 3, path: 'cuts' }]);
    expect(read.problems[0]?.message).toMatch(message);
    const typed = readRun({ ...showRun(aRun()), reach: cell } as RunTexts);
    expect(typed).toMatchObject({ ok: false, problems: [{ field: 'reach' }] });
    // What was typed may be quoted; nothing else may be broken.
    const described = typed.ok ? [] : typed.problems.map((problem) => problem.message);
    for (const text of described) expect(text.replaceAll(cell, '')).not.toMatch(broken);
  });
});

test.each([
  ['a cell that is empty', 'knife,cuts\nPlover,\n', /nowhere how far it went/],
  ['no column for it', 'knife,lot\nPlover,a\n', /nowhere how far it went/],
  ['cycles that cut nothing', 'knife,cycles\nPlover,0 0 0\n', /no cycle cut anything/],
  [
    'cuts of a series that run back',
    'knife,series\nPlover,0@90 40@60 20@50\n',
    /do not grow from reading to reading/,
  ],
  ['a series below 0', 'knife,series\nPlover,-5@90\n', /the cut -5 of a reading is below 0/],
])('%s is a problem of its line, in words', (_name, text, message) => {
  const { problems, runs } = readCsv(text);
  expect(runs).toHaveLength(0);
  expect(problems[0]?.message).toMatch(message);
  for (const problem of problems) expect(problem.message).not.toMatch(broken);
});

test.each([0, -12, NaN, Infinity, -Infinity])(
  'a run of %f cuts in a file or link is refused in words',
  (cuts) => {
    const checked = validateRun(aRun({ cuts }));
    expect(checked).toMatchObject({ ok: false, problems: [{ path: 'cuts' }] });
    const message = checked.ok ? '' : (checked.problems[0]?.message ?? '');
    expect(message).toMatch(/^the number of cuts .* is not (above 0 and up to 1000000000|a number)$/);
    expect(message).not.toMatch(broken);
  },
);
