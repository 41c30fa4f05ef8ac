/** Reading a log from CSV, whole or in parts: every row ends as a run, as a problem or as a blank, none is dropped. */
import Papa from 'papaparse';
import { findCsv } from './csv-found.ts';
import type { Confirmed, Found } from './csv-found.ts';
import { runOf } from './csv-row.ts';
import type { NamedRun } from './log.ts';

/** What is wrong with a row of the file. */
export interface LineProblem {
  /** Counted from 1, the header line included; of a row over several lines, the first. */
  line: number;
  /** The column, '' for the row as a whole. */
  path: string;
  message: string;
}

/** Part of a log as read. Over all parts, runs, lines with problems and blank rows make up the file. */
export interface CsvPart {
  runs: NamedRun[];
  /** The line each run stands on. */
  lines: number[];
  problems: LineProblem[];
  /** Rows with text, the header line left out: each gave a run or problems. */
  rows: number;
  /** Rows without any text. */
  blank: number;
  /** Characters of the file read so far, the byte order mark left out. */
  readTo: number;
}

/** A whole log as read, with what to show for confirmation. */
export interface CsvLog extends CsvPart {
  found: Found;
  /** The first rows as they stand in the file, the header line left out. */
  preview: string[][];
}

const partLength = 256 * 1024;
const previewed = 10;
/** So many characters without the end of a row: a quotation mark was opened and never closed. */
const longestRow = 1024 * 1024;
const neverClosed = 'a quotation mark is opened here and never closed; nothing beyond it was read';

/**
 * Reads a whole log at once; what is found is to be shown, and may be changed by `confirmed`.
 *
 * @param text The file as text.
 * @throws RangeError for columns that do not fit the headers.
 */
export function readCsv(text: string, confirmed: Confirmed = {}): CsvLog {
  const found = findCsv(text, confirmed);
  const preview: string[][] = [];
  const reader = createReader(found, (cells) => {
    if (preview.length < previewed) preview.push(cells);
  });
  const parts = [...pieces(text)].map((piece) => reader.push(piece));
  parts.push(reader.end());
  return {
    found,
    preview,
    runs: parts.flatMap(({ runs }) => runs),
    lines: parts.flatMap(({ lines }) => lines),
    problems: parts.flatMap(({ problems }) => problems),
    rows: parts.reduce((sum, { rows }) => sum + rows, 0),
    blank: parts.reduce((sum, { blank }) => sum + blank, 0),
    readTo: parts.at(-1)?.readTo ?? 0,
  };
}

/**
 * Reads a log part by part, for files too long to read at once. Between parts other work gets its turn, so that anyone who
 * reads can say how far it is, and stop by leaving the loop.
 *
 * @param source The file as text, or its pieces in order, cut anywhere.
 * @param found As `findCsv` found it in the beginning and a reader confirmed it.
 */
export async function* readCsvParts(
  source: string | Iterable<string> | AsyncIterable<string>,
  found: Found,
): AsyncGenerator<CsvPart, void, undefined> {
  const reader = createReader(found);
  for await (const piece of typeof source === 'string' ? pieces(source) : source) {
    yield reader.push(piece);
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
  yield reader.end();
}

function* pieces(text: string): Generator<string> {
  for (let from = 0; from < text.length; from += partLength) yield text.slice(from, from + partLength);
}

interface Reader {
  /** Reads what a piece completes. */
  push(piece: string): CsvPart;
  /** Reads what is left. */
  end(): CsvPart;
}

/** Where a reader is in its file. */
interface Place {
  found: Found;
  /** What is read but not yet complete. */
  rest: string;
  line: number;
  readTo: number;
  /** The header line is behind it. */
  headed: boolean;
}

const emptyPart = (readTo: number): CsvPart => ({
  runs: [],
  lines: [],
  problems: [],
  rows: 0,
  blank: 0,
  readTo,
});

/** Takes a file piece by piece and hands back what each piece completed. */
function createReader(found: Found, see: (cells: string[]) => void = () => undefined): Reader {
  const place: Place = { found, rest: '', line: 1, readTo: 0, headed: false };
  let begun = false;
  let stopped = false;
  return {
    push(piece) {
      if (!stopped) place.rest += begun ? piece : piece.replace(/^\uFEFF/, '');
      begun ||= piece !== '';
      const part = readRows(place, false, see);
      if (place.rest.length > longestRow) {
        part.rows += 1;
        part.problems.push({ line: place.line, path: '', message: neverClosed });
        stopped = true;
        place.rest = '';
      }
      return part;
    },
    end: () => (place.rest === '' ? emptyPart(place.readTo) : readRows(place, true, see)),
  };
}

/** Reads the rows `rest` holds; the last one, which has no end yet, only where the file ends there. */
function readRows(place: Place, ended: boolean, see: (cells: string[]) => void): CsvPart {
  const part = emptyPart(place.readTo);
  const text = place.rest;
  const { delimiter, newline } = place.found;
  let from = 0;
  const parser = new Papa.Parser({
    delimiter,
    newline,
    step: ({ data, errors, meta }) => {
      const cells = (data as unknown as string[][])[0] ?? [];
      // Of a line end of two characters the first is left over.
      const last = cells.at(-1);
      if (last?.endsWith('\r')) cells[cells.length - 1] = last.slice(0, -1);
      readRow(place, cells, troubleOf(errors[0]?.code), part, see);
      for (let at = from; at < meta.cursor; at += 1) if (text[at] === newline) place.line += 1;
      from = meta.cursor;
    },
  });
  parser.parse(text, 0, !ended);
  place.rest = text.slice(from);
  place.readTo += from;
  part.readTo = place.readTo;
  return part;
}

/** What the parser's code for a fault of the quotation marks means. */
function troubleOf(code: string | undefined): string | undefined {
  if (code === undefined) return undefined;
  return code === 'MissingQuotes'
    ? neverClosed
    : 'a quotation mark stands within a quoted cell; write it twice';
}

/** Adds a row to a part: as a run, as a problem, or as one that is passed over. */
function readRow(
  place: Place,
  cells: string[],
  trouble: string | undefined,
  part: CsvPart,
  see: (cells: string[]) => void,
): void {
  if (cells.every((cell) => cell.trim() === '')) {
    part.blank += 1;
    return;
  }
  if (!place.headed) {
    place.headed = true;
    return;
  }
  see(cells);
  part.rows += 1;
  const { line } = place;
  if (trouble !== undefined) {
    part.problems.push({ line, path: '', message: trouble });
    return;
  }
  const read = runOf(cells, place.found);
  if (read.ok) {
    part.runs.push(read.run);
    part.lines.push(line);
  } else part.problems.push(...read.problems.map((problem) => ({ line, ...problem })));
}
