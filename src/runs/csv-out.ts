/** A log as CSV, safe to open in a spreadsheet. */
import { columns } from './columns.ts';
import type { Column } from './columns.ts';
import type { NamedRun } from './log.ts';
import { guarded } from './spreadsheet.ts';

function cellOf(run: NamedRun, column: Column): string {
  const value = run[column];
  if (value === undefined) return '';
  if (typeof value === 'string') return guarded(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return String(value);
  return value
    .map((entry) => (typeof entry === 'number' ? String(entry) : `${entry.cut}@${entry.sharpness}`))
    .join(' ');
}

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

/**
 * The log as CSV: comma, decimal point, every cell quoted, with a byte order mark so that spreadsheets read its letters
 * right. `readCsv` reads the same runs back.
 *
 * Cells a spreadsheet would take for a formula get an apostrophe in front, which `readCsv` takes away again.
 */
export function logCsv(runs: readonly NamedRun[]): string {
  const rows = [columns, ...runs.map((run) => columns.map((column) => cellOf(run, column)))];
  return `\uFEFF${rows.map((row) => `${row.map(quoted).join(',')}\r\n`).join('')}`;
}
