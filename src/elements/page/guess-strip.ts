import { guessInRange, guessOfSum } from '../../phrases/guess-in-range.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import type { Scene } from '../../scene/scene.ts';
import { guessKeeper } from './guesses-kept.ts';
import { fetchLinks } from './links.ts';
import { guess, isOfAddress } from './page.ts';
import { SceneElement } from './scene-element.ts';
import { registry } from './topics.ts';
import { writeText } from './write-text.ts';

/**
 * A strip of a ruler that a guess is tapped on, above the fold that holds the answer. The guess itself is the page's; the
 * fold opens with it, and with a click on its summary.
 */
export class GuessStripElement extends SceneElement {
  #scene: Scene | undefined;
  #entry: ComparisonEntry | undefined;
  #keeper = guessKeeper();

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('click', this.#pressed);
    this.addEventListener('submit', this.#submitted);
    addEventListener('beforeprint', this.#onPaper);
    addEventListener('afterprint', this.#offPaper);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('click', this.#pressed);
    this.removeEventListener('submit', this.#submitted);
    removeEventListener('beforeprint', this.#onPaper);
    removeEventListener('afterprint', this.#offPaper);
  }

  /** Open for paper alone. */
  #forPaper = false;

  #onPaper = (): void => {
    this.#forPaper = this.querySelector('details')?.open === false;
    this.open();
  };

  #offPaper = (): void => {
    if (this.#forPaper) this.#close();
    this.#forPaper = false;
  };

  protected open(): void {
    const fold = this.querySelector('details');
    if (fold) fold.open = true;
  }

  #close(): void {
    const fold = this.querySelector('details');
    if (fold) fold.open = false;
  }

  protected override show(scene: Scene): void {
    const before = this.#entry;
    this.#scene = scene;
    this.#entry = scene.entry;
    if (scene.entry !== before) this.#begin(scene.entry, before === undefined);
    this.say(scene);
  }

  /**
   * Another comparison from the address: its answer waits for a guess, unless one is kept on this machine. What was opened
   * before the page was live stays open, and so does what the reader changes by hand.
   */
  #begin(entry: ComparisonEntry, isFirst: boolean): void {
    if (isFirst) {
      this.#showKept(entry);
      return;
    }
    // Only after the change is it known where it came from.
    queueMicrotask(() => {
      if (entry !== this.#entry || !isOfAddress(entry)) return;
      guess.value = null;
      this.#close();
      this.#showKept(entry);
    });
  }

  #showKept(entry: ComparisonEntry): void {
    if (!this.#keeper.any()) return;
    fetchLinks().then(
      ({ encodeLink }) => {
        const kept = this.#keeper.load(this.#keptUnder(encodeLink(entry)));
        if (kept === null || entry !== this.#entry || guess.peek() !== null) return;
        guess.value = kept;
        this.open();
      },
      // Without it the reader guesses anew.
      () => undefined,
    );
  }

  /** What stands on the page of the guess there is. */
  protected say(scene: Scene): void {
    const { guess: mine } = scene;
    this.toggleAttribute('data-guessed', mine !== null);
    if (mine === null) this.removeAttribute('data-changing');
    for (const chip of this.querySelectorAll<HTMLElement>('form.guess button[value]'))
      chip.setAttribute('aria-pressed', String(mine !== null && Number(chip.getAttribute('value')) === mine));
    writeText(this.place('verdict'), this.verdict(scene));
  }

  /** What is said of the guess, beside the range or the answer that is named; nothing before there is one. */
  protected verdict(scene: Scene): string {
    if (scene.guess === null) return '';
    return this.of === ''
      ? guessInRange(scene.guess, scene)
      : guessOfSum(scene.guess, registry().guess(this.of)(scene));
  }

  /** What a guess is kept under: a page of another question keeps its own. */
  #keptUnder(link: string): string {
    return `${this.of}${link}`;
  }

  #pressed = (event: Event): void => {
    const button = event.target instanceof Element ? event.target.closest('button') : null;
    // What the fold holds has buttons of its own.
    if (!button?.closest('form.guess')) return;
    if (button.value !== '') this.#guess(Number(button.value));
    else if (button.dataset['act'] === 'change') {
      this.toggleAttribute('data-changing', true);
      (this.querySelector<HTMLElement>('[aria-pressed=true]') ?? this.querySelector('input'))?.focus();
    }
  };

  #submitted = (event: Event): void => {
    if (!(event.target instanceof Element) || !event.target.matches('form.guess')) return;
    event.preventDefault();
    this.save();
  };

  protected get typed(): HTMLInputElement | null {
    return this.querySelector('form.guess input[type=text]');
  }

  /** Takes the number that was typed as the guess. */
  protected save(): void {
    const input = this.typed;
    if (!input) return;
    import('../../exercises/reader/index.ts').then(
      ({ readAnswer }) => {
        const read = readAnswer(input.value, 'times as long');
        input.toggleAttribute('aria-invalid', false);
        if (!read.ok) input.setAttribute('aria-invalid', 'true');
        writeText(this.place('problem'), read.ok ? '' : read.message);
        if (read.ok) this.#guess(read.value);
      },
      () =>
        writeText(
          this.place('problem'),
          'Your guess could not be read. Check the connection and save it again.',
        ),
    );
  }

  #guess(value: number): void {
    const entry = this.#entry;
    if (!this.#scene || !entry) return;
    this.removeAttribute('data-changing');
    writeText(this.place('problem'), '');
    guess.value = value;
    this.open();
    fetchLinks().then(
      ({ encodeLink }) => this.#keeper.keep(this.#keptUnder(encodeLink(entry)), value),
      // It then stands until the page is left.
      () => undefined,
    );
  }
}
