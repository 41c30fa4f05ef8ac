import { crc32 } from '../link/bytes.ts';
import type { ComparisonEntry } from '../entry.ts';
import { newTab, step } from './keeper.ts';
import type { Action, Because, Event, Kept, Tab } from './keeper.ts';
import { lastStorage, versionOf } from './last.ts';
import type { Found, LastStorage, TextStorage } from './last.ts';
import { putAway, takeOut } from './put-away.ts';
import type { PutAway } from './put-away.ts';

/** What the page has to say after something happened. */
export type Said =
  | { said: 'put away'; because: Because; name: string }
  | { said: 'another tab changed it' | 'nothing of another tab' | 'laid aside' }
  /** `besides`: what was kept meanwhile is in Saved, under this name. */
  | { said: 'put back'; entry: ComparisonEntry; instead: ComparisonEntry; besides?: string }
  | { said: 'not kept'; kind: 'denied' | 'full'; first: boolean };

/** What was kept was put into Saved, and can be put back. */
interface Undoable {
  kept: Kept;
  put: PutAway;
}

const marks: Record<Because, string> = {
  link: 'Kept before a link was opened',
  'another tab': 'Changed in another tab',
  'begun anew': 'Kept before you started again',
};

/** 30 November 2026, by the visitor's calendar. */
const dateInWords = (date: Date): string =>
  date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** The keeper of one page: does what the rule says with what is stored on the visitor's machine. Never throws. */
export class Keeping {
  #tab: Tab;
  #last: LastStorage;
  #open: () => TextStorage;
  #now: () => Date;
  /** What was put into Saved, by its row of versions: a later one of the same row takes its place. */
  #put = new Map<string, PutAway>();
  #undoable: Undoable | undefined;
  /** What was said of the storage, to say it once. */
  #told = new Set<string>();

  /**
   * @param id another for every page that is opened
   * @param openStorage opens the storage; a browser that denies storage throws on the mere mention of it
   */
  constructor(
    shown: ComparisonEntry,
    id: string,
    openStorage: () => TextStorage = () => localStorage,
    now: () => Date = () => new Date(),
  ) {
    this.#tab = newTab(versionOf(shown), id);
    this.#last = lastStorage(openStorage);
    this.#open = openStorage;
    this.#now = now;
  }

  linkOpened(entry: ComparisonEntry): void {
    const version = versionOf(entry);
    const hash = crc32(new TextEncoder().encode(version.key)).toString(36);
    this.#step({ what: 'link opened', version, hash });
  }

  linkRefused(): void {
    this.#step({ what: 'link refused' });
  }

  /** What is stored, for a page that begins: what cannot be read is laid aside at once. */
  look(): Found & { aside?: boolean } {
    const found = this.#last.look();
    return found.is === 'unreadable' ? { ...found, aside: this.#last.layAside(found.text) } : found;
  }

  /** What is stored, for the page to show. */
  keptShown(): ComparisonEntry | undefined {
    const stored = this.#last.look();
    if (stored.is !== 'kept') return undefined;
    this.#step({ what: 'kept shown' });
    return stored.entry;
  }

  begunAnew(): void {
    this.#step({ what: 'begun anew' });
  }

  shown(entry: ComparisonEntry): void {
    if (entry !== this.#tab.shown.entry) this.#step({ what: 'shown', version: versionOf(entry) });
  }

  writtenElsewhere(): Said | undefined {
    return this.#step({ what: 'written elsewhere' });
  }

  /** Keeps what is shown. */
  due(): Said | undefined {
    return this.#step({ what: 'due' });
  }

  /** Shows and keeps again what was put into Saved last, and takes it out there. */
  putBack(): Said | undefined {
    const undo = this.#undoable;
    if (!undo) return undefined;
    const instead = this.#tab.shown.entry;
    const said = this.#step({ what: 'put back', kept: undo.kept });
    if (said?.said === 'not kept') return said;
    this.#takeOut(undo);
    if (this.#undoable === undo) this.#undoable = undefined;
    const besides = said?.said === 'put away' ? { besides: said.name } : {};
    return { said: 'put back', entry: undo.kept.entry, instead, ...besides };
  }

  #step(event: Event): Said | undefined {
    const stored = this.#last.look();
    const { tab, actions } = step(this.#tab, stored, event);
    const { done, said } = this.#do(actions, stored);
    if (done) this.#tab = tab;
    return said;
  }

  /** Does one after another, as far as they can be done. */
  #do(actions: readonly Action[], stored: Found): { done: boolean; said?: Said } {
    let said: Said | undefined;
    let undo: Undoable | undefined;
    for (const action of actions) {
      if (action.do === 'say')
        said = action.text === 'not kept' ? this.#notKept('denied') : { said: action.text };
      else if (action.do === 'lay aside') {
        if (stored.is !== 'unreadable' || !this.#last.layAside(stored.text)) return this.#failed('full');
      } else if (action.do === 'put away') {
        undo = this.#putAway(action.kept, action.because);
        if (!undo) return this.#failed('full');
        said = { said: 'put away', because: action.because, name: undo.put.name };
      } else {
        const trouble = this.#last.write(action.kept);
        if (trouble === null) continue;
        // Nothing was written over: what was put away for it is still kept.
        if (undo) this.#takeOut(undo);
        return this.#failed(trouble);
      }
    }
    if (undo) this.#undoable = undo;
    return said ? { done: true, said } : { done: true };
  }

  #failed(kind: 'denied' | 'full'): { done: boolean; said: Said } {
    return { done: false, said: this.#notKept(kind) };
  }

  #putAway(kept: Kept, because: Because): Undoable | undefined {
    const now = this.#now();
    const name = `${marks[because]}, ${dateInWords(now)}: ${kept.entry.title}`;
    const put = putAway(this.#open, now, { name, entry: kept.entry }, this.#put.get(kept.line));
    if (put && kept.line !== '') this.#put.set(kept.line, put);
    return put && { kept, put };
  }

  #takeOut({ kept, put }: Undoable): void {
    takeOut(this.#open, put);
    this.#put.delete(kept.line);
  }

  #notKept(kind: 'denied' | 'full'): Said {
    const first = !this.#told.has(kind);
    this.#told.add(kind);
    return { said: 'not kept', kind, first };
  }
}
