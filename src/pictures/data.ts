import type { Table } from '../figure-kit/figure.ts';
import { guarded } from '../runs/spreadsheet.ts';

/** The numbers of a figure with what its title block says of them. */
export interface FigureData extends Table {
  figure: string;
  title: string;
  /** Units, scale, reading, source and model, by their heading. */
  about: Readonly<Record<string, string>>;
}

const quoted = (cell: string): string => `"${guarded(cell).replaceAll('"', '""')}"`;

/**
 * A figure's table as CSV: comma, every cell quoted, with a byte order mark so that spreadsheets read its letters
 * right. A cell that a spreadsheet would take for a formula gets an apostrophe in front, as in a log of runs.
 */
export const tableCsv = ({ columns, rows }: Table): string =>
  `\uFEFF${[columns, ...rows].map((row) => `${row.map(quoted).join(',')}\r\n`).join('')}`;

/** The same as JSON, a row an object, with what the numbers are. */
export const tableJson = ({ columns, rows, ...about }: FigureData): string =>
  `${JSON.stringify({ keenfold: 'figure', ...about, columns, rows }, null, 2)}\n`;
