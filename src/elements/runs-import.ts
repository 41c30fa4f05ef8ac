import { readLineUps } from '../lineup/files.ts';
import type { LineUpEntry } from '../lineup/schema.ts';
import { thousands } from '../lineup/show.ts';
import { columns } from '../runs/columns.ts';
import type { Column } from '../runs/columns.ts';
import { findCsv } from '../runs/csv-found.ts';
import type { Confirmed, Delimiter, Found } from '../runs/csv-found.ts';
import { readCsv, readCsvParts } from '../runs/csv.ts';
import type { LineProblem } from '../runs/csv.ts';
import type { Run } from '../runs/log.ts';
import { textOf } from '../runs/text.ts';

/** What a text becomes: runs or a whole line-up; both say why they were refused, or ''. */
export interface Taking {
  takeRuns(runs: Run[]): string;
  takeLineUp(entry: LineUpEntry): string;
}

/** The part of the page that reads texts: what is found is shown, and taken only when somebody says so. */
export interface Import {
  pasted(): void;
  file(file: File): Promise<void>;
  text(text: string): void;
  /** A choice of what was found was changed. */
  changed(): void;
  take(before: readonly Run[]): Promise<void>;
  drop(): void;
  cancel(): void;
}

/** As many runs as a line-up carries. */
const mostRuns = 2000;
const shownProblems = 100;
/** What is looked at before anything is taken. */
const beginning = 64 * 1024;
/** Pieces small enough that the page answers between them. */
const pieceLength = 32 * 1024;

const columnWord: Record<Column, string> = {
  knife: 'knife',
  lot: 'lot',
  sharpening: 'sharpening',
  cutMm: 'mm cut',
  cuts: 'cuts',
  cycles: 'mm of each cycle',
  series: 'series of readings',
  censored: 'ended early',
  stop: 'stop',
  checkedEvery: 'looked every',
  startSharpness: 'sharpness at start',
  angleDeg: 'angle per side',
  burrChecked: 'burr checked',
  judge: 'judged by',
};

const delimiterWord: Record<Delimiter, string> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  '|': 'upright strokes',
};

function* pieces(text: string): Generator<string> {
  for (let from = 0; from < text.length; from += pieceLength) yield text.slice(from, from + pieceLength);
}

/** @param root the element that holds the parts of the page the import writes in */
export function createImport(root: HTMLElement, taking: Taking): Import {
  const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`);
  const select = (id: string) => root.querySelector<HTMLSelectElement>(`#${id}`);
  const pastedField = root.querySelector<HTMLTextAreaElement>('#pasted');
  let source = '';
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
    write(
      'found-said',
      `${note}Read as ${now.headers.length} columns with ${delimiterWord[now.delimiter]} between them and a decimal ${now.decimal}${now.byteOrderMark ? ', with a byte order mark' : ''}. Set right what is not, then take the runs.`,
    );
    const [delimiter, decimal] = [select('found-delimiter'), select('found-decimal')];
    if (delimiter) delimiter.value = now.delimiter;
    if (decimal) decimal.value = now.decimal;
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
    const { found: now, preview } = readCsv(source.slice(0, beginning), confirmed);
    show(now, preview);
  }

  function begin(text: string, said: string): void {
    cancelled = true;
    found = undefined;
    source = text;
    note = said;
    write('import-said', '');
    items('line-problems', []);
    hide('found', true);
    problem('');
    if (text.trim() === '') {
      problem('There is nothing to read. Paste cells with their header line, or choose a file.');
      return;
    }
    if (/^\uFEFF?\s*\{/.test(text)) {
      lineUp(text);
      return;
    }
    const first = findCsv(text.slice(0, beginning));
    if (first.headers.every(({ column }) => column === null))
      problem(
        'No column is known by its name. If the first line is the header, say below what each column is.',
      );
    look({});
    part('found-title')?.focus();
  }

  function lineUp(text: string): void {
    const read = readLineUps(text);
    if (!read.ok) {
      problem(read.message);
      return;
    }
    const [first, ...others] = read.lineUps;
    if (!first) {
      problem(read.problems.join(' ') || 'The file holds no line-up.');
      return;
    }
    const refused = taking.takeLineUp(first.entry);
    write(
      'import-said',
      refused ||
        `“${first.name}” is open, with ${first.entry.runs?.length ?? 0} runs.${others.length > 0 ? ` The file holds ${others.length} more line-ups; the drawer takes them all.` : ''}`,
    );
    items('line-problems', read.problems);
  }

  function report(runs: number, problems: readonly LineProblem[], count: number, blank: number): string {
    const of = (many: number, one: string) => `${thousands(many)} ${one}${many === 1 ? '' : 's'}`;
    items('line-problems', [
      ...problems.map(
        ({ line, path, message }) =>
          `Line ${thousands(line)}: ${path === '' || !(path in columnWord) ? '' : `${columnWord[path as Column]}: `}${message}`,
      ),
      ...(count > problems.length ? [`… and ${thousands(count - problems.length)} more.`] : []),
    ]);
    return `${of(runs, 'run')} read, ${of(count, 'problem')}${count > 0 ? ' (listed below; their rows were not taken)' : ''}, ${of(blank, 'blank line')}.`;
  }

  async function take(before: readonly Run[]): Promise<void> {
    // Two columns of one meaning stand there as they were chosen, to be set right first.
    if (!found || pastedField?.getAttribute('aria-invalid') === 'true') return;
    const reading = found;
    cancelled = false;
    hide('found', true);
    hide('in-progress', false);
    const runs: Run[] = [];
    const problems: LineProblem[] = [];
    let [many, faults, blank] = [0, 0, 0];
    const progress = root.querySelector<HTMLProgressElement>('[data-part="progress"]');
    for await (const read of readCsvParts(pieces(source), reading)) {
      if (cancelled) break;
      many += read.runs.length;
      faults += read.problems.length;
      blank += read.blank;
      if (runs.length <= mostRuns) runs.push(...read.runs);
      problems.push(...read.problems.slice(0, shownProblems - problems.length));
      if (progress) progress.value = read.readTo / Math.max(1, source.length);
      write('progress-said', `${thousands(many)} runs, ${thousands(faults)} problems`);
    }
    hide('in-progress', true);
    if (cancelled) {
      hide('found', false);
      write('import-said', 'Stopped. Nothing was taken.');
      return;
    }
    const said = report(many, problems, faults, blank);
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
    const refused = taking.takeRuns([...before, ...runs]);
    write(
      'import-said',
      refused === '' ? `${said} They are in the log. Undo takes them out again.` : refused,
    );
    if (refused === '' && pastedField) pastedField.value = '';
  }

  return {
    pasted: () => begin(pastedField?.value ?? '', ''),
    async file(file) {
      const { text, encoding } = textOf(new Uint8Array(await file.arrayBuffer()));
      begin(
        text,
        `${file.name}. ${encoding === 'windows-1252' ? 'It is no UTF-8, so it is read as Windows-1252: look at its letters. ' : ''}`,
      );
    },
    text: (text) => begin(text, ''),
    changed() {
      if (!found) return;
      const delimiter = select('found-delimiter')?.value as Delimiter | undefined;
      const decimal = select('found-decimal')?.value === 'comma' ? 'comma' : 'point';
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
        });
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        problem('Two columns cannot be the same. Set one of them to “not read”.');
      }
    },
    take: (before) => take(before),
    drop() {
      hide('found', true);
      source = '';
      found = undefined;
      write('import-said', 'Nothing was taken.');
    },
    cancel() {
      cancelled = true;
    },
  };
}
