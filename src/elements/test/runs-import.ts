import { readComparisons } from '../../comparison/files.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { thousands } from '../../scene/show.ts';
import { findCsv } from '../../runs/csv-found.ts';
import type { Confirmed, Found } from '../../runs/csv-found.ts';
import { readCsv } from '../../runs/csv.ts';
import type { NamedRun, Run } from '../../runs/log.ts';
import type { LogRead } from '../../runs/read-log.ts';
import { textOf } from '../../runs/text.ts';
import { ImportParts } from './import-parts.ts';
import { problemLines, readSaid } from './import-words.ts';
import { readLongLog } from './read-long-log.ts';

/** What a text becomes: runs or a whole comparison; both say why they were refused, or ''. */
export interface Taking {
  takeRuns(before: readonly Run[], runs: readonly NamedRun[]): string;
  takeComparison(entry: ComparisonEntry): string;
}

/** As many runs as a comparison carries. */
const mostRuns = 2000;
const shownProblems = 100;
/** A log has a dozen columns; a text of more than this is none, and too wide to be shown. */
const mostColumns = 100;
/** What is looked at before anything is taken. */
const beginning = 64 * 1024;

const isFile = (text: string): boolean => /^\uFEFF?\s*\{/.test(text);

/** The part of the page that reads texts: what is found is shown, and taken only when somebody says so. */
export class Import {
  #parts: ImportParts;
  #taking: Taking;
  #source: string | Blob = '';
  /** What is looked at of it before anything is taken. */
  #start = '';
  /** What is said of the source before what was found in it. */
  #note = '';
  #found: Found | undefined;
  #cancelled = false;

  /** @param root the element that holds the parts of the page the import writes in */
  constructor(root: HTMLElement, taking: Taking) {
    this.#parts = new ImportParts(root);
    this.#taking = taking;
  }

  pasted(): void {
    this.text(this.#parts.pasted?.value ?? '');
  }

  /** @param said what is to be said of it first */
  text(text: string, said = ''): void {
    if (isFile(text)) {
      this.#clear();
      this.#openComparison(text);
    } else this.#begin(text, text, said);
  }

  async file(file: File): Promise<void> {
    try {
      await this.#open(file);
    } catch {
      this.#parts.problem(
        `${file.name} could not be read. It may have been moved or changed meanwhile; choose it again.`,
      );
    }
  }

  /** A choice of what was found was changed. */
  changed(): void {
    const found = this.#found;
    if (!found) return;
    const { delimiter, decimal, lengthUnit, columns } = this.#parts.chosen();
    this.#parts.problem('');
    if (delimiter !== undefined && delimiter !== found.delimiter) {
      this.#look({ delimiter });
      return;
    }
    try {
      // Which sign is the decimal one is looked for anew with the columns, unless it was set by hand.
      this.#look({
        delimiter: found.delimiter,
        columns,
        ...(decimal === found.decimal ? {} : { decimal }),
        ...(lengthUnit === undefined || lengthUnit === found.lengthUnit ? {} : { lengthUnit }),
      });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.#parts.problem('Two columns cannot be the same. Set one of them to “not read”.');
    }
  }

  /** @param before the runs that those of the text join */
  async take(before: readonly Run[]): Promise<void> {
    // Two columns of one meaning stand there as they were chosen, to be set right first.
    if (!this.#found || this.#parts.hasProblem()) return;
    const reading = this.#found;
    this.#cancelled = false;
    this.#parts.hide('found', true);
    this.#parts.hide('in-progress', false);
    const read = await this.#readWhole(reading);
    this.#parts.hide('in-progress', true);
    if (this.#found !== reading) return;
    if (read === null || this.#cancelled || typeof read === 'string') {
      const why = typeof read === 'string' ? `It could not be read to its end (${read}).` : 'Stopped.';
      this.#leave(`${why} Nothing was taken.`);
    } else this.#takeRead(read, before);
  }

  drop(): void {
    this.#parts.hide('found', true);
    this.#source = this.#start = '';
    this.#found = undefined;
    this.#parts.write('import-said', 'Nothing was taken.');
  }

  cancel(): void {
    this.#cancelled = true;
  }

  async #open(file: File): Promise<void> {
    const head = new Uint8Array(await file.slice(0, beginning).arrayBuffer());
    const { text, encoding } = textOf(head, file.size > beginning);
    if (isFile(text)) {
      this.#clear();
      this.#openComparison(textOf(new Uint8Array(await file.arrayBuffer())).text);
    } else
      this.#begin(
        file,
        text,
        `${file.name}. ${encoding === 'windows-1252' ? 'It is no UTF-8, so it is read as Windows-1252: look at its letters. ' : ''}`,
      );
  }

  /** Looks at a text, or at the beginning of a file. */
  #begin(whole: string | Blob, text: string, said: string): void {
    this.#clear();
    this.#source = whole;
    this.#start = text.slice(0, beginning);
    this.#note = said;
    if (text.trim() === '') {
      this.#parts.problem('There is nothing to read. Paste cells with their header line, or choose a file.');
      return;
    }
    const first = findCsv(this.#start);
    if (first.headers.every(({ column }) => column === null))
      this.#parts.problem(
        'No column is known by its name. If the first line is the header, say below what each column is.',
      );
    this.#look({});
    this.#parts.focus('found-title');
  }

  /** Looks at the beginning, as it was found or is confirmed. */
  #look(confirmed: Confirmed): void {
    // A row cut in two at the end of the beginning is none of the preview's.
    const { found, preview } = readCsv(this.#start, confirmed);
    const many = found.headers.length;
    if (many > mostColumns) {
      this.#parts.problem(
        `The first line makes ${thousands(many)} columns, more than any log has. Is it a table, one run a line?`,
      );
      return;
    }
    this.#found = found;
    this.#parts.showFound(found, preview, this.#note);
  }

  /** Leaves whatever was looked at or read before. */
  #clear(): void {
    this.#cancelled = true;
    this.#found = undefined;
    this.#parts.write('import-said', '');
    this.#parts.items('line-problems', []);
    this.#parts.hide('found', true);
    this.#parts.problem('');
  }

  #openComparison(text: string): void {
    const read = readComparisons(text);
    if (!read.ok) {
      this.#parts.problem(read.message);
      return;
    }
    const [first, ...others] = read.comparisons;
    if (!first) {
      this.#parts.problem(read.problems.join(' ') || 'The file holds no comparison.');
      return;
    }
    const refused = this.#taking.takeComparison(first.entry);
    this.#parts.write(
      'import-said',
      refused ||
        `“${first.name}” is open, with ${first.entry.runs?.length ?? 0} runs.${others.length > 0 ? ` The file holds ${others.length} more comparisons; the page Saved takes them all.` : ''}`,
    );
    this.#parts.items('line-problems', read.problems);
  }

  /** The whole log; null where it was cancelled, and why where it could not be read. */
  async #readWhole(found: Found): Promise<LogRead | string | null> {
    const show = this.#parts.progress();
    return readLongLog(this.#source, found, {
      mostRuns,
      mostProblems: shownProblems,
      tell: (tally, share) => {
        show(tally, share);
        return !this.#cancelled;
      },
    }).catch((error: unknown) => (error instanceof Error ? error.message : String(error)));
  }

  #takeRead(read: LogRead, before: readonly Run[]): void {
    this.#parts.items('line-problems', problemLines(read));
    const said = readSaid(read);
    const many = read.tally.runs;
    if (many + before.length > mostRuns) {
      this.#leave(
        `${said} Nothing was taken: a comparison carries at most ${thousands(mostRuns)} runs. Bring one line a sharpening, not one a cut, or take the file in parts.`,
      );
      return;
    }
    if (many === 0) {
      this.#leave(`${said} There was nothing to take.`);
      return;
    }
    const refused = this.#taking.takeRuns(before, read.runs);
    this.#parts.write(
      'import-said',
      refused === '' ? `${said} They are in the log. Undo takes them out again.` : refused,
    );
    if (refused === '' && this.#parts.pasted) this.#parts.pasted.value = '';
  }

  /** Takes nothing, says why, and shows what was found again. */
  #leave(said: string): void {
    this.#parts.hide('found', false);
    this.#parts.write('import-said', said);
  }
}
