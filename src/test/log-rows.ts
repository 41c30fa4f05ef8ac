import type { KnifeEntry } from '../comparison/entry.ts';
import { nameOfRun } from '../comparison/knife-names.ts';
import { reachOf } from '../runs/lives.ts';
import { notRecorded } from '../runs/log.ts';
import type { Run } from '../runs/log.ts';
import { brief } from '../scene/show.ts';

/** A log as a table. */
export const logColumns = [
  'Knife',
  'Batch',
  'Sharpening',
  'Until the end point',
  'Looked every',
  'Sharpness at start',
  'Angle per side',
  'Burr checked',
  'End point',
  'Judged by',
  'Order',
  'Date',
  'Remarks',
  'Left out because',
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

/** @param knives those of the comparison, for their names */
export const logCells = (run: Run, knives: readonly KnifeEntry[]): string[] => [
  nameOfRun(knives, run.knife),
  orOpen(run.batch, text),
  orOpen(run.sharpening, text),
  reachSaid(run),
  orOpen(run.checkedEvery, brief),
  orOpen(run.startSharpness, brief),
  orOpen(run.angleDeg, (deg) => `${brief(deg)}°`),
  orOpen(run.burrChecked, (checked) => (checked ? 'yes' : 'no')),
  orOpen(run.endPoint, text),
  orOpen(run.judge, text),
  run.order === undefined ? open : brief(run.order),
  run.date ?? open,
  run.remarks ?? open,
  run.leftOutBecause ?? open,
];
