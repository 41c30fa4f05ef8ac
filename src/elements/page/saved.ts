import { shownNames } from '../../comparison/knife-names.ts';
import { savedWords } from '../../phrases/saved-words.ts';
import { createSavedList } from '../../comparison/saved/saved.ts';
import type { SavedComparison } from '../../comparison/saved/saved.ts';
import { fileName } from '../../comparison/saved/file-name.ts';
import { comparisonsFile } from '../../comparison/files.ts';
import { comparisonMarkdown } from '../../compare/sheet/markdown.ts';
import { encodeLink } from '../../comparison/link/codec.ts';
import { sceneOf } from '../../scene/scene.ts';
import type { Scene } from '../../scene/scene.ts';
import { eraseUnreadTexts, unreadTexts } from '../../comparison/saved/unread.ts';
import { bandOf } from './band-of.ts';
import { download } from './download.ts';
import { SceneElement } from './scene-element.ts';

/** Saved: lists what is kept, and binds its buttons to it. What is kept lives in Saved, not here. */
export class SavedElement extends SceneElement {
  #saved = createSavedList();
  #scene: Scene | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('click', this.#pressed);
    this.addEventListener('change', this.#changed);
    // Another page of the site may put something in meanwhile.
    addEventListener('storage', this.#list);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('click', this.#pressed);
    this.removeEventListener('change', this.#changed);
    removeEventListener('storage', this.#list);
  }

  protected override show(scene: Scene): void {
    this.#scene = scene;
    this.#list();
  }

  #pressed = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    const act = button?.dataset['act'];
    if (!button || act === undefined) return;
    const id = button.closest<HTMLElement>('[data-kept]')?.dataset['kept'] ?? '';
    const item = this.#saved.items().find((kept) => kept.id === id);
    const acts: Record<string, () => string> = {
      put: () => this.#put(),
      copy: () => this.#saved.copy(id).message,
      erase: () => this.#saved.erase(id).message,
      'put-back': () => this.#saved.putBack().message,
      file: () => (item ? this.#save([item], fileName(item.name, 'json')) : ''),
      'all-file': () => this.#save(this.#saved.items(), 'keenfold-saved.json'),
      'aside-file': () => this.#saveAside(),
      'aside-erase': () => {
        // First: what stands in Saved's own place is laid aside whenever it is looked at.
        const { message } = this.#saved.eraseUnread();
        eraseUnreadTexts();
        return `What was kept aside is erased.${message}`;
      },
      markdown: () => {
        if (item) void this.#markdown(item).then((said) => this.#after(said));
        return '';
      },
    };
    this.#after(acts[act]?.() ?? '');
    const gone = this.querySelector<HTMLButtonElement>('[data-act=put-back]');
    if (act === 'erase') {
      // The button that had the focus is gone with its row.
      if (gone) {
        gone.hidden = false;
        gone.focus();
      }
    } else if (gone && act === 'put-back') {
      gone.hidden = true;
      this.querySelector<HTMLElement>('h1, h2')?.focus();
    } else if (act === 'aside-erase') this.querySelector<HTMLElement>('#kept-title')?.focus();
  };

  #changed = (event: Event): void => {
    const input = event.target;
    if (!(input instanceof HTMLInputElement)) return;
    if (input.type === 'file') {
      void Promise.all([...(input.files ?? [])].map((file) => file.text())).then((texts) => {
        this.#after(texts.map((text) => this.#saved.take(text).message).join(' '));
        input.value = '';
      });
    } else if (input.name === 'kept-name') {
      const id = input.closest<HTMLElement>('[data-kept]')?.dataset['kept'] ?? '';
      this.#after(this.#saved.rename(id, input.value).message);
    }
  };

  #put(): string {
    const entry = this.#scene?.entry;
    const name = this.querySelector<HTMLInputElement>('[name=new-name]');
    if (!entry) return '';
    const { message } = this.#saved.put(entry, name?.value);
    if (name) name.value = '';
    return message;
  }

  #save(items: readonly SavedComparison[], name: string): string {
    if (items.length === 0) return 'Nothing is saved here yet.';
    download(name, comparisonsFile(items));
    const { message } = this.#saved.markSaved(items.map(({ id }) => id));
    return `${items.length === 1 ? 'One comparison is' : `${items.length} comparisons are`} in the file ${name}.${message}`;
  }

  #saveAside(): string {
    const name = 'keenfold-unread.txt';
    download(name, this.#aside(), 'text/plain');
    return `What was kept aside is in the file ${name}, as it was found.`;
  }

  /** All that cannot be read, as it was found. */
  #aside(): string {
    return [unreadTexts(), this.#saved.unreadText()].filter((text) => text !== '').join('\n');
  }

  async #markdown({ name, entry }: SavedComparison): Promise<string> {
    const link = `${location.origin}${document.documentElement.dataset['base'] ?? '/'}compare/${encodeLink(entry)}`;
    const scene = sceneOf(entry);
    const text = comparisonMarkdown(scene, link, await bandOf(scene, 'more'));
    download(fileName(name, 'md'), text, 'text/markdown');
    return `“${name}” is in the file ${fileName(name, 'md')}.`;
  }

  #after(message: string): void {
    this.#list();
    const said = this.place('said');
    if (said) said.textContent = message;
  }

  /** Every comparison as a row; a row that stays keeps its fields, and with them the focus. */
  #list = (): void => {
    const items = this.#saved.items();
    const list = this.place('list');
    const template = this.querySelector('template');
    if (!list || !template) return;
    const rows = new Map(
      [...list.querySelectorAll<HTMLElement>('[data-kept]')].map((row) => [row.dataset['kept'] ?? '', row]),
    );
    const wanted = items.map((item) => {
      const row = rows.get(item.id) ?? template.content.firstElementChild?.cloneNode(true);
      if (row instanceof HTMLElement) fill(row, item);
      rows.delete(item.id);
      return row;
    });
    for (const row of rows.values()) row.remove();
    wanted.forEach((row, index) => {
      if (row && list.children[index] !== row) list.insertBefore(row, list.children[index] ?? null);
    });
    const aside = this.place('aside');
    if (aside) aside.hidden = this.#aside() === '';
    const all = this.querySelector<HTMLElement>('.all-saved');
    if (all) all.hidden = items.length === 0;
    const state = this.place('state');
    if (state) state.textContent = savedWords(items.length, this.#saved.unread());
  };
}

const when = (iso: string): string => {
  const date = new Date(iso);
  return Number.isNaN(date.getTime())
    ? 'at a time not noted'
    : `on ${iso.slice(0, 10)} at ${iso.slice(11, 16)} UTC`;
};

function fill(row: HTMLElement, { id, name, entry, changedAt, savedToFileAt }: SavedComparison): void {
  row.dataset['kept'] = id;
  const input = row.querySelector('input');
  if (input && input.value !== name) input.value = name;
  if (input) input.setAttribute('aria-label', `Name of ${name}`);
  for (const button of row.querySelectorAll('button'))
    button.setAttribute('aria-label', `${button.textContent.trim()}: ${name}`);
  const link = row.querySelector('a');
  if (link) {
    link.href = `${document.documentElement.dataset['base'] ?? '/'}compare/${encodeLink(entry)}`;
    link.setAttribute('aria-label', `Open in Compare: ${name}`);
  }
  const about = row.querySelector('[data-part=about]');
  if (about)
    about.textContent = `${entry.invented ? 'Invented. ' : ''}${[...shownNames(entry.knives).values()].join(', ')}. Saved ${when(changedAt)}. ${savedToFileAt === null ? 'Not saved to a file yet.' : `Last saved to a file ${when(savedToFileAt)}.`}`;
}
