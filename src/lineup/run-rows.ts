import { reachOf } from '../runs/lives.ts';
import { notRecorded } from '../runs/log.ts';
import type { Run } from '../runs/log.ts';
import { planOf, sheetOf } from './plan.ts';
import type { Scene } from './scene.ts';
import { brief } from './show.ts';

/** A log as a table. */
export const logColumns = [
  'Knife',
  'Lot',
  'Sharpening',
  'Until the stop',
  'Looked every',
  'Sharpness at start',
  'Angle per side',
  'Burr checked',
  'Stop',
  'Judged by',
] as const;

const open = '–';

const orOpen = <T>(value: T | typeof notRecorded, show: (value: T) => string): string =>
  value === notRecorded ? open : show(value as T);

const text = (value: string): string => value;

/** How far a run went, with its unit. */
function reachSaid(run: Run): string {
  const { reach, unit } = reachOf(run);
  return `${run.censored ? 'over ' : ''}${brief(reach)} ${unit}${run.censored ? ', ended early' : ''}`;
}

export const logCells = (run: Run): string[] => [
  run.knife,
  orOpen(run.lot, text),
  orOpen(run.sharpening, text),
  reachSaid(run),
  orOpen(run.checkedEvery, brief),
  orOpen(run.startSharpness, brief),
  orOpen(run.angleDeg, (deg) => `${brief(deg)}°`),
  orOpen(run.burrChecked, (checked) => (checked ? 'yes' : 'no')),
  orOpen(run.stop, text),
  orOpen(run.judge, text),
];

/** Columns of the sheet: what is set, then what is written in by hand. */
export const sheetColumns = [
  'No.',
  'Lot',
  'Knife',
  'Angle as sharpened',
  'Burr off?',
  'Sharpness at start',
  'Until the stop',
  'Ended early?',
  'Judged by',
  'Remarks',
] as const;

/** How many of them are set. */
export const sheetSet = 3;

export const keyColumns = ['No.', 'Code', 'Knife', 'Sharpening'] as const;

/** The rows of the sheet and of its key; none where there is no sheet. */
export function sheetRows(scene: Scene): { sheet: string[][]; key: string[][] } {
  const held = sheetOf(scene);
  if (!held.ok) return { sheet: [], key: [] };
  const { rows, key } = held.sheet;
  return {
    sheet: rows.map(({ order, lot, label }) => [String(order), lot, label]),
    key: planOf(scene).blind
      ? key.map(({ order, label, knife, sharpening }) => [String(order), label, knife, String(sharpening)])
      : [],
  };
}
