import { describe, expect, test } from 'vitest';
import {
  knifeCalled,
  namedRuns,
  runsOfKnives,
  shownNames,
  withKnives,
} from '../../src/comparison/knife-names.ts';
import { decodeLink, encodeLink } from '../../src/comparison/link/codec.ts';
import { comparisonsFile, readComparisons } from '../../src/comparison/files.ts';
import { validate } from '../../src/comparison/validate.ts';
import { logCsv } from '../../src/runs/csv-out.ts';
import { readCsv } from '../../src/runs/csv.ts';
import { loftRuns } from '../../src/runs/invented.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { withKnife, withoutKnife } from '../../src/elements/fields/knives-changed.ts';
import { aRun } from '../runs/runs.ts';
import { loft, loftWith } from './entries.ts';

const knives = (...names: string[]) => names.map((name, index) => ({ id: `k-${index}`, name }));

describe('knives of one name', () => {
  test('have a number each, and no number that another knife is called by', () => {
    expect([...shownNames(knives('Plover', 'Dunlin', ' Plover', 'Plover (1)')).values()]).toEqual([
      'Plover (2)',
      'Dunlin',
      'Plover (3)',
      'Plover (1)',
    ]);
  });

  test('are told from each other in sentences, links, files and spreadsheets', () => {
    const entry = { ...loftWith('dunlin', { name: 'Plover' }), runs: loftRuns() };
    expect(sceneOf(entry).subject.name).toBe('Plover (2)');
    expect(decodeLink(encodeLink(entry))).toMatchObject({ ok: true, entry });
    const file = readComparisons(comparisonsFile([{ name: 'Two', entry }]));
    expect(file).toMatchObject({ ok: true, comparisons: [{ entry }] });
    const csv = readCsv(logCsv(namedRuns(entry.knives, entry.runs)));
    expect(runsOfKnives(entry.knives, csv.runs)).toEqual(entry.runs);
  });

  test('leave a bare name in a log to neither of them', () => {
    expect(knifeCalled(knives('Plover', 'Plover'), 'Plover')).toEqual({ called: 'Plover' });
    expect(knifeCalled(knives('Plover', 'Plover'), ' Plover (2)')).toBe('k-1');
  });
});

describe('a knife', () => {
  const entry = { ...loft(), runs: [...loftRuns(), { ...aRun(), knife: { called: 'Heron' } }] };
  const [plover] = entry.knives;
  if (!plover) throw new Error('the loft has no knife');

  test('that is renamed keeps its runs', () => {
    expect(withKnife(entry, { ...plover, name: 'Ringed plover' }).runs).toBe(entry.runs);
  });

  test('that takes the name of runs of nobody gets them', () => {
    expect(withKnife(entry, { ...plover, name: 'Heron' }).runs?.at(-1)?.knife).toBe('plover');
  });

  test('that goes leaves its runs under its name, and has them again when it comes back', () => {
    const gone = withoutKnife(entry, 'plover');
    expect(validate(gone)).toMatchObject({ ok: true });
    expect(gone.runs?.[0]?.knife).toEqual({ called: 'Plover' });
    expect(withKnives(gone, entry.knives).runs).toEqual(entry.runs);
  });

  test('that is none of the comparison’s has no runs in it', () => {
    expect(validate({ ...entry, runs: [aRun({ knife: 'heron' })] })).toMatchObject({
      problems: [{ path: 'runs.0.knife' }],
    });
  });
});

test('a document of version 3 gives its runs by name to the knives, and those of twins to neither', () => {
  const link = decodeLink(encodeLink(loft()));
  expect(link.ok).toBe(true);
  const file = (names: string[]) =>
    readComparisons(
      JSON.stringify({
        keenfold: 'comparisons',
        version: 3,
        comparisons: [
          {
            name: 'Old',
            comparison: {
              ...loft(),
              knives: loft().knives.map((knife, index) => ({ ...knife, name: names[index] ?? knife.name })),
              runs: [aRun({ knife: 'Plover' }), aRun({ knife: 'Heron' })],
            },
          },
        ],
      }),
    );
  const knivesIn = (read: ReturnType<typeof file>) =>
    read.ok ? read.comparisons[0]?.entry.runs?.map(({ knife }) => knife) : read.message;
  expect(knivesIn(file([]))).toEqual(['plover', { called: 'Heron' }]);
  expect(knivesIn(file(['Plover', 'Plover']))).toEqual([{ called: 'Plover' }, { called: 'Heron' }]);
});
