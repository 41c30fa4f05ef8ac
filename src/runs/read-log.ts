/** Reading a log of any length: what is counted is all of it, what is held is bounded. */
import { readCsvParts } from './csv.ts';
import type { LineProblem } from './csv.ts';
import type { Found } from './csv-found.ts';
import type { NamedRun } from './log.ts';
import { textPieces } from './text.ts';

/** How many rows a log had so far, and what became of them. */
export interface LogTally {
  /** Rows with anything in them, the header line left out: each is a run or has problems. */
  rows: number;
  runs: number;
  /** Problems found; a row may have several. */
  problems: number;
  blank: number;
}

/** A log read to its end. */
export interface LogRead {
  tally: LogTally;
  /** The first runs, as many as may be held. */
  runs: NamedRun[];
  /** The first problems, as many as may be held. */
  problems: LineProblem[];
  /** Bytes that are no UTF-8 were met, and the whole was read as Windows-1252. */
  oldLetters: boolean;
}

export interface ReadLogOptions {
  mostRuns: number;
  mostProblems: number;
  /** Told after every piece; the share is of the whole file. Reading ends where it gives back false. */
  tell?: (tally: LogTally, share: number) => boolean;
}

/** Pieces small enough that anyone who reads can answer between them. */
const pieceLength = 128 * 1024;

function* textOfPieces(text: string): Generator<string> {
  for (let from = 0; from < text.length; from += pieceLength) yield text.slice(from, from + pieceLength);
}

/**
 * @param source The text, or the file it stands in.
 * @param found As `findCsv` found it in the beginning and a reader confirmed it.
 * @returns Null where `tell` ended it.
 */
export async function readLog(
  source: string | Blob,
  found: Found,
  options: ReadLogOptions,
): Promise<LogRead | null> {
  if (typeof source === 'string') return read(textOfPieces(source), source.length, found, options, false);
  try {
    return await read(textPieces(source, pieceLength), source.size, found, options, false);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    const pieces = textPieces(source, pieceLength, 'windows-1252');
    return read(pieces, source.size, found, options, true);
  }
}

async function read(
  pieces: Iterable<string> | AsyncIterable<string>,
  size: number,
  found: Found,
  { mostRuns, mostProblems, tell }: ReadLogOptions,
  oldLetters: boolean,
): Promise<LogRead | null> {
  const tally: LogTally = { rows: 0, runs: 0, problems: 0, blank: 0 };
  const runs: NamedRun[] = [];
  const problems: LineProblem[] = [];
  const ends = Math.max(1, Math.ceil(size / pieceLength));
  let done = 0;
  for await (const part of readCsvParts(pieces, found)) {
    done += 1;
    tally.rows += part.rows;
    tally.runs += part.runs.length;
    tally.problems += part.problems.length;
    tally.blank += part.blank;
    runs.push(...part.runs.slice(0, Math.max(0, mostRuns - runs.length)));
    problems.push(...part.problems.slice(0, Math.max(0, mostProblems - problems.length)));
    if (tell?.({ ...tally }, Math.min(1, done / ends)) === false) return null;
  }
  return { tally, runs, problems, oldLetters };
}
