import { computed, effect } from '@preact/signals-core';
import type { ReadonlySignal } from '@preact/signals-core';
import { createStore } from '../../comparison/store.ts';
import { decodeLink, encodeLink } from '../../comparison/link/codec.ts';
import type { OpenedLink } from '../../comparison/link/codec.ts';
import { plainEntry } from '../../comparison/plain-entry.ts';
import { sceneOf } from '../../scene/scene.ts';
import type { Scene } from '../../scene/scene.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { addressStep, carriesComparison, refusedSaid } from '../start/address.ts';
import { carry } from '../start/carry.ts';
import { Pause } from './pause.ts';

/**
 * The one state of a page: the comparison's store, and the scene computed from it. Elements read the scene;
 * only controls and fields write, through `change`.
 */
const read = (id: string): unknown => JSON.parse(document.getElementById(id)?.textContent ?? 'null');
/** Null on a page without knives, which holds percentages alone and opens no comparison from its address. */
const own = read('page-line-up') as ComparisonEntry | null;
const given = own ?? plainEntry((read('page-percentages') ?? []) as number[]);

export const store = createStore(given);
/** The comparison the page was built with. */
export const example = store.entry.value;
const root = document.documentElement;

/** What the page shows. The store lets nothing in that the model cannot compute. */
export const scene: ReadonlySignal<Scene> = computed(() => sceneOf(store.entry.value));

export function start(): void {
  if (!own) return;
  openAddress();
  addEventListener('hashchange', openAddress);
  addEventListener('click', follow);
  effect(carryAlong);
}

/** The links of the page follow the comparison after this pause: they are followed, not watched. */
const linksMs = 300;
const links = new Pause(linksMs, () => {
  if (root.dataset['lineUp'] === 'own') carry(encodeLink(store.entry.value));
});

/** Where the comparison is the visitor's, links lead on with it, opened in a new tab or copied as well as followed. */
function carryAlong(): void {
  void store.entry.value;
  links.ask();
}

/** What the page shows is the visitor's own, from the address or kept on this machine. */
export function becomesOwn(): void {
  root.dataset['lineUp'] = 'own';
}

/** A link within what is shown takes even the example along; a step within the page does not put its anchor in its place. */
function follow(event: MouseEvent): void {
  const { target } = event;
  const link =
    target instanceof Element
      ? target.closest<HTMLAnchorElement>('a[data-page], a[data-carries], a[href^="#"]')
      : null;
  if (!link) return;
  const { page, carries } = link.dataset;
  if (page !== undefined) link.href = linkTo(page);
  else if (carries !== undefined && root.dataset['lineUp'] === 'own')
    link.hash = encodeLink(store.entry.value);
  if (page !== undefined || carries !== undefined || !carriesComparison(location.hash)) return;
  const place = document.getElementById(link.hash.slice(1));
  if (!place) return;
  event.preventDefault();
  place.tabIndex = -1;
  place.focus();
  place.scrollIntoView();
}

/**
 * What the page showed when its address carried no comparison, for anyone who goes back there. A page that is live at once
 * may hold what was kept on this machine; any other showed its example until a comparison came.
 */
let without: { entry: ComparisonEntry; whose: string | undefined } | undefined = root.hasAttribute(
  'data-live-at-once',
)
  ? undefined
  : { entry: example, whose: undefined };

/** The comparison as the address gave it, until another is written there. */
let ofAddress: ComparisonEntry | undefined;

/** Whether a comparison is no more than what the address says: then the address need not follow it, nor is it kept. */
export const isOfAddress = (entry: ComparisonEntry): boolean => entry === ofAddress;

/** Puts a comparison into the address, in place of what is there. */
export function writeAddress(entry: ComparisonEntry): void {
  history.replaceState(null, '', encodeLink(entry));
  ofAddress = undefined;
}

/** Opens the comparison in the address, or says why it cannot and goes on with the one there is. */
function openAddress(change?: HashChangeEvent): void {
  const { act, leaves } = addressStep(location.hash, change && new URL(change.oldURL).hash);
  if (leaves) without = { entry: store.entry.value, whose: root.dataset['lineUp'] };
  if (act === 'go back') goBack();
  if (act !== 'open') return;
  const read = decodeLink(location.hash);
  if (read.ok) {
    store.replace(read.entry);
    ofAddress = store.entry.value;
    becomesOwn();
    say(read.runsLeftBehind ? 'The runs were too many for this link and stayed behind.' : '');
    sayThen(read);
  } else {
    latest = undefined;
    tell('address-then', '');
    const kept = root.dataset['lineUp'] === 'own';
    if (!kept) root.dataset['lineUp'] = 'refused';
    say(refusedSaid(read.why, kept));
  }
}

/** The address carries nothing any more: the page shows what it did without. */
function goBack(): void {
  latest = undefined;
  tell('address-then', '');
  say('');
  if (!without) {
    // Opened by a link, this page never showed what it shows without one.
    location.reload();
    return;
  }
  store.replace(without.entry);
  ofAddress = store.entry.value;
  if (without.whose === undefined) delete root.dataset['lineUp'];
  else root.dataset['lineUp'] = without.whose;
  if (without.whose !== 'own') carry('');
}

const say = (text: string): void => tell('address-message', text);

/** The link opened last: the words about one before it are no longer wanted. */
let latest: OpenedLink | undefined;

/** What another model said when the link was made. Few links need the words for it, so they are fetched. */
function sayThen(read: OpenedLink): void {
  latest = read;
  tell('address-then', '');
  if (read.sameModel) return;
  const unsaid = `This link was made with factor model no. ${read.modelNumber}, and this page has another: its numbers may differ from those of then.`;
  import('../../phrases/older-link.ts').then(
    ({ olderLinkText }) => latest === read && tell('address-then', olderLinkText(read)),
    () => latest === read && tell('address-then', unsaid),
  );
}

function tell(id: string, text: string): void {
  const place = document.getElementById(id);
  if (!place) return;
  place.textContent = text;
  place.hidden = text === '';
}

/** Changes the comparison, which is then the visitor's own; why it is refused, if it is. */
export function changeOwn(update: (entry: ComparisonEntry) => ComparisonEntry, label: string): string {
  const changed = store.change((entry) => {
    const next = update(entry);
    if (JSON.stringify(next) === JSON.stringify(entry)) return entry;
    const { invented: _demo, ...own } = next;
    return own;
  }, label);
  if (!changed.ok) return changed.problems.map(({ message }) => message).join('; ');
  becomesOwn();
  return '';
}

/** The address of this site's page that carries the comparison of the moment. */
export function linkTo(page: string): string {
  const base = root.dataset['base'] ?? '/';
  return `${location.origin}${base}${page}${encodeLink(store.entry.value)}`;
}
