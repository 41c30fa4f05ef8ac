import type * as Library from '../../comparison/saved/keeping.ts';
import type { Keeping, Said } from '../../comparison/saved/keeping.ts';
import { lastKey } from '../../comparison/saved/last-key.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { carriesComparison } from '../start/address.ts';
import { keptComesBack } from './kept-comes-back.ts';
import { KeptMessage } from './kept-message.ts';
import { fetchLinks, linksAtHand } from './links.ts';
import { becomesOwn, example, isOfAddress, store, writeAddress } from './page.ts';

/** Address and storage follow the comparison after this pause. */
const keepMs = 300;

let library: typeof Library | undefined;

/** What reads and writes the storage: fetched where something is stored, or at the first change. */
const fetchLibrary = async (): Promise<typeof Library> =>
  (library ??= await import('../../comparison/saved/keeping.ts'));

/** Whether something is stored. Where the browser denies even the look, what reads it says so. */
function isStored(): boolean {
  try {
    return localStorage.getItem(lastKey) !== null;
  } catch {
    return true;
  }
}

// What is stored is shown at once, in place of the example.
if (isStored()) await fetchLibrary();

/**
 * Lets the address and what is kept on this machine follow the comparison of the page, so that a reload keeps it even where
 * storage is denied. What is kept of another origin, or by another tab, is put into Saved before it is written over; the
 * page's `KeptMessage` says so.
 */
export class OwnKeeper {
  #keeping: Keeping | undefined;
  /** What happened before the library was here. */
  #waiting: ((keeping: Keeping) => void)[] = [];
  #timer = 0;
  /** The change that waits for the pause to be over. */
  #pending: { entry: ComparisonEntry; href: string } | undefined;
  #message = new KeptMessage({
    'put-back': () => this.#putBack(),
    'show-kept': () => this.#showKept(),
    'show-instead': (entry) => this.#showHere(entry),
  });

  /**
   * Without a comparison in the address the last one kept on this machine comes back; and with it the runs that were too
   * many for the address, if it is the same comparison. Call it once the page's address is opened.
   *
   * @returns trouble with what is kept, in words
   */
  begin(): string {
    const linked = carriesComparison(location.hash)
      ? (linksAtHand()?.decodeLink(location.hash) ?? null)
      : null;
    if (linked?.ok) {
      const entry = store.entry.value;
      this.#tell((keeping) => keeping.linkOpened(entry));
    } else if (linked) this.#tell((keeping) => keeping.linkRefused());
    addEventListener('storage', this.#stored);
    addEventListener('pageshow', this.#shownAgain);
    addEventListener('pagehide', this.#hidden);
    this.#message.listen();
    return linked && !(linked.ok && linked.runsLeftBehind) ? '' : this.#recall(linked);
  }

  end(): void {
    removeEventListener('storage', this.#stored);
    removeEventListener('pageshow', this.#shownAgain);
    removeEventListener('pagehide', this.#hidden);
    this.#message.end();
  }

  /** The comparison is another one now: changed, undone, redone, or of another address. */
  follow(entry: ComparisonEntry): void {
    const isGiven = isOfAddress(entry);
    this.#tell((keeping) => (isGiven ? keeping.linkOpened(entry) : keeping.shown(entry)));
    clearTimeout(this.#timer);
    this.#pending = { entry, href: location.href };
    this.#timer = window.setTimeout(() => {
      // What did not come is fetched again at the next change.
      this.#keep().catch(() => undefined);
    }, keepMs);
  }

  /** The visitor starts again with the example: what is made of it now is another comparison than the one before. */
  beginAnew(): void {
    this.#tell((keeping) => keeping.begunAnew());
  }

  #recall(linked: Parameters<typeof keptComesBack>[1]): string {
    const keeping = this.#here();
    if (!keeping) return '';
    const found = keeping.look();
    if (found.is === 'denied') return this.#message.denied;
    if (found.is === 'unreadable')
      return `What was kept on your last visit cannot be read. ${found.why}${found.aside ? ' It is kept aside: Saved gives it to you as a file.' : ''}`;
    if (found.is !== 'kept' || !keptComesBack(found.entry, linked)) return '';
    this.#showKept();
    const message = document.getElementById('address-message');
    if (message && linked) message.hidden = true;
    return '';
  }

  /** The keeper, where its library has been fetched. */
  #here(): Keeping | undefined {
    if (!library) return undefined;
    this.#keeping ??= new library.Keeping(example, Math.random().toString(36).slice(2, 10));
    for (const happened of this.#waiting.splice(0)) happened(this.#keeping);
    return this.#keeping;
  }

  /** Tells the keeper what happened; the library comes while the hand may still be moving. */
  #tell(happened: (keeping: Keeping) => void): void {
    this.#waiting.push(happened);
    if (!this.#here())
      fetchLibrary().then(
        () => this.#here(),
        () => undefined,
      );
  }

  async #keep(): Promise<void> {
    const { entry, href } = this.#pending ?? {};
    const [{ encodeLink }] = await Promise.all([fetchLinks(), fetchLibrary()]);
    // The reader has gone on or back meanwhile: the other address stays as it is, and what it says is shown.
    if (!entry || entry !== this.#pending?.entry || location.href !== href || isOfAddress(entry)) return;
    this.#pending = undefined;
    writeAddress(encodeLink(entry));
    this.#say(this.#here()?.due());
  }

  /** Nothing waits for a pause on a page that is left. */
  #hidden = (): void => {
    const { entry, href } = this.#pending ?? {};
    if (entry && location.href === href && !isOfAddress(entry)) this.#here()?.due();
  };

  #stored = ({ key }: StorageEvent): void => {
    // A tab that never kept anything has nothing to be told.
    if (key === lastKey) this.#say(this.#keeping?.writtenElsewhere());
  };

  #shownAgain = ({ persisted }: PageTransitionEvent): void => {
    if (persisted) this.#say(this.#keeping?.writtenElsewhere());
  };

  #say(said: Said | undefined): void {
    if (said) this.#message.show(said, store.entry.value);
  }

  #putBack(): void {
    const said = this.#here()?.putBack();
    this.#say(said);
    if (said?.said === 'put back') this.#showHere(said.entry);
  }

  #showKept(): void {
    const entry = this.#here()?.keptShown();
    if (entry) this.#showHere(entry);
  }

  #showHere(entry: ComparisonEntry): void {
    store.replace(entry);
    becomesOwn();
  }
}
