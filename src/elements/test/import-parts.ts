import { columns } from '../../runs/columns.ts';
import type { Column } from '../../runs/columns.ts';
import type { Delimiter, Found } from '../../runs/csv-found.ts';
import type { LengthUnit } from '../../runs/length-units.ts';
import type { LogTally } from '../../runs/read-log.ts';
import { whole } from '../../scene/show.ts';
import { columnWord, foundSaid, of } from './import-words.ts';

/** Progress is said aloud no more often than this. */
const tellMs = 3000;

/** The parts of the page the import writes in. */
export class ImportParts {
  #root: HTMLElement;
  readonly pasted: HTMLTextAreaElement | null;

  /** @param root the element that holds them */
  constructor(root: HTMLElement) {
    this.#root = root;
    this.pasted = root.querySelector<HTMLTextAreaElement>('#pasted');
  }

  write(name: string, text: string): void {
    const place = this.#part(name);
    if (place) place.textContent = text;
  }

  hide(name: string, hidden: boolean): void {
    const place = this.#part(name);
    if (place) place.hidden = hidden;
  }

  focus(name: string): void {
    this.#part(name)?.focus();
  }

  items(name: string, texts: readonly string[]): void {
    this.#part(name)?.replaceChildren(
      ...texts.map((text) => Object.assign(document.createElement('li'), { textContent: text })),
    );
  }

  /** Says what is wrong; with '' that nothing is. */
  problem(text: string): void {
    this.write('import-problem', text);
    this.pasted?.setAttribute('aria-invalid', String(text !== ''));
  }

  hasProblem(): boolean {
    return this.pasted?.getAttribute('aria-invalid') === 'true';
  }

  /** What was found, its questions, and the first rows below a choice for each column. */
  showFound(found: Found, rows: readonly (readonly string[])[], note: string): void {
    this.hide('found', false);
    this.write('found-said', `${note}${foundSaid(found)}`);
    this.#set('found-delimiter', found.delimiter);
    this.#set('found-decimal', found.decimal);
    this.#set('found-unit', found.lengthUnit);
    this.items('questions', found.questions);
    const preview = this.#part('preview');
    preview?.querySelector('thead')?.replaceChildren(headRow(found));
    preview
      ?.querySelector('tbody')
      ?.replaceChildren(...rows.map((cells) => previewRow(cells, found.headers.length)));
  }

  /** What the visitor chose of what was found. */
  chosen() {
    const columnChoices = this.#root.querySelectorAll<HTMLSelectElement>(
      '[data-part="preview"] thead select',
    );
    return {
      delimiter: this.#select('found-delimiter')?.value as Delimiter | undefined,
      decimal: this.#select('found-decimal')?.value === 'comma' ? ('comma' as const) : ('point' as const),
      lengthUnit: this.#select('found-unit')?.value as LengthUnit | undefined,
      columns: [...columnChoices].map(({ value }) => (value === '' ? null : (value as Column))),
    };
  }

  /** Shows how far a reading is; it is said aloud now and then only. */
  progress(): (tally: LogTally, share: number) => void {
    const progress = this.#root.querySelector<HTMLProgressElement>('[data-part="progress"]');
    let saidAt = Date.now();
    this.write('progress-told', '');
    return ({ rows, problems }, share) => {
      const text = `${of(rows, 'row')} read, ${of(problems, 'problem')}`;
      if (progress) progress.value = share;
      this.write('progress-said', text);
      if (Date.now() - saidAt > tellMs) {
        saidAt = Date.now();
        this.write('progress-told', `${text}, ${whole(share * 100)} per cent of the file.`);
      }
    };
  }

  #part(name: string): HTMLElement | null {
    return this.#root.querySelector<HTMLElement>(`[data-part="${name}"]`);
  }

  #select(id: string): HTMLSelectElement | null {
    return this.#root.querySelector<HTMLSelectElement>(`#${id}`);
  }

  #set(id: string, value: string): void {
    const choice = this.#select(id);
    if (choice) choice.value = value;
  }
}

/** The headers found, each with a choice of what its column is. */
function headRow({ headers }: Found): HTMLElement {
  const head = document.createElement('tr');
  head.append(
    ...headers.map(({ header, column }, index) => {
      const cell = document.createElement('th');
      cell.scope = 'col';
      const choice = document.createElement('select');
      choice.setAttribute('aria-label', `Column ${index + 1}, “${header}”, is`);
      choice.autocomplete = 'off';
      choice.append(new Option('not read', ''), ...columns.map((name) => new Option(columnWord[name], name)));
      choice.value = column ?? '';
      cell.append(header, document.createElement('br'), choice);
      return cell;
    }),
  );
  return head;
}

function previewRow(cells: readonly string[], many: number): HTMLElement {
  const row = document.createElement('tr');
  row.append(
    ...Array.from({ length: many }, (_, index) =>
      Object.assign(document.createElement('td'), { textContent: cells[index] ?? '' }),
    ),
  );
  return row;
}
