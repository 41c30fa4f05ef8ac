import { expect, test } from 'vitest';
import { logCells, logColumns } from '../../src/test/log-rows.ts';
import { notRecorded } from '../../src/runs/log.ts';
import type { Run } from '../../src/runs/log.ts';
import { loft } from '../comparison/entries.ts';
import { aRun } from '../runs/runs.ts';

test.each<[(typeof logColumns)[number], Partial<Run>, string]>([
  ['Knife', {}, 'Plover'],
  ['Batch', { batch: 'coil 3' }, 'coil 3'],
  ['Batch', { batch: notRecorded }, '–'],
  ['Sharpening', { sharpening: notRecorded }, '–'],
  ['Until the end point', { cuts: 120 }, '120 cuts'],
  ['Until the end point', { cuts: 120, censored: true }, 'over 120 cuts, ended early'],
  ['Looked every', { checkedEvery: 25 }, '25'],
  ['Sharpness at start', { startSharpness: 92.5 }, '92.5'],
  ['Sharpness at start', { startSharpness: notRecorded }, '–'],
  ['Angle per side', { angleDeg: 20 }, '20°'],
  ['Burr checked', { burrChecked: true }, 'yes'],
  ['Burr checked', { burrChecked: false }, 'no'],
  ['Burr checked', { burrChecked: notRecorded }, '–'],
  ['End point', { endPoint: 'a strand tears' }, 'a strand tears'],
  ['Judged by', { judge: 'the rigger' }, 'the rigger'],
  ['Order', { order: 12 }, '12'],
  ['Order', {}, '–'],
  ['Date', { date: '2026-11-25' }, '2026-11-25'],
  ['Remarks', { remarks: 'a wet coil' }, 'a wet coil'],
  ['Left out because', { leftOutBecause: 'it slipped' }, 'it slipped'],
])('the column “%s” of a run with %o reads %s', (column, change, text) => {
  const cells = logCells(aRun(change), loft().knives);
  expect(cells).toHaveLength(logColumns.length);
  expect(cells[logColumns.indexOf(column)]).toBe(text);
});

test('a run measured by what was cut is in mm', () => {
  const { cuts: _cuts, ...run } = aRun();
  expect(logCells({ ...run, cutMm: 640 }, [])[3]).toBe('640 mm');
});
