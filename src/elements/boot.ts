/**
 * All the script a page runs before it is touched. The page is whole without it: it only waits for the first
 * touch of something live, or sees a line-up in the address, and then fetches the live half.
 */
const root = document.documentElement;
let loading: Promise<unknown> | undefined;

function load(): Promise<unknown> {
  loading ??= import('./live.ts').catch(() => {
    loading = undefined;
    root.dataset['lineUp'] = 'failed';
  });
  return loading;
}

/** A change made before the live half was there is said again once it is. */
function touched(event: Event): void {
  const target = event.target;
  if (!(target instanceof Element) || !target.closest('[data-own], [data-live]')) return;
  if (root.dataset['live'] === 'on') return;
  const again =
    event.type === 'input' || event.type === 'change' || event.type === 'click' ? event.type : undefined;
  void load().then(() => {
    if (again) target.dispatchEvent(new Event(again, { bubbles: true }));
  });
}

/** Without the live half a form would leave the page: it waits for it instead. */
function submitted(event: SubmitEvent): void {
  const form = event.target;
  if (!(form instanceof HTMLFormElement) || root.dataset['live'] === 'on') return;
  event.preventDefault();
  void load().then(() => root.dataset['live'] === 'on' && form.requestSubmit());
}
addEventListener('submit', submitted, { capture: true });
for (const type of ['pointerover', 'pointerdown', 'focusin', 'input', 'change', 'click']) {
  addEventListener(type, touched, { passive: true, capture: true });
}
const opened = () => {
  if (location.hash.startsWith('#with=') && root.dataset['live'] !== 'on') void load();
};
addEventListener('hashchange', opened);
if (location.hash.startsWith('#with=') || root.hasAttribute('data-live-at-once')) void load();
