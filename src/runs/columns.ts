/** The columns of a log as CSV, and the plain names people give them. */
import { inMm } from './length-units.ts';
import type { NamedRun } from './log.ts';

export type Column = keyof NamedRun;

/** The names people give to every column of a log, in the order the columns are written. */
const plainNames: Record<Column, string[]> = {
  knife: ['blade', 'knife name', 'knife id', 'name'],
  batch: ['lot', 'coil', 'roll', 'stock', 'lot of stock', 'stock lot', 'lot number', 'block'],
  sharpening: ['sharpening number', 'sharpening no', 'edge number', 'edge no'],
  cutMm: ['length mm', 'mm', 'mm cut', 'cut length mm', 'material cut mm', 'total mm'],
  cuts: ['number of cuts', 'cut count', 'count', 'cuts made', 'strokes'],
  cycles: ['cycles mm', 'cut per cycle', 'depth per cycle', 'depths mm'],
  series: ['readings', 'sharpness series', 'sharpness readings', 'forces', 'force readings'],
  censored: ['ended early', 'stopped early', 'not blunt', 'right censored', 'unfinished'],
  endPoint: ['stop', 'stop criterion', 'stopped at', 'end', 'ended by'],
  checkedEvery: ['check every', 'checked every n cuts', 'check interval', 'interval'],
  startSharpness: ['sharpness at start', 'starting sharpness', 'initial sharpness', 'start'],
  angleDeg: ['angle', 'edge angle', 'edge angle per side', 'angle per side', 'degrees per side'],
  burrChecked: ['burr', 'burr removed', 'deburred', 'checked for burr'],
  judge: ['judged by', 'who judged', 'tester', 'operator', 'who'],
  order: ['run', 'run number', 'run no', 'no', 'order of work', 'sequence'],
  date: ['day', 'cut on', 'date cut'],
  remarks: ['remark', 'note', 'notes', 'comment', 'comments'],
  leftOutBecause: ['left out', 'excluded', 'excluded because', 'reason left out', 'does not count because'],
};

/** Every column of a log, in the order they are written. */
export const columns = Object.keys(plainNames) as readonly Column[];

/** Letters and digits only, words apart: `Cut (mm)`, `cut_mm` and `cutMm` are one. */
const plain = (header: string): string =>
  header
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

const byName = new Map(
  columns.flatMap((column) => [column, ...plainNames[column]].map((name) => [plain(name), column] as const)),
);

/**
 * The column a header means, null where it means none. An included angle means none: it is not halved unasked. A length
 * may stand in another unit than mm, which the header then names.
 */
export const columnOf = (header: string): Column | null =>
  byName.get(plain(header)) ?? byName.get(plain(inMm(header))) ?? null;

/** Columns a run may do without; the others read “not recorded” where a cell is empty. */
export const optionalColumns: readonly Column[] = [
  'cutMm',
  'cuts',
  'cycles',
  'series',
  'censored',
  'order',
  'date',
  'remarks',
  'leftOutBecause',
];
