import type { Scene } from '../../scene/scene.ts';
import { sizes } from '../../figure-kit/figure.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { afterDrawing } from '../page/after-drawing.ts';
import type { Shown } from './drag.ts';
import { drawAtHand, fetchDraw } from './draw-at-hand.ts';
import { example } from '../page/page.ts';
import { Pause } from '../page/pause.ts';
import { SceneElement } from '../page/scene-element.ts';
import { registry } from '../page/topics.ts';
import { writeText } from '../page/write-text.ts';

/** How long the reader must pause before caption and table follow: they are read, not watched. */
const pauseMs = 250;

export class FigureElement extends SceneElement {
  #frame = 0;
  /** It will be drawn, and its caption written, in its turn. */
  #waits = false;
  #latest: Scene | undefined;
  /** What drags has been fetched. */
  #drags = false;
  /** The drawing of the size that has room, looked up only when the room changes: asking costs a layout. */
  #shown: HTMLElement | undefined;
  #resize = new ResizeObserver(() => {
    this.#look();
    if (!this.#waits) this.#draw();
  });
  /** Whether the reader sees it, or has it within a screen's reach. */
  #near = true;
  #view = new IntersectionObserver(
    (seen) => {
      this.#near = seen.at(-1)?.isIntersecting ?? true;
      if (this.dataset['stale'] === undefined) {
        if (!this.#waits) this.#drawNear();
      } else if (this.#near) this.#follow();
      else afterDrawing(this.#follow);
    },
    { rootMargin: '100% 0%' },
  );

  /** What is drawn. */
  protected get figure(): Figure {
    return registry().figure(this.of);
  }

  /** The same drawing for a wide and a narrow sheet, of which one is shown. */
  #drawings: readonly HTMLElement[] = [];

  #look(): void {
    this.#shown = this.#drawings.find((drawing) => drawing.getClientRects().length > 0);
  }

  override connectedCallback(): void {
    this.#drawings = [...this.querySelectorAll<HTMLElement>('.drawing')];
    for (const drawing of this.#drawings) drawing.dataset['drawn'] = 'yes';
    super.connectedCallback();
    this.#resize.observe(this);
    this.#view.observe(this);
    this.addEventListener('change', this.#choose);
    this.addEventListener('pointerover', this.#reach);
    // The pointer that brought the page to life may be over it already.
    if (this.matches(':hover')) this.#reach();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#resize.disconnect();
    this.#view.disconnect();
    this.removeEventListener('change', this.#choose);
    this.removeEventListener('pointerover', this.#reach);
    this.#pause.callOff();
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
  }

  /** How finely the reader wants it drawn, where the figure's own controls ask: 0 leaves it to the figure. */
  get #detail(): number {
    return Number(this.querySelector<HTMLSelectElement>('select[data-detail]')?.value ?? 0);
  }

  #choose = (event: Event): void => {
    if (!(event.target instanceof HTMLSelectElement) || event.target.dataset['detail'] === undefined) return;
    this.fetchLate();
    this.#forget();
    this.#draw();
  };

  /** What drags is fetched once a pointer is over a figure that can be dragged. */
  #reach = (): void => {
    if (this.#drags || this.dataset['drags'] === undefined) return;
    this.#drags = true;
    import('./drag.ts').then(
      ({ letDrag }) => {
        // What was built does not say where its axes run.
        this.#forget();
        this.#draw();
        letDrag(this, this.#standing);
      },
      // Fetched at the next pointer.
      () => (this.#drags = false),
    );
  };

  #standing = (): Shown | undefined =>
    this.#shown && this.#latest
      ? { figure: this.figure, scene: this.#latest, drawing: this.#shown }
      : undefined;

  /**
   * A drawing in view follows within the next frame; what is read, or out of sight, follows after a pause. Built with
   * the example, a figure shows it already; of another comparison it shows nothing until it is drawn, those in view first.
   */
  protected override show(scene: Scene): void {
    const first = this.#latest === undefined;
    this.#latest = scene;
    // What was built knows no guess.
    const isBuilt = scene.entry === example && scene.guess === null;
    if (first && isBuilt && this.#drawings.every(({ dataset }) => dataset['drawn'])) return;
    this.#waits = true;
    this.#makeRoom();
    this.#forget();
    if (first) {
      // What is hidden loses the focus: where the reader is in it already, it is drawn at once.
      if (scene.entry === example || this.matches(':focus-within')) this.#follow();
      else this.#comeIntoView();
      return;
    }
    // The figure under the reader's hand goes before the others on the page.
    if (this.matches(':focus-within, :hover')) this.#drawAtOnce();
    else afterDrawing(this.#drawNear);
    this.#pause.ask();
  }

  /** What was built at one size alone is drawn at the other as well. */
  #makeRoom(): void {
    const [only, other] = this.#drawings;
    if (!only || other || only.dataset['size'] !== 'narrow') return;
    const wide = only.cloneNode() as HTMLElement;
    wide.dataset['size'] = 'wide';
    only.before(wide);
    this.#drawings = [wide, only];
    this.#shown = undefined;
  }

  /** What is drawn is of something else than what is to be seen. */
  #forget(): void {
    for (const drawing of this.#drawings) delete drawing.dataset['drawn'];
  }

  /** Hides it until it is drawn. */
  #comeIntoView(): void {
    this.dataset['stale'] = 'yes';
    // Asked anew, the browser says at its next frame whether it is in view.
    this.#view.unobserve(this);
    this.#view.observe(this);
  }

  #follow = (): void => {
    if (!this.#latest) return;
    this.#waits = false;
    this.#draw();
    this.#write(this.#latest);
    delete this.dataset['stale'];
  };

  #pause = new Pause(pauseMs, this.#follow);

  /** Draws only the size that is on the page; the other follows when it comes to be shown. */
  #draw = (): void => {
    if (!this.#shown) this.#look();
    this.#drawIn(this.#shown);
  };

  protected override whatShows(): Promise<unknown> {
    return fetchDraw();
  }

  /** The drawing that is not shown as well. */
  override settle(): void {
    for (const drawing of this.#drawings) this.#drawIn(drawing);
    this.#follow();
  }

  #drawNear = (): void => {
    if (this.#near) this.#draw();
  };

  /** Once the change is done, and no more than once a frame: what moves more often is drawn with the next. */
  #drawAtOnce(): void {
    if (this.#frame !== 0) return;
    queueMicrotask(this.#draw);
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      this.#draw();
    });
  }

  #drawIn(drawing: HTMLElement | undefined): void {
    const scene = this.#latest;
    if (!scene || !drawing || drawing.dataset['drawn']) return;
    const draw = drawAtHand();
    if (!draw) {
      fetchDraw().then(this.#draw, () => undefined);
      return;
    }
    const size = drawing.dataset['size'] === 'narrow' ? 'narrow' : 'wide';
    const detail = this.#detail;
    const room = detail > 0 ? { ...sizes[size], detail } : sizes[size];
    drawing.replaceChildren(draw(this.figure, scene, room, document, `${this.figure.id}-${size}`));
    drawing.dataset['drawn'] = 'yes';
  }

  #write(scene: Scene): void {
    const { figure } = this;
    const { columns, rows } = figure.table(scene);
    this.querySelector('.sheet')?.toggleAttribute('data-invented', scene.entry.invented === true);
    this.#set('title', figure.title(scene));
    this.#set('reading', figure.reading(scene));
    this.#set('caption', figure.caption(scene));
    const table = this.place('table');
    if (!table) return;
    const cell = (name: 'th' | 'td', text: string, scope?: string) => {
      const element = Object.assign(document.createElement(name), { textContent: text });
      if (scope) element.setAttribute('scope', scope);
      return element;
    };
    const line = (cells: HTMLElement[]) => {
      const row = document.createElement('tr');
      row.append(...cells);
      return row;
    };
    table.querySelector('thead')?.replaceChildren(line(columns.map((text) => cell('th', text, 'col'))));
    table
      .querySelector('tbody')
      ?.replaceChildren(
        ...rows.map(([head = '', ...cells]) =>
          line([cell('th', head, 'row'), ...cells.map((text) => cell('td', text))]),
        ),
      );
  }

  #set(part: string, text: string): void {
    writeText(this.place(part), text);
  }
}
