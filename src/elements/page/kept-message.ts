import { fileName } from '../../comparison/saved/file-name.ts';
import type { Because } from '../../comparison/saved/keeper.ts';
import type { Said } from '../../comparison/saved/keeping.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { download } from './download.ts';
import { writeText } from './write-text.ts';

type Act = 'put-back' | 'show-kept' | 'show-instead' | 'file';
type Acts = Record<Exclude<Act, 'file'>, (entry: ComparisonEntry) => void>;

const putAway: Record<Because, string> = {
  link: 'The comparison kept here before',
  'another tab': 'The other tab’s version',
  'begun anew': 'The comparison kept here before',
};

const notKept = {
  denied:
    'This comparison isn’t kept here: the browser doesn’t allow it. Save it as a file, or copy its link to keep it.',
  full: 'This comparison isn’t kept here: there’s no room for it. Save it as a file, or copy its link to keep it.',
};

/** The name in Saved without the comparison's title, which may be long. */
const mark = (name: string): string => `“${name.split(':', 1)[0] ?? name}”`;

/** What the page says of a comparison kept, and the buttons beside it. */
function words(said: Said): { text: string; acts: Act[] } | undefined {
  switch (said.said) {
    case 'put away':
      return { text: `${putAway[said.because]} is in Saved now, as ${mark(said.name)}.`, acts: ['put-back'] };
    case 'another tab changed it':
      return { text: 'Another tab changed your comparison.', acts: ['show-kept'] };
    case 'nothing of another tab':
      return undefined;
    case 'laid aside':
      return { text: 'What was kept here before cannot be read. Saved has it as it was found.', acts: [] };
    case 'put back': {
      const besides =
        said.besides === undefined ? '' : ` What was kept meanwhile is in Saved, as ${mark(said.besides)}.`;
      return { text: `It’s back on this page, and no longer in Saved.${besides}`, acts: ['show-instead'] };
    }
    case 'not kept':
      return { text: notKept[said.kind], acts: ['file'] };
  }
}

/** What writes files came with what keeps comparisons. */
async function saveFile(entry: ComparisonEntry): Promise<void> {
  const { comparisonsFile } = await import('../../comparison/files.ts');
  download(fileName(entry.title, 'json'), comparisonsFile([{ name: entry.title, entry }]));
}

/** The one place of a page (`KeptMessage.astro`) where it says what became of what is kept, and where that can be undone. */
export class KeptMessage {
  #acts: Acts;
  #place: HTMLElement | null = null;
  #said: Said | undefined;
  #shown: ComparisonEntry | undefined;
  readonly denied = notKept.denied;

  constructor(acts: Acts) {
    this.#acts = acts;
  }

  listen(): void {
    this.#place = document.getElementById('kept-message');
    this.#place?.addEventListener('click', this.#pressed);
  }

  end(): void {
    this.#place?.removeEventListener('click', this.#pressed);
  }

  /** @param shown the comparison of the page, to be saved as a file */
  show(said: Said, shown: ComparisonEntry): void {
    this.#shown = shown;
    if (said.said === 'not kept' && !said.first) return;
    const told = words(said);
    if (!told && this.#said?.said !== 'another tab changed it') return;
    this.#said = said;
    this.#write(told?.text ?? '', told?.acts ?? []);
  }

  #write(text: string, acts: readonly Act[]): void {
    const place = this.#place;
    if (!place) return;
    const isFocused = place.contains(document.activeElement);
    place.hidden = text === '';
    writeText(place.querySelector('[data-part="kept-said"]'), text);
    for (const button of place.querySelectorAll<HTMLButtonElement>('[data-kept-act]'))
      button.hidden = !acts.includes(button.dataset['keptAct'] as Act);
    // The button that had the focus is gone.
    if (isFocused) place.querySelector<HTMLButtonElement>('[data-kept-act]:not([hidden])')?.focus();
  }

  #pressed = ({ target }: MouseEvent): void => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-kept-act]') : null;
    const act = button?.dataset['keptAct'] as Act | undefined;
    const shown = this.#shown;
    if (act === undefined || !shown) return;
    if (act === 'file') {
      saveFile(shown).catch(() => undefined);
      return;
    }
    const instead = this.#said?.said === 'put back' ? this.#said.instead : shown;
    if (act !== 'put-back') this.#write('', []);
    this.#acts[act](instead);
  };
}
