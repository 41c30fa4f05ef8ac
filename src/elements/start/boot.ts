import { savesData } from '../../offline/saves-data.ts';
import { isTopicName, loadTopic } from '../../topics/index.ts';
import type { Topic } from '../../topics/topic.ts';
import { hasGuesses } from './guesses-key.ts';
import { carriesComparison, carriesSet } from './address.ts';
import { carry } from './carry.ts';
import { nextTask } from './next-task.ts';
import { whenRested } from './when-rested.ts';

/**
 * All the script a page runs before it is touched. The page is whole without it: it only waits for the first
 * touch of something live, for a reader at rest, or sees a comparison in the address, and then fetches the live half: what
 * every page has, the topics its elements name, and the larger elements it holds, all at the same time.
 */
const root = document.documentElement;
let loading: Promise<unknown> | undefined;

const large: Record<string, () => Promise<CustomElementConstructor>> = {
  'kf-answer': async () => (await import('../page/answer.ts')).AnswerElement,
  'kf-compare': async () => (await import('../fields/compare.ts')).CompareElement,
  'kf-choice': async () => (await import('../figure/choice.ts')).ChoiceElement,
  'kf-copy-link': async () => (await import('../page/copy-link.ts')).CopyLinkElement,
  'kf-corrections': async () => (await import('../fields/corrections.ts')).CorrectionsElement,
  'kf-saved': async () => (await import('../page/saved.ts')).SavedElement,
  'kf-drawing': async () => (await import('../figure/drawing.ts')).DrawingElement,
  'kf-figure': async () => {
    const [{ FigureElement }] = await Promise.all([
      import('../figure/figure.ts'),
      // Figures that come late bring what draws with them.
      document.querySelector('kf-figure:not([data-late])') &&
        import('../figure/draw-at-hand.ts').then(({ fetchDraw }) => fetchDraw()),
    ]);
    return FigureElement;
  },
  'kf-forms': async () => (await import('../teach/forms.ts')).FormsElement,
  'kf-guess-strip': async () => (await import('../page/guess-strip.ts')).GuessStripElement,
  'kf-late': async () => (await import('../page/late.ts')).LateElement,
  'kf-line-sheet': async () => (await import('../page/line-sheet.ts')).LineSheetElement,
  'kf-poll': async () => (await import('../page/poll.ts')).PollElement,
  'kf-runs': async () => (await import('../test/runs.ts')).RunsElement,
  'kf-seal': async () => (await import('../page/seal.ts')).SealElement,
  'kf-snippet': async () => (await import('../page/snippet.ts')).SnippetElement,
  'kf-set': async () => (await import('../teach/set.ts')).SetElement,
  'kf-tally': async () => (await import('../teach/tally.ts')).TallyElement,
};

/** Elements that need nothing of the page but its comparison: each is fetched at its own touch, and brings nothing along. */
const alone: Record<string, () => Promise<CustomElementConstructor>> = {
  'kf-audience': async () => (await import('../page/audience.ts')).AudienceElement,
  'kf-check': async () => (await import('../teach/check.ts')).CheckElement,
  'kf-composition': async () => (await import('../fields/composition.ts')).CompositionElement,
  'kf-cost': async () => (await import('../fields/cost.ts')).CostElement,
  'kf-course': async () => (await import('../teach/course.ts')).CourseElement,
  'kf-picture': async () => (await import('../figure/picture.ts')).PictureElement,
  'kf-retell': async () => (await import('../page/retell.ts')).RetellElement,
  'kf-screen': async () => (await import('../teach/screen.ts')).ScreenElement,
  'kf-takes': async () => (await import('../fields/takes.ts')).TakesElement,
};

const named = (): string[] => {
  const names = [...document.querySelectorAll<HTMLElement>('[data-topic]')].map(
    ({ dataset }) => dataset['topic'],
  );
  return [...new Set(names)].filter(isTopicName);
};

async function fetchAll(): Promise<void> {
  const held = Object.keys(large).filter((name) => document.querySelector(name));
  // Asking for a file takes a slow phone a while, and there are many: nobody waits for a page that shows its own example.
  const inTurn = root.hasAttribute('data-live-at-once') && !carriesComparison(location.hash);
  const asked = async <T>(fetchIt: () => Promise<T>): Promise<{ coming: Promise<T> }> => {
    const coming = fetchIt();
    coming.catch(() => undefined);
    if (inTurn) await nextTask();
    return { coming };
  };
  const live = await asked(() => import('../page/live.ts'));
  const topics: Promise<Topic>[] = [];
  for (const name of named()) topics.push((await asked(() => loadTopic(name))).coming);
  const elements: Promise<readonly [string, CustomElementConstructor | undefined]>[] = [];
  for (const name of held)
    elements.push((await asked(async () => [name, await large[name]?.()] as const)).coming);
  const [{ begin }, ofPage, kinds] = await Promise.all([
    live.coming,
    Promise.all(topics),
    Promise.all(elements),
  ]);
  await begin(ofPage, Object.fromEntries(kinds) as Record<string, CustomElementConstructor>);
}

function load(): Promise<unknown> {
  loading ??= fetchAll().catch((error: unknown) => {
    loading = undefined;
    if (carriesComparison(location.hash)) root.dataset['comparison'] = 'failed';
    throw error;
  });
  return loading;
}

async function fetchAlone(name: string): Promise<void> {
  const element = await alone[name]?.();
  if (element && !customElements.get(name)) customElements.define(name, element);
}

/** What did not come: names of elements, or the live half. */
const missing = new Set<string>();

/** Whether what is fetched came. The page says that it did not until it has; the next touch fetches it again. */
async function fetched(name: string, fetchIt: () => Promise<unknown>): Promise<boolean> {
  const came = await fetchIt().then(
    () => true,
    () => false,
  );
  if (came) missing.delete(name);
  else missing.add(name);
  root.toggleAttribute('data-unloaded', missing.size > 0 && root.dataset['comparison'] !== 'failed');
  return came;
}
const liveHalf = () => fetched('live', load);

/** What has to be there before the element can answer; nothing where it can already. */
function needed(target: Element): (() => Promise<boolean>) | undefined {
  const name = target.closest(Object.keys(alone).join())?.localName;
  if (name !== undefined)
    return customElements.get(name) ? undefined : () => fetched(name, () => fetchAlone(name));
  return target.closest('[data-own], [data-live]') && root.dataset['live'] !== 'on' ? liveHalf : undefined;
}

/** A change made before the live half was there is said again once it is. */
function touched(event: Event): void {
  const { target } = event;
  if (!(target instanceof Element)) return;
  const fetchIt = needed(target);
  if (!fetchIt) return;
  // Its topic comes late, but not after all else.
  const late = target.closest<HTMLElement>('[data-late]')?.dataset['late'];
  if (isTopicName(late)) loadTopic(late).catch(() => undefined);
  const again =
    event.type === 'input' || event.type === 'change' || event.type === 'click' ? event.type : undefined;
  void fetchIt().then((came) => {
    if (came && again) target.dispatchEvent(new Event(again, { bubbles: true }));
  });
}

/** Without the live half a form would leave the page: it waits for it instead. */
function submitted(event: SubmitEvent): void {
  const form = event.target;
  const fetchIt = form instanceof HTMLFormElement ? needed(form) : undefined;
  if (!fetchIt) return;
  event.preventDefault();
  void fetchIt().then((came) => {
    if (came && !needed(form as HTMLFormElement)) (form as HTMLFormElement).requestSubmit();
  });
}
addEventListener('submit', submitted, { capture: true });
for (const type of ['pointerover', 'pointerdown', 'focusin', 'input', 'change', 'click']) {
  addEventListener(type, touched, { passive: true, capture: true });
}
/** The address carries a comparison, or a set of problems or forms on the page that makes them. */
const carried = () =>
  (carriesComparison(location.hash) && document.getElementById('page-comparison') !== null) ||
  (carriesSet(location.hash) && document.querySelector('kf-set, kf-forms') !== null);
const opened = () => {
  if (carried() && root.dataset['live'] !== 'on') void liveHalf();
};
addEventListener('hashchange', opened);
// A page that shows no comparison passes on the one in its address.
if (carriesComparison(location.hash) && !document.getElementById('page-comparison')) carry(location.hash);
// A guess made before is shown again at once.
const guessedBefore = () => document.querySelector('kf-guess-strip') !== null && hasGuesses();
if (carried() || root.hasAttribute('data-live-at-once') || guessedBefore()) void liveHalf();
// What has been done is kept on the reader's machine, so the page cannot be built with it.
if (document.querySelector('kf-course')) fetchAlone('kf-course').catch(() => undefined);
// Until its half is there a lesson on a large screen shows all its steps, one below the other.
if (document.querySelector('kf-screen')) fetchAlone('kf-screen').catch(() => undefined);

// A figure alone: in a frame it says how tall it is, and keeps nothing of the site on its reader's machine.
const isAlone = root.hasAttribute('data-alone');
if (isAlone && parent !== window) {
  root.dataset['framed'] = '';
  void import('../page/tell-height.ts').then(({ sendHeight }) => sendHeight());
}

/**
 * A reader who has scrolled, moved or typed and rests finds the figures live already. What does not come now is fetched
 * at the touch, which also says so; what a touch has missed only the next touch fetches, as the page then says.
 */
const restMs = 500;
if (document.querySelector('[data-own], [data-live]') && !savesData())
  whenRested(restMs, () => {
    if (!missing.has('live')) load().catch(() => undefined);
  });

// While developing, pages kept from the last build would be shown in place of the ones worked on.
const keepMs = 3000;
if (import.meta.env.PROD && !isAlone)
  whenRested(keepMs, () => void import('../../offline/keep-offline.ts').then((all) => all.keepOffline()));
