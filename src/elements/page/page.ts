import { computed, effect, signal } from '@preact/signals-core';
import type { ReadonlySignal } from '@preact/signals-core';
import { createStore } from '../../comparison/store.ts';
import type { DecodedLink, OpenedLink } from '../../comparison/link/codec.ts';
import { plainEntry } from '../../comparison/plain-entry.ts';
import { fetchCurvesBy } from '../../runs/curves-at-hand.ts';
import { withGuess } from '../../scene/guessed.ts';
import { sceneOf } from '../../scene/scene.ts';
import type { Scene } from '../../scene/scene.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { addressStep, carriesComparison, refusedSaid } from '../start/address.ts';
import { carry } from '../start/carry.ts';
import { fetchLinks, linksAtHand } from './links.ts';
import { Pause } from './pause.ts';

/**
 * The one state of a page: the comparison's store, and the scene computed from it. Elements read the scene;
 * only controls and fields write, through `change`.
 */
const read = (id: string): unknown => JSON.parse(document.getElementById(id)?.textContent ?? 'null');
/** Null on a page without knives, which holds percentages alone and opens no comparison from its address. */
const own = read('page-comparison') as ComparisonEntry | null;
const given = own ?? plainEntry((read('page-percentages') ?? []) as number[]);

export const store = createStore(given);
/** The comparison the page was built with. */
export const example = store.entry.value;
const root = document.documentElement;

/** Rises once curves through readings have come, so that what waited for them is shown anew. */
const curvesHere = signal(0);
fetchCurvesBy(() => {
  import('../../runs/bring-curves.ts').then(
    ({ bringCurves }) => {
      bringCurves();
      curvesHere.value += 1;
    },
    // Without them the page goes on saying that they are on their way.
    () => undefined,
  );
});

/** What the reader expects of the comparison, times as long; null before a guess. Only the strip of guesses writes it. */
export const guess = signal<number | null>(null);

/**
 * The scene of the comparison the page was built with. What was built shows it already, so that it is worked out only
 * once something asks for more than its entry: opening a page costs nothing.
 */
const builtScene = new Proxy({ entry: example, guess: null } as Scene, {
  get: (known, part) => Reflect.get(part in known ? known : sceneOf(example), part) as unknown,
});

/** The store lets nothing in that the model cannot compute. */
const computedScene = computed(() => {
  void curvesHere.value;
  const entry = store.entry.value;
  return entry === example ? builtScene : sceneOf(entry);
});

/** What the page shows. */
export const scene: ReadonlySignal<Scene> = computed(() => withGuess(computedScene.value, guess.value));

/** What opens the comparison of the address, where it carries one: the page shows nothing else before. */
export async function ready(): Promise<void> {
  if (own && carriesComparison(location.hash)) await fetchLinks();
}

export function start(): void {
  if (!own) return;
  openAddress();
  addEventListener('hashchange', openAddress);
  for (const reach of ['pointerover', 'pointerdown', 'focusin']) addEventListener(reach, reached);
  addEventListener('click', follow);
  effect(carryAlong);
}

/** The links of the page follow the comparison after this pause: they are followed, not watched. */
const linksMs = 300;
const links = new Pause(linksMs, () => {
  if (root.dataset['comparison'] !== 'own') return;
  fetchLinks().then(
    ({ encodeLink }) => root.dataset['comparison'] === 'own' && carry(encodeLink(store.entry.value)),
    // A link that is followed fetches it again.
    () => undefined,
  );
});

/** Where the comparison is the visitor's, links lead on with it, opened in a new tab or copied as well as followed. */
function carryAlong(): void {
  void store.entry.value;
  links.ask();
}

/** What the page shows is the visitor's own, from the address or kept on this machine. */
export function becomesOwn(): void {
  root.dataset['comparison'] = 'own';
}

/** Whether the link takes the comparison of the page along. */
const takesAlong = ({ dataset: { page, carries } }: HTMLAnchorElement): boolean =>
  page !== undefined || (carries !== undefined && root.dataset['comparison'] === 'own');

const linkAt = ({ target }: Event): HTMLAnchorElement | null =>
  target instanceof Element
    ? target.closest<HTMLAnchorElement>('a[data-page], a[data-carries], a[href^="#"]')
    : null;

/** What makes links is there before the link under the hand is followed. */
function reached(event: Event): void {
  const link = linkAt(event);
  if (link && takesAlong(link)) fetchLinks().catch(() => undefined);
}

/** Follows a link once what makes links is there; without it, as it was built. */
function followLater(event: MouseEvent, link: HTMLAnchorElement): void {
  event.preventDefault();
  fetchLinks().then(
    () => link.dispatchEvent(new MouseEvent(event.type, event)),
    () => location.assign(link.href),
  );
}

/** A link within what is shown takes even the example along; a step within the page does not put its anchor in its place. */
function follow(event: MouseEvent): void {
  const link = linkAt(event);
  if (!link) return;
  const { page, carries } = link.dataset;
  if (takesAlong(link)) {
    const made = linksAtHand()?.encodeLink(store.entry.value);
    if (made === undefined) {
      followLater(event, link);
      return;
    }
    if (page !== undefined) link.href = addressOf(page, made);
    else link.hash = made;
  }
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

/** Puts the link of a comparison into the address, in place of what is there. */
export function writeAddress(link: string): void {
  history.replaceState(null, '', link);
  ofAddress = undefined;
}

/** Opens the comparison in the address, or says why it cannot and goes on with the one there is. */
function openAddress(change?: HashChangeEvent): void {
  const { act, leaves } = addressStep(location.hash, change && new URL(change.oldURL).hash);
  if (leaves) without = { entry: store.entry.value, whose: root.dataset['comparison'] };
  if (act === 'go back') goBack();
  if (act !== 'open') return;
  const { hash } = location;
  const links = linksAtHand();
  if (links) show(links.decodeLink(hash));
  else
    fetchLinks().then(
      ({ decodeLink }) => location.hash === hash && show(decodeLink(hash)),
      () => say(refusedSaid('a part of the page did not come.', root.dataset['comparison'] === 'own')),
    );
}

/** Shows the comparison of the address, or says why it cannot. */
function show(read: DecodedLink): void {
  if (read.ok) {
    store.replace(read.entry);
    ofAddress = store.entry.value;
    becomesOwn();
    say(read.runsLeftBehind ? 'The runs were too many for this link and stayed behind.' : '');
    sayThen(read);
  } else {
    latest = undefined;
    tell('address-then', '');
    const kept = root.dataset['comparison'] === 'own';
    if (!kept) root.dataset['comparison'] = 'refused';
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
  if (without.whose === undefined) delete root.dataset['comparison'];
  else root.dataset['comparison'] = without.whose;
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

/** Changes the comparison, which is then the visitor's own; why it is refused, if it is. `held` is as the store's. */
export function changeOwn(
  update: (entry: ComparisonEntry) => ComparisonEntry,
  label: string,
  held = false,
): string {
  const changed = store.change(
    (entry) => {
      const next = update(entry);
      if (JSON.stringify(next) === JSON.stringify(entry)) return entry;
      const { invented: _demo, ...own } = next;
      return own;
    },
    label,
    held,
  );
  if (!changed.ok) return changed.problems.map(({ message }) => message).join('; ');
  becomesOwn();
  return '';
}

/** The address of this site's page that carries the comparison of the moment. */
export async function linkTo(page: string): Promise<string> {
  const { encodeLink } = await fetchLinks();
  return addressOf(page, encodeLink(store.entry.value));
}

const addressOf = (page: string, link: string): string =>
  `${location.origin}${root.dataset['base'] ?? '/'}${page}${link}`;
