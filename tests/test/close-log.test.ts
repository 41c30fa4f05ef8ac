import { describe, expect, test } from 'vitest';
import { firstPlan } from '../../src/comparison/first-plan.ts';
import { closedSaid, closeLog, openLogAgain } from '../../src/test/close-log.ts';
import { decodeLink, encodeLink } from '../../src/comparison/link/codec.ts';
import { planOf, sheetOf } from '../../src/topics/plan/values.ts';
import { runsOf } from '../../src/scene/runs.ts';
import { runsWords } from '../../src/topics/runs/words.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { isSheetCode } from '../../src/model/index.ts';
import { keyColumns, sheetRows } from '../../src/test/sheet-rows.ts';
import { validate } from '../../src/comparison/validate.ts';
import { loftRuns } from '../../src/runs/invented.ts';
import { notRecorded } from '../../src/runs/log.ts';
import { aRun } from '../runs/runs.ts';
import { loft } from '../comparison/entries.ts';

const said = (entry: ComparisonEntry): string =>
  (runsWords['runs-entered']?.(sceneOf(entry)) ?? []).join(' ');

/** The loft with a run under every code of its sheet, as a judge would log them. */
function coded(): { entry: ComparisonEntry; key: string[][] } {
  const { key } = sheetRows(sceneOf(loft()));
  const runs = key.map(([order = '', code = ''], index) =>
    aRun({
      // A code is a code in small letters too.
      knife: { called: index === 0 ? code.toLowerCase() : code },
      cuts: 100 + Number(order),
      sharpening: notRecorded,
      batch: notRecorded,
    }),
  );
  return { entry: { ...loft(), runs }, key };
}

test('a sheet in the open needs no key: it names the knives', () => {
  const plan = { ratio: 1.25, batches: 3, blind: false, seed: 1 };
  const { sheet, key } = sheetRows(sceneOf({ ...loft(), plan }));
  expect(key).toEqual([]);
  expect(new Set(sheet.map(([, , knife]) => knife))).toEqual(new Set(loft().knives.map(({ name }) => name)));
});

describe('a blind log that is closed', () => {
  test('gives every coded run the knife of the key, and keeps its code as the sharpening', () => {
    const { entry, key } = coded();
    expect(keyColumns.slice(0, 3)).toEqual(['No.', 'Code', 'Knife']);
    const { sheet } = sheetRows(sceneOf(entry));
    const closed = closeLog(sceneOf(entry));
    expect(validate(closed)).toMatchObject({ ok: true });
    expect(closed.runs?.map(({ knife, sharpening, batch }) => [knife, sharpening, batch])).toEqual(
      key.map(([, code, knife], index) => [knife?.toLowerCase(), code, sheet[index]?.[1]]),
    );
    expect(runsOf(sceneOf(closed)).strangers).toEqual([]);
  });

  test('keeps the sheet it had, although its runs now show another scatter', () => {
    const { entry } = coded();
    const before = sheetOf(sceneOf(entry));
    const closed = closeLog(sceneOf(entry));
    expect(planOf(sceneOf(closed)).from).toBe('the runs');
    expect(sheetOf(sceneOf(closed))).toEqual(before);
  });

  test('leaves alone what has a name, a batch or a sharpening of its own, and codes of no sheet', () => {
    const { entry, key } = coded();
    const [, code = '', knife = ''] = key[0] ?? [];
    const runs = [
      aRun({ knife: 'dunlin', batch: notRecorded }),
      aRun({ knife: { called: code }, batch: 'coil 9', sharpening: 'tenth' }),
      aRun({ knife: { called: 'ZZ88' } }),
    ];
    expect(closeLog(sceneOf({ ...entry, runs })).runs).toEqual([
      runs[0],
      { ...runs[1], knife: knife.toLowerCase() },
      runs[2],
    ]);
  });

  test('can be opened again, which is said from then on, even once it is closed anew', () => {
    const closed = closeLog(sceneOf({ ...loft(), runs: loftRuns() }));
    expect(said(closed)).toMatch(/The log is closed: its runs stay as they are\./);
    expect(said(closed)).not.toMatch(/again/);
    const open = openLogAgain(closed);
    expect(open.plan).not.toHaveProperty('closed');
    expect(said(open)).toMatch(/opened again after its key was seen\. What was .* no longer blind/);
    expect(said(closeLog(sceneOf(open)))).toMatch(
      /opened again after its key was seen, and closed once more/,
    );
  });

  test('is closed in its link and its file as well', () => {
    const again = openLogAgain(closeLog(sceneOf(coded().entry)));
    for (const entry of [closeLog(sceneOf(loft())), again, closeLog(sceneOf(again))]) {
      const read = decodeLink(encodeLink(entry));
      expect(read.ok && read.entry.plan).toEqual(entry.plan);
    }
    const plan = { ratio: 1.25, batches: 3, blind: true, seed: 1, closed: false };
    expect(validate({ ...loft(), plan })).toMatchObject({
      problems: [{ path: 'plan.closed', message: 'closed is true where the log is closed, else left out' }],
    });
  });

  test('closes where there is no sheet too', () => {
    const plan = { ratio: 1.25, batches: 3, blind: true, seed: 1, control: 'Plover' };
    const closed = closeLog(sceneOf({ ...loft(), plan, runs: loftRuns() }));
    expect(closed.plan?.closed).toBe(true);
    expect(closed.runs).toEqual(loftRuns());
    expect(sheetRows(sceneOf(closed))).toEqual({ sheet: [], key: [] });
  });

  test('of a comparison without a plan can be opened as well', () => {
    const { plan: _plan, ...entry } = loft();
    const open = openLogAgain(entry);
    expect(open.plan).toEqual({ ...firstPlan, reopened: true });
    expect(validate(open)).toMatchObject({ ok: true });
  });
});

test('an open log says which codes wait, and takes them for no knife it does not know', () => {
  const { entry, key } = coded();
  expect(said(entry)).toMatch(
    /^The log has .*Runs under \w{4}, .* more codes get their knives when the log is closed/,
  );
  expect(said(entry)).not.toMatch(/No knife of the comparison/);
  const named = { ...entry, plan: { ratio: 1.25, batches: 3, blind: false, seed: 1 } };
  expect(said(named)).toMatch(/No knife of the comparison is called/);
  for (const [, code = ''] of key) expect(isSheetCode(code), code).toBe(true);
  for (const name of ['Dunlin', 'KM4', 'AB23', 'KM80', 'KM423']) expect(isSheetCode(name), name).toBe(false);
});

test('closing says how many runs had codes, where any had', () => {
  const [one, other] = [aRun({ knife: { called: 'AB12' } }), aRun({ knife: 'curlew' })];
  expect(closedSaid([one, other], [{ ...one, knife: 'avocet' }, other])).toContain(
    ' 1 of its runs had codes and have their knives now.',
  );
  expect(closedSaid([other], [other])).toBe('The log is closed and its key open. Undo takes it back.');
  expect(closedSaid()).toBe(closedSaid([other], [other]));
});
