/**
 * Text that a spreadsheet would take for a formula gets an apostrophe in front when written and loses it when read.
 * Text that begins with apostrophes before such a sign gets one more, so that what is read equals what was written.
 */
const formula = /^'*[=+\-@\t\r＝＋－＠]/u;

/** @example guarded('=1+1') // → "'=1+1" */
export const guarded = (cell: string): string => (formula.test(cell) ? `'${cell}` : cell);

/** @example unguarded("'=1+1") // → '=1+1' */
export const unguarded = (cell: string): string =>
  cell.startsWith("'") && formula.test(cell) ? cell.slice(1) : cell;
