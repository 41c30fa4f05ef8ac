import { thousands } from '../../scene/show.ts';
import { optionalColumns } from '../../runs/columns.ts';
import type { Column } from '../../runs/columns.ts';
import type { Delimiter, Found } from '../../runs/csv-found.ts';
import type { LengthUnit } from '../../runs/length-units.ts';
import type { LogRead } from '../../runs/read-log.ts';

export const columnWord: Record<Column, string> = {
  knife: 'knife',
  batch: 'batch',
  sharpening: 'sharpening',
  cutMm: 'mm cut',
  cuts: 'cuts',
  cycles: 'mm of each cycle',
  series: 'series of readings',
  censored: 'ended early',
  endPoint: 'end point',
  checkedEvery: 'looked every',
  startSharpness: 'sharpness at start',
  angleDeg: 'angle per side',
  burrChecked: 'burr checked',
  judge: 'judged by',
  order: 'order',
  date: 'date',
  remarks: 'remarks',
  leftOutBecause: 'left out because',
};

const delimiterWord: Record<Delimiter, string> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  '|': 'upright strokes',
};

const lengthWord: Record<LengthUnit, string> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  in: 'inches',
};

export const of = (many: number, one: string): string => `${thousands(many)} ${one}${many === 1 ? '' : 's'}`;

/** What was found in a text, as it will be read. */
export function foundSaid({
  headers,
  delimiter,
  decimal,
  byteOrderMark,
  quoted,
  lengthUnit,
  missing,
}: Found): string {
  const marks = [
    ...(byteOrderMark ? ['with a byte order mark'] : []),
    ...(quoted ? ['with cells in quotation marks'] : []),
    ...(lengthUnit === 'mm' ? [] : [`with lengths in ${lengthWord[lengthUnit]}, kept in millimetres`]),
  ];
  const lacking = missing.filter((column) => !optionalColumns.includes(column));
  return `Read as ${headers.length} columns with ${delimiterWord[delimiter]} between them and a decimal ${[decimal, ...marks].join(', ')}. ${lacking.length > 0 ? `Not in the file, so not recorded: ${lacking.map((column) => columnWord[column]).join(', ')}. ` : ''}Set right what is not, then take the runs.`;
}

/** The problems of a log as they are listed, and how many more there are. */
export const problemLines = ({ tally, problems }: LogRead): string[] => [
  ...problems.map(
    ({ line, path, message }) =>
      `Line ${thousands(line)}: ${path === '' || !(path in columnWord) ? '' : `${columnWord[path as Column]}: `}${message}`,
  ),
  ...(tally.problems > problems.length ? [`… and ${thousands(tally.problems - problems.length)} more.`] : []),
];

/** What came of reading a log. */
export function readSaid({ tally, oldLetters }: LogRead): string {
  const { runs, problems: faults, blank } = tally;
  return `${of(runs, 'run')} read, ${of(faults, 'problem')}${faults > 0 ? ' (listed below; their rows were not taken)' : ''}, ${of(blank, 'blank line')}.${oldLetters ? ' Not all of it is UTF-8, so it was read as Windows-1252: look at its letters.' : ''}`;
}
