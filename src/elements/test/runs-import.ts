import { readComparisons } from '../../comparison/files.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { thousands, whole } from '../../scene/show.ts';
import { columns } from '../../runs/columns.ts';
import type { Column } from '../../runs/columns.ts';
import { findCsv } from '../../runs/csv-found.ts';
import type { Confirmed, Delimiter, Found } from '../../runs/csv-found.ts';
import { readCsv } from '../../runs/csv.ts';
import type { LengthUnit } from '../../runs/length-units.ts';
import type { Run } from '../../runs/log.ts';
import type { LogRead, LogTally } from '../../runs/read-log.ts';
import { textOf } from '../../runs/text.ts';
import { readLongLog } from './read-long-log.ts';

/** What a text becomes: runs or a whole comparison; both say why they were refused, or ''. */
export interface Taking {
  takeRuns(runs: Run[]): string;
  takeComparison(entry: ComparisonEntry): string;
}

/** The part of the page that reads texts: what is found is shown, and taken only when somebody says so. */
export interface Import {
  pasted(): void;
  file(file: File): Promise<void>;
  text(text: string, said?: string): void;
  /** A choice of what was found was changed. */
  changed(): void;
  take(before: readonly Run[]): Promise<void>;
  drop(): void;
  cancel(): void;
}

/** As many runs as a comparison carries. */
const mostRuns = 2000;
const shownProblems = 100;
/** A log has a dozen columns; a text of more than this is none, and too wide to be shown. */
const mostColumns = 100;
/** What is looked at before anything is taken. */
const beginning = 64 * 1024;
/** Progress is said aloud no more often than this. */
const tellMs = 3000;

const columnWord: Record<Column, string> = {
  knife: 'knife',
  batch: 'lot',
  sharpening: 'sharpening',
  cutMm: 'mm cut',
  cuts: 'cuts',
  cycles: 'mm of each cycle',
  series: 'series of readings',
  censored: 'ended early',
  endPoint: 'stop',
  checkedEvery: 'looked every',
  startSharpness: 'sharpness at start',
  angleDeg: 'angle per side',
  burrChecked: 'burr checked',
  judge: 'judged by',
};

/** Columns a run may do without; what is not in the others counts as not recorded. */
const mayLack: readonly Column[] = ['cutMm', 'cuts', 'cycles', 'series', 'censored'];

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

const of = (many: number, one: string): string => `${thousands(many)} ${one}${many === 1 ? '' : 's'}`;

/** @param root the element that holds the parts of the page the import writes in */
export function createImport(root: HTMLElement, taking: Taking): Import {
  const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`);
  const select = (id: string) => root.querySelector<HTMLSelectElement>(`#${id}`);
  const pastedField = root.querySelector<HTMLTextAreaElement>('#pasted');
  let source: string | Blob = '';
  /** What is looked at of it before anything is taken. */
  let start = '';
  let note = '';
  let found: Found | undefined;
  let cancelled = false;

  const write = (name: string, text: string): void => {
    const place = part(name);
    if (place) place.textContent = text;
  };
  const hide = (name: string, hidden: boolean): void => {
    const place = part(name);
    if (place) place.hidden = hidden;
  };
  const problem = (text: string): void => {
    write('import-problem', text);
    pastedField?.setAttribute('aria-invalid', String(text !== ''));
  };
  const items = (name: string, texts: readonly string[]): void =>
    part(name)?.replaceChildren(
      ...texts.map((text) => Object.assign(document.createElement('li'), { textContent: text })),
    );

  const chosen = (): (Column | null)[] =>
    [...root.querySelectorAll<HTMLSelectElement>('[data-part="preview"] thead select')].map(({ value }) =>
      value === '' ? null : (value as Column),
    );

  function show(now: Found, rows: readonly (readonly string[])[]): void {
    found = now;
    hide('found', false);
    const marks = [
      ...(now.byteOrderMark ? ['with a byte order mark'] : []),
      ...(now.quoted ? ['with cells in quotation marks'] : []),
      ...(now.lengthUnit === 'mm'
        ? []
        : [`with lengths in ${lengthWord[now.lengthUnit]}, kept in millimetres`]),
    ];
    const lacking = now.missing.filter((column) => !mayLack.includes(column));
    write(
      'found-said',
      `${note}Read as ${now.headers.length} columns with ${delimiterWord[now.delimiter]} between them and a decimal ${[now.decimal, ...marks].join(', ')}. ${lacking.length > 0 ? `Not in the file, so not recorded: ${lacking.map((column) => columnWord[column]).join(', ')}. ` : ''}Set right what is not, then take the runs.`,
    );
    for (const [id, value] of [
      ['found-delimiter', now.delimiter],
      ['found-decimal', now.decimal],
      ['found-unit', now.lengthUnit],
    ] as const) {
      const choice = select(id);
      if (choice) choice.value = value;
    }
    items('questions', now.questions);
    const head = document.createElement('tr');
    head.append(
      ...now.headers.map(({ header, column }, index) => {
        const cell = document.createElement('th');
        cell.scope = 'col';
        const choice = document.createElement('select');
        choice.setAttribute('aria-label', `Column ${index + 1}, “${header}”, is`);
        choice.autocomplete = 'off';
        choice.append(
          new Option('not read', ''),
          ...columns.map((name) => new Option(columnWord[name], name)),
        );
        choice.value = column ?? '';
        cell.append(header, document.createElement('br'), choice);
        return cell;
      }),
    );
    const preview = part('preview');
    preview?.querySelector('thead')?.replaceChildren(head);
    preview?.querySelector('tbody')?.replaceChildren(
      ...rows.map((cells) => {
        const row = document.createElement('tr');
        row.append(
          ...now.headers.map((_, index) =>
            Object.assign(document.createElement('td'), { textContent: cells[index] ?? '' }),
          ),
        );
        return row;
      }),
    );
  }

  /** Looks at the beginning, as it was found or is confirmed. */
  function look(confirmed: Confirmed): void {
    // A row cut in two at the end of the beginning is none of the preview's.
    const { found: now, preview } = readCsv(start, confirmed);
    const many = now.headers.length;
    if (many > mostColumns)
      problem(
        `The first line makes ${thousands(many)} columns, more than any log has. Is it a table, one run a line?`,
      );
    else show(now, preview);
  }

  /** Leaves whatever was looked at or read before. */
  function clear(): void {
    cancelled = true;
    found = undefined;
    write('import-said', '');
    items('line-problems', []);
    hide('found', true);
    problem('');
  }

  /** Looks at a text, or at the beginning of a file. */
  function begin(whole: string | Blob, text: string, said: string): void {
    clear();
    source = whole;
    start = text.slice(0, beginning);
    note = said;
    if (text.trim() === '') {
      problem('There is nothing to read. Paste cells with their header line, or choose a file.');
      return;
    }
    const first = findCsv(start);
    if (first.headers.every(({ column }) => column === null))
      problem(
        'No column is known by its name. If the first line is the header, say below what each column is.',
      );
    look({});
    part('found-title')?.focus();
  }

  function comparison(text: string): void {
    const read = readComparisons(text);
    if (!read.ok) {
      problem(read.message);
      return;
    }
    const [first, ...others] = read.comparisons;
    if (!first) {
      problem(read.problems.join(' ') || 'The file holds no line-up.');
      return;
    }
    const refused = taking.takeComparison(first.entry);
    write(
      'import-said',
      refused ||
        `“${first.name}” is open, with ${first.entry.runs?.length ?? 0} runs.${others.length > 0 ? ` The file holds ${others.length} more line-ups; the drawer takes them all.` : ''}`,
    );
    items('line-problems', read.problems);
  }

  function report({ tally, problems, oldLetters }: LogRead): string {
    items('line-problems', [
      ...problems.map(
        ({ line, path, message }) =>
          `Line ${thousands(line)}: ${path === '' || !(path in columnWord) ? '' : `${columnWord[path as Column]}: `}${message}`,
      ),
      ...(tally.problems > problems.length
        ? [`… and ${thousands(tally.problems - problems.length)} more.`]
        : []),
    ]);
    const { runs, problems: faults, blank } = tally;
    return `${of(runs, 'run')} read, ${of(faults, 'problem')}${faults > 0 ? ' (listed below; their rows were not taken)' : ''}, ${of(blank, 'blank line')}.${oldLetters ? ' Not all of it is UTF-8, so it was read as Windows-1252: look at its letters.' : ''}`;
  }

  /** Shows how far the reading is; it is said aloud now and then only. */
  function teller(): (tally: LogTally, share: number) => boolean {
    const progress = root.querySelector<HTMLProgressElement>('[data-part="progress"]');
    let lastAnnounced = Date.now();
    write('progress-told', '');
    return ({ rows, problems }, share) => {
      const text = `${of(rows, 'row')} read, ${of(problems, 'problem')}`;
      if (progress) progress.value = share;
      write('progress-said', text);
      if (Date.now() - lastAnnounced > tellMs) {
        lastAnnounced = Date.now();
        write('progress-told', `${text}, ${whole(share * 100)} per cent of the file.`);
      }
      return !cancelled;
    };
  }

  async function take(before: readonly Run[]): Promise<void> {
    // Two columns of one meaning stand there as they were chosen, to be set right first.
    if (!found || pastedField?.getAttribute('aria-invalid') === 'true') return;
    const reading = found;
    cancelled = false;
    hide('found', true);
    hide('in-progress', false);
    const tell = teller();
    const read = await readLongLog(source, reading, { mostRuns, mostProblems: shownProblems, tell }).catch(
      (error: unknown) => (error instanceof Error ? error.message : String(error)),
    );
    hide('in-progress', true);
    if (found !== reading) return;
    if (read === null || cancelled || typeof read === 'string') {
      hide('found', false);
      const why = typeof read === 'string' ? `It could not be read to its end (${read}).` : 'Stopped.';
      write('import-said', `${why} Nothing was taken.`);
      return;
    }
    const said = report(read);
    const many = read.tally.runs;
    if (many + before.length > mostRuns) {
      hide('found', false);
      write(
        'import-said',
        `${said} Nothing was taken: a line-up carries at most ${thousands(mostRuns)} runs. Bring one line a sharpening, not one a cut, or take the file in parts.`,
      );
      return;
    }
    if (many === 0) {
      hide('found', false);
      write('import-said', `${said} There was nothing to take.`);
      return;
    }
    const refused = taking.takeRuns([...before, ...read.runs]);
    write(
      'import-said',
      refused === '' ? `${said} They are in the log. Undo takes them out again.` : refused,
    );
    if (refused === '' && pastedField) pastedField.value = '';
  }

  const isFile = (text: string): boolean => /^\uFEFF?\s*\{/.test(text);

  async function open(file: File): Promise<void> {
    const head = new Uint8Array(await file.slice(0, beginning).arrayBuffer());
    const { text, encoding } = textOf(head, file.size > beginning);
    if (isFile(text)) {
      clear();
      comparison(textOf(new Uint8Array(await file.arrayBuffer())).text);
    } else
      begin(
        file,
        text,
        `${file.name}. ${encoding === 'windows-1252' ? 'It is no UTF-8, so it is read as Windows-1252: look at its letters. ' : ''}`,
      );
  }

  const pastedText = (text: string, said = ''): void => {
    if (isFile(text)) {
      clear();
      comparison(text);
    } else begin(text, text, said);
  };

  return {
    pasted: () => pastedText(pastedField?.value ?? ''),
    async file(file) {
      try {
        await open(file);
      } catch {
        problem(
          `${file.name} could not be read. It may have been moved or changed meanwhile; choose it again.`,
        );
      }
    },
    text: pastedText,
    changed() {
      if (!found) return;
      const delimiter = select('found-delimiter')?.value as Delimiter | undefined;
      const decimal = select('found-decimal')?.value === 'comma' ? 'comma' : 'point';
      const lengthUnit = select('found-unit')?.value as LengthUnit | undefined;
      problem('');
      if (delimiter !== undefined && delimiter !== found.delimiter) {
        look({ delimiter });
        return;
      }
      try {
        // Which sign is the decimal one is looked for anew with the columns, unless it was set by hand.
        look({
          delimiter: found.delimiter,
          columns: chosen(),
          ...(decimal === found.decimal ? {} : { decimal }),
          ...(lengthUnit === undefined || lengthUnit === found.lengthUnit ? {} : { lengthUnit }),
        });
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        problem('Two columns cannot be the same. Set one of them to “not read”.');
      }
    },
    take: (before) => take(before),
    drop() {
      hide('found', true);
      source = start = '';
      found = undefined;
      write('import-said', 'Nothing was taken.');
    },
    cancel() {
      cancelled = true;
    },
  };
}
