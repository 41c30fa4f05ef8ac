import { runsOfKnives } from '../../comparison/knife-names.ts';
import { store } from '../page/page.ts';
import type { Import } from './runs-import.ts';
import type { RunsLog } from './runs-log.ts';
import { problemsOf } from './runs-parts.ts';
import type { RunsParts } from './runs-parts.ts';

/** A text too long for a field to hold without the page standing still. */
const longPaste = 256 * 1024;

/** Texts and files that are brought to the page: typed, pasted or dropped. What reads them is fetched once there is one. */
export class RunsTexts {
  #parts: RunsParts;
  #log: RunsLog;
  #import: Promise<Import> | undefined;

  constructor(parts: RunsParts, log: RunsLog) {
    this.#parts = parts;
    this.#log = log;
  }

  listen(): void {
    const place = this.#parts.part('import');
    place?.addEventListener('dragover', this.#dragged);
    place?.addEventListener('dragleave', this.#dragged);
    place?.addEventListener('drop', this.#dropped);
    place?.addEventListener('paste', this.#pasted);
  }

  /** Does something with the reader. */
  with(act: (reader: Import) => unknown): void {
    this.#import ??= import('./runs-import.ts').then(
      ({ Import }) =>
        new Import(this.#parts.root, {
          takeRuns: (before, runs) =>
            this.#log.setRuns([...before, ...runsOfKnives(store.entry.value.knives, runs)], 'import'),
          takeComparison: (entry) => problemsOf(store.replace(entry)),
        }),
    );
    this.#import.then(
      (reader) => void act(reader),
      () => {
        this.#import = undefined;
        this.#parts.say('The reader of files could not be loaded. Check the connection and try again.');
      },
    );
  }

  #dragged = (event: Event): void => {
    event.preventDefault();
    this.#parts.part('import')?.classList.toggle('dropping', event.type === 'dragover');
  };

  #dropped = (event: DragEvent): void => {
    event.preventDefault();
    this.#parts.part('import')?.classList.remove('dropping');
    const [file] = event.dataTransfer?.files ?? [];
    const text = event.dataTransfer?.getData('text') ?? '';
    if (file) this.with((reader) => reader.file(file));
    else if (text !== '') this.with((reader) => reader.text(text));
  };

  /** A long text never enters the field: it is looked at as a file is. */
  #pasted = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData('text') ?? '';
    if (text.length <= longPaste) return;
    event.preventDefault();
    this.with((reader) => reader.text(text, 'The text is too long to show in the field. '));
  };
}
