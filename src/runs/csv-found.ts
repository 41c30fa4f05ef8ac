/** What a CSV file looks like: found from its beginning, shown, and confirmed or changed before it is read. */
import Papa from 'papaparse';
import { columnOf, columns } from './columns.ts';
import type { Column } from './columns.ts';
import { lengthUnitOf } from './length-units.ts';
import type { LengthUnit } from './length-units.ts';

export const delimiters = [',', ';', '\t', '|'] as const;
export type Delimiter = (typeof delimiters)[number];

export interface Found {
  delimiter: Delimiter;
  decimal: 'point' | 'comma';
  newline: '\n' | '\r';
  byteOrderMark: boolean;
  /** Some cells stand in quotation marks. */
  quoted: boolean;
  /** What lengths are written in, by the header that names one; mm where none does. */
  lengthUnit: LengthUnit;
  /** Every header of the file in its order, with the column it is read into; null is not read. */
  headers: { header: string; column: Column | null }[];
  /** Columns of a log the file does not have: not recorded in every run. */
  missing: Column[];
  /** What was chosen though it could be otherwise: to be looked at before going on. */
  questions: string[];
}

/** What a reader of the preview set otherwise. `columns` gives, header by header, what each is read into. */
export interface Confirmed {
  delimiter?: Delimiter;
  decimal?: 'point' | 'comma';
  lengthUnit?: LengthUnit;
  columns?: readonly (Column | null)[];
}

/** So much of the beginning is looked at. */
const looked = 64 * 1024;

/**
 * Finds delimiter, decimal sign, line ends, byte order mark and headers.
 *
 * @param beginning The file, or its beginning: at least the header line and some rows, as text.
 * @param confirmed What is known better than found.
 * @throws RangeError where `confirmed.columns` are not as many as the headers, or one stands twice.
 */
export function findCsv(beginning: string, confirmed: Confirmed = {}): Found {
  const byteOrderMark = beginning.startsWith('\uFEFF');
  const text = (byteOrderMark ? beginning.slice(1) : beginning).slice(0, looked);
  const newline = !text.includes('\n') && text.includes('\r') ? '\r' : '\n';
  const rowsBy = (delimiter: Delimiter): string[][] =>
    Papa.parse<string[]>(text, { delimiter, newline, preview: 200, skipEmptyLines: 'greedy' }).data.map(
      (row) => row.map((cell) => cell.trim()),
    );

  const delimiter = confirmed.delimiter ?? bestDelimiter(rowsBy);
  const [names = [], ...rows] = rowsBy(delimiter);
  const questions: string[] = [];
  const headers = headersOf(names, confirmed.columns, questions);
  const taken = headers.map(({ column }) => column);
  for (const { header, column } of headers)
    if (column === null) questions.push(`The column “${header}” is not read.`);
  return {
    delimiter,
    decimal: confirmed.decimal ?? decimalOf(rows, taken, questions),
    newline,
    byteOrderMark,
    quoted: new RegExp(`(^|[\\n\\r${delimiter}])"`).test(text),
    lengthUnit: confirmed.lengthUnit ?? unitOf(headers),
    headers,
    missing: columns.filter((column) => !taken.includes(column)),
    questions,
  };
}

/** Columns that hold lengths of their own. */
const lengths: readonly (Column | null)[] = ['cutMm', 'cycles'];

const unitOf = (headers: Found['headers']): LengthUnit =>
  headers
    .filter(({ column }) => lengths.includes(column))
    .map(({ header }) => lengthUnitOf(header))
    .find((unit) => unit !== null) ?? 'mm';

/** The delimiter by which the header line names most columns; among equals the one that makes most cells. */
function bestDelimiter(rowsBy: (delimiter: Delimiter) => string[][]): Delimiter {
  let best: { delimiter: Delimiter; known: number; cells: number } | undefined;
  for (const delimiter of delimiters) {
    const [names = []] = rowsBy(delimiter);
    const known = names.filter((name) => columnOf(name) !== null).length;
    const cells = names.length;
    if (best === undefined || known > best.known || (known === best.known && cells > best.cells))
      best = { delimiter, known, cells };
  }
  return best?.delimiter ?? ',';
}

function headersOf(
  names: readonly string[],
  chosen: readonly (Column | null)[] | undefined,
  questions: string[],
): Found['headers'] {
  if (chosen !== undefined) {
    if (chosen.length !== names.length)
      throw new RangeError(`columns has ${chosen.length} entries, one for each of ${names.length} headers`);
    const named = chosen.filter((column) => column !== null);
    const twice = named.find((column, i) => named.indexOf(column) < i);
    if (twice !== undefined) throw new RangeError(`columns has ${twice} twice, each column at most once`);
    return names.map((header, i) => ({ header, column: chosen[i] ?? null }));
  }
  const taken = new Set<Column>();
  return names.map((header) => {
    const column = columnOf(header);
    if (column === null) return { header, column };
    if (taken.has(column)) {
      questions.push(`“${header}” and a column before it both mean ${column}; the first is read.`);
      return { header, column: null };
    }
    taken.add(column);
    return { header, column };
  });
}

const numeric: readonly (Column | null)[] = [
  'cutMm',
  'cuts',
  'cycles',
  'series',
  'checkedEvery',
  'startSharpness',
  'angleDeg',
  'order',
];

function decimalOf(
  rows: readonly (readonly string[])[],
  taken: readonly (Column | null)[],
  questions: string[],
): 'point' | 'comma' {
  const numbers = rows
    .flatMap((row) => row.filter((_cell, i) => numeric.includes(taken[i] ?? null)))
    .flatMap((cell) => cell.split(/[\s@]+/));
  const commas = numbers.filter((cell) => /^[+-]?\d+,\d+$/.test(cell));
  const points = numbers.filter((cell) => /^[+-]?\d+\.\d+$/.test(cell));
  const [comma] = commas;
  if (comma === undefined) return 'point';
  if (points.length > 0) {
    questions.push(`Some numbers have a comma (${comma}), some a point (${points[0] ?? ''}).`);
    return points.length >= commas.length ? 'point' : 'comma';
  }
  if (commas.every((cell) => /^[+-]?[1-9]\d{0,2},\d{3}$/.test(cell)))
    questions.push(
      `${comma} is read as ${comma.replace(',', '.')}: the comma could also set thousands apart.`,
    );
  return 'comma';
}
