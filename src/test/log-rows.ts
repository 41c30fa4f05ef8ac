import { reachOf } from '../runs/lives.ts';
import { notRecorded } from '../runs/log.ts';
import type { Run } from '../runs/log.ts';
import { brief } from '../scene/show.ts';

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
  orOpen(run.batch, text),
  orOpen(run.sharpening, text),
  reachSaid(run),
  orOpen(run.checkedEvery, brief),
  orOpen(run.startSharpness, brief),
  orOpen(run.angleDeg, (deg) => `${brief(deg)}°`),
  orOpen(run.burrChecked, (checked) => (checked ? 'yes' : 'no')),
  orOpen(run.endPoint, text),
  orOpen(run.judge, text),
];
