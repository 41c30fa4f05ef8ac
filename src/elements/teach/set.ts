import { contextIds, judge, kindsFor } from '../../exercises/index.ts';
import type { Kind, Level } from '../../exercises/index.ts';
import { makeSet, versions } from '../../exercises/set/index.ts';
import type { ProblemSet, SetRequest } from '../../exercises/set/index.ts';
import { FIRST_SET, readSetCode, setCode } from '../../teach/set/address.ts';
import { doHtml } from '../../teach/set/do-html.ts';
import { stepsHtml } from '../../teach/set/key-html.ts';
import { exportsOf } from './set-exports.ts';

/** Tries after which the working is shown, whatever was typed. */
const TRIES = 3;

/**
 * The set maker: its form writes the set into the address, and what the address says is shown. With `#do=` in place of
 * `#set=` the set is done on the screen, and the key is not on the page until an answer is right.
 */
export class SetElement extends HTMLElement {
  #set: ProblemSet | undefined;
  #tries = new Map<number, number>();
  #right = new Set<number>();

  connectedCallback(): void {
    this.addEventListener('input', this.#asked);
    this.addEventListener('submit', this.#submitted);
    this.addEventListener('click', this.#clicked);
    addEventListener('hashchange', this.#open);
    if (/^#(set|do)=/.test(location.hash)) this.#open();
    // A field may have been changed before this half of the page was there.
    else this.#asked();
  }

  disconnectedCallback(): void {
    this.removeEventListener('input', this.#asked);
    this.removeEventListener('submit', this.#submitted);
    this.removeEventListener('click', this.#clicked);
    removeEventListener('hashchange', this.#open);
  }

  #part = (name: string): HTMLElement | null => this.querySelector<HTMLElement>(`[data-part="${name}"]`);

  get #form(): HTMLFormElement | null {
    return this.querySelector<HTMLFormElement>('form.kit-form');
  }

  /** What the address asks for. */
  #open = (): void => {
    const found = /^#(set|do)=(.*)$/.exec(location.hash);
    if (!found) return;
    const read = readSetCode(found[2] ?? '');
    this.#say('address', read.ok ? '' : `The set in this address could not be opened: ${read.why}`);
    if (!read.ok) {
      if (!this.#set) this.#asked();
      return;
    }
    this.#fill(read.request);
    void this.#show(makeSet(read.request), found[1] === 'do' ? 'do' : 'set');
  };

  /** What the form asks for. A field that asks for something there is not gets a message, and the last set stays. */
  #asked = (event?: Event): void => {
    if (event?.target instanceof Element && !event.target.closest('form.kit-form')) return;
    this.#allow();
    const request = this.#read();
    if (!request) return;
    if (event?.target instanceof HTMLInputElement && event.target.name === 'large') return;
    void this.#show(makeSet(request), 'set');
    // A page opened without a set keeps its plain address until something is asked for.
    if (event) history.replaceState(null, '', `#set=${setCode(request)}`);
    if (event) this.#say('address', '');
  };

  /** Only the kinds the context has words for can be chosen. */
  #allow(): void {
    const context = contextIds.find((id) => id === this.#value('context')) ?? FIRST_SET.context;
    const allowed: readonly string[] = kindsFor(context);
    for (const box of this.querySelectorAll<HTMLInputElement>('input[data-kind]'))
      box.disabled = !allowed.includes(box.dataset['kind'] ?? '');
    document.body.classList.toggle('kit-large', this.#box('large'));
  }

  #value(name: string): string {
    const field = this.#form?.elements.namedItem(name);
    return field instanceof HTMLInputElement || field instanceof HTMLSelectElement ? field.value : '';
  }

  #box(name: string): boolean {
    const field = this.#form?.elements.namedItem(name);
    return field instanceof HTMLInputElement && field.checked;
  }

  #read(): Required<SetRequest> | undefined {
    const kinds = [...this.querySelectorAll<HTMLInputElement>('input[data-kind]:checked:enabled')].map(
      ({ dataset }) => dataset['kind'] as Kind,
    );
    const count = this.#whole('count', 1, 40);
    const seed = this.#whole('seed', 0, 0xffffffff);
    this.#say('kinds', kinds.length === 0 ? 'Choose one kind at least.' : '');
    if (kinds.length === 0 || count === undefined || seed === undefined) return undefined;
    const level = this.#value('level');
    return {
      kinds,
      count,
      seed,
      level: level === 'rising' ? level : (Number(level) as Level),
      context: contextIds.find((id) => id === this.#value('context')) ?? FIRST_SET.context,
      version: versions.find((version) => version === this.#value('version')) ?? 'A',
    };
  }

  #whole(name: string, least: number, most: number): number | undefined {
    const field = this.#form?.elements.namedItem(name);
    if (!(field instanceof HTMLInputElement)) return undefined;
    const text = field.value.trim();
    const value = /^\d+$/.test(text) ? Number(text) : NaN;
    const good = value >= least && value <= most;
    field.setAttribute('aria-invalid', String(!good));
    this.#say(name, good ? '' : `Write a whole number from ${least} to ${most}.`);
    return good ? value : undefined;
  }

  #fill(request: Required<SetRequest>): void {
    for (const name of ['context', 'level', 'count', 'version', 'seed'] as const) {
      const field = this.#form?.elements.namedItem(name);
      if (field instanceof HTMLInputElement || field instanceof HTMLSelectElement)
        field.value = String(request[name]);
    }
    for (const box of this.querySelectorAll<HTMLInputElement>('input[data-kind]'))
      box.checked = request.kinds.some((kind) => kind === box.dataset['kind']);
    this.#allow();
    this.#read();
  }

  #say(part: string, text: string): void {
    const place = this.#part(`say-${part}`);
    if (!place) return;
    place.textContent = text;
    place.hidden = text === '';
  }

  async #show(set: ProblemSet, way: 'set' | 'do'): Promise<void> {
    if (this.#set && this.dataset['way'] === way && setCode(this.#set) === setCode(set)) return;
    this.#set = set;
    this.dataset['way'] = way;
    const link = this.#part('do-it');
    if (link instanceof HTMLAnchorElement) link.href = `#do=${setCode(set)}`;
    const done = this.#part('do');
    if (way === 'do') {
      this.#tries.clear();
      this.#right.clear();
      if (done) done.innerHTML = doHtml(set);
      return;
    }
    if (done) done.replaceChildren();
    const { setSheets } = await import('../../teach/set/set-sheets.ts');
    if (this.#set !== set) return;
    const code = setCode(set);
    for (const [name, html] of Object.entries(setSheets(set, `${location.origin}${location.pathname}`))) {
      const place = this.#part(name);
      if (!place) continue;
      if (this.dataset['code'] !== code) place.innerHTML = html;
      else readdress(place, html);
    }
    this.dataset['code'] = code;
  }

  #submitted = (event: Event): void => {
    event.preventDefault();
    const form = event.target;
    if (!(form instanceof HTMLFormElement)) return;
    if (form === this.#form) {
      this.#asked(event);
      return;
    }
    const number = Number(form.dataset['number']);
    const item = this.#set?.items.find((each) => each.number === number);
    const field = form.querySelector('input');
    const said = this.querySelector(`#kit-said-${number}`);
    if (!item || !field || !said) return;
    const { verdict, message } = judge(item.problem, field.value);
    field.setAttribute('aria-invalid', String(verdict === 'not readable'));
    said.setAttribute('data-verdict', verdict);
    said.textContent = message;
    if (verdict === 'not readable') return;
    if (verdict === 'right') this.#right.add(number);
    const tries = (this.#tries.get(number) ?? 0) + 1;
    this.#tries.set(number, tries);
    const worked = form.parentElement?.querySelector('.kit-worked');
    if (worked && (verdict === 'right' || tries >= TRIES))
      worked.innerHTML = `<details><summary>The working</summary>${stepsHtml(item)}</details>`;
    const score = this.#part('score');
    if (score) score.textContent = `${this.#right.size} of ${this.#set?.count ?? 0} right.`;
  };

  #clicked = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    const does = button?.dataset['does'];
    if (!does || !this.#set) return;
    if (does === 'print') print();
    else if (does === 'another') {
      const seed = this.#form?.elements.namedItem('seed');
      if (!(seed instanceof HTMLInputElement)) return;
      seed.value = String(crypto.getRandomValues(new Uint32Array(1))[0] ?? 0);
      seed.dispatchEvent(new Event('input', { bubbles: true }));
    } else void exportsOf[does]?.(this.#set);
  };
}

/** A sheet that stands on the page already keeps its place, and only says where it now lies. */
function readdress(place: HTMLElement, html: string): void {
  const fresh = document.createElement('template');
  fresh.innerHTML = html;
  for (const part of ['.kit-address', '.kit-qr']) {
    const [old, now] = [place.querySelector(part), fresh.content.querySelector(part)];
    if (old && now) old.replaceWith(now);
  }
}
