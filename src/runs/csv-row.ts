/** One row of cells as a run. */
import { optionalColumns } from './columns.ts';
import type { Column } from './columns.ts';
import type { Found } from './csv-found.ts';
import { mmPer } from './length-units.ts';
import { notRecorded, validateRun } from './log.ts';
import type { ValidatedRun } from './log.ts';
import { unguarded } from './spreadsheet.ts';

const yes = /^(yes|y|true|1|x)$/i;
const no = /^(no|n|false|0)$/i;

/** A number written with the file's decimal sign; what is none stays text, so that the message can quote it. */
function number(cell: string, decimal: Found['decimal']): number | string {
  const sign = decimal === 'comma' ? ',' : '.';
  const shape = decimal === 'comma' ? /^[+-]?\d+(,\d+)?(e[+-]?\d+)?$/i : /^[+-]?\d+(\.\d+)?(e[+-]?\d+)?$/i;
  const value = shape.test(cell) ? Number(cell.replace(sign, '.')) : NaN;
  // One with more digits than a number has is quoted as it stands.
  return Number.isFinite(value) ? value : cell;
}

const list = (cell: string): string[] => cell.split(/\s+/);

/** The depths of a card test, mm; what is no number stays text, and a run's check refuses it. */
export const readCycles = (cell: string, decimal: Found['decimal']): (number | string)[] =>
  list(cell).map((depth) => number(depth, decimal));

/** Readings `cut@sharpness`, a space between; as for `readCycles`. */
export const readSeries = (cell: string, decimal: Found['decimal']) =>
  list(cell).map((reading) => {
    const [cut = '', sharpness = '', ...more] = reading.split('@');
    return more.length > 0 ? reading : { cut: number(cut, decimal), sharpness: number(sharpness, decimal) };
  });

type Read = (cell: string, decimal: Found['decimal']) => unknown;
const text: Read = (cell) => unguarded(cell);
const recorded: Read = (cell, decimal) =>
  cell.toLowerCase() === notRecorded ? notRecorded : number(cell, decimal);

const readers: Record<Column, Read> = {
  knife: text,
  batch: text,
  sharpening: text,
  endPoint: text,
  judge: text,
  remarks: text,
  leftOutBecause: text,
  date: text,
  order: number,
  cutMm: number,
  cuts: number,
  cycles: readCycles,
  series: readSeries,
  checkedEvery: recorded,
  startSharpness: recorded,
  angleDeg: recorded,
  burrChecked: (cell) => (yes.test(cell) ? true : no.test(cell) ? false : cell.toLowerCase()),
  // A run that did not end early says so by leaving the column out.
  censored: (cell) => (yes.test(cell) ? true : no.test(cell) ? undefined : cell),
};

/**
 * A row of cells as a run, or what is wrong with it.
 *
 * Where a number is expected, one with the other decimal sign is refused, never guessed at.
 */
export function runOf(
  cells: readonly string[],
  found: Pick<Found, 'headers' | 'decimal' | 'missing' | 'lengthUnit'>,
): ValidatedRun {
  const width = found.headers.length;
  if (cells.length < width || cells.slice(width).some((cell) => cell.trim() !== '')) {
    const message = `the row has ${cells.length} cells, the header line ${width}`;
    return { ok: false, problems: [{ path: '', message }] };
  }
  const run: Record<string, unknown> = {};
  for (const column of found.missing) if (!optionalColumns.includes(column)) run[column] = notRecorded;
  found.headers.forEach(({ column }, i) => {
    if (column === null) return;
    const cell = (cells[i] ?? '').trim();
    const value = cell === '' ? undefined : readers[column](cell, found.decimal);
    if (value !== undefined) run[column] = value;
    else if (!optionalColumns.includes(column)) run[column] = notRecorded;
  });
  if (run['knife'] === notRecorded)
    return { ok: false, problems: [{ path: 'knife', message: 'the knife is not named' }] };
  return validateRun(
    found.lengthUnit === 'mm' || run['cuts'] !== undefined ? run : toMm(run, mmPer[found.lengthUnit]),
  );
}

/** Everything of a run that counts lengths, in mm; a run counted in cuts has none. */
function toMm(run: Record<string, unknown>, factor: number): Record<string, unknown> {
  // Fifteen digits, so that 1.1 in is 27.94 mm and not 27.939999999999998.
  const scaled = (value: unknown): unknown =>
    typeof value === 'number' ? Number((value * factor).toPrecision(15)) : value;
  const { cutMm, checkedEvery, cycles, series } = run;
  return {
    ...run,
    ...(cutMm === undefined ? {} : { cutMm: scaled(cutMm) }),
    checkedEvery: scaled(checkedEvery),
    ...(Array.isArray(cycles) ? { cycles: cycles.map(scaled) } : {}),
    ...(Array.isArray(series)
      ? {
          series: (series as unknown[]).map((reading) =>
            typeof reading === 'object' && reading !== null && 'cut' in reading
              ? { ...reading, cut: scaled(reading.cut) }
              : reading,
          ),
        }
      : {}),
  };
}
