import type { Scene } from '../lineup/scene.ts';
import { draw } from '../plots/draw.ts';
import { sizes } from '../plots/figure.ts';
import type { Figure } from '../plots/figure.ts';
import { afterDrawing } from './after-drawing.ts';
import type { Shown } from './drag.ts';
import { SceneElement } from './scene-element.ts';
import { registry } from './topics.ts';
import { writeText } from './write-text.ts';

/** How long the reader must pause before caption and table follow: they are read, not watched. */
const pauseMs = 250;

export class FigureElement extends SceneElement {
  #timer = 0;
  #frame = 0;
  #latest: Scene | undefined;
  /** What drags has been fetched. */
  #drags = false;
  /** The drawing of the size that has room, looked up only when the room changes: asking costs a layout. */
  #shown: HTMLElement | undefined;
  #resize = new ResizeObserver(() => {
    this.#look();
    this.#draw();
  });
  /** Whether the reader sees it, or has it within a screen's reach. */
  #near = true;
  #view = new IntersectionObserver(
    (seen) => {
      this.#near = seen.at(-1)?.isIntersecting ?? true;
      if (this.#near) this.#draw();
    },
    { rootMargin: '100% 0%' },
  );

  /** What is drawn. */
  protected get figure(): Figure {
    return registry().figure(this.of);
  }

  #look(): void {
    this.#shown = [...this.querySelectorAll<HTMLElement>('.drawing')].find(
      (drawing) => drawing.getClientRects().length > 0,
    );
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#resize.observe(this);
    this.#view.observe(this);
    this.addEventListener('change', this.#choose);
    this.addEventListener('pointerover', this.#reach);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#resize.disconnect();
    this.#view.disconnect();
    this.removeEventListener('change', this.#choose);
    this.removeEventListener('pointerover', this.#reach);
    clearTimeout(this.#timer);
    cancelAnimationFrame(this.#frame);
  }

  /** How finely the reader wants it drawn, where the figure's own controls ask: 0 leaves it to the figure. */
  get #detail(): number {
    return Number(this.querySelector<HTMLSelectElement>('select[data-detail]')?.value ?? 0);
  }

  #choose = (event: Event): void => {
    if (!(event.target instanceof HTMLSelectElement) || event.target.dataset['detail'] === undefined) return;
    this.fetchLate();
    for (const drawing of this.querySelectorAll<HTMLElement>('.drawing')) delete drawing.dataset['drawn'];
    this.#draw();
  };

  /** What drags is fetched once a pointer is over a figure that can be dragged. */
  #reach = (): void => {
    if (this.#drags || this.dataset['drags'] === undefined) return;
    this.#drags = true;
    import('./drag.ts').then(
      ({ letDrag }) => letDrag(this, this.#standing),
      // Fetched at the next pointer.
      () => (this.#drags = false),
    );
  };

  #standing = (): Shown | undefined =>
    this.#shown && this.#latest
      ? { figure: this.figure, scene: this.#latest, drawing: this.#shown }
      : undefined;

  /** A drawing in view follows within the next frame; what is read, or out of sight, follows after a pause. */
  protected override show(scene: Scene): void {
    const first = this.#latest === undefined;
    this.#latest = scene;
    for (const drawing of this.querySelectorAll<HTMLElement>('.drawing')) delete drawing.dataset['drawn'];
    cancelAnimationFrame(this.#frame);
    clearTimeout(this.#timer);
    // What was built may belong to another line-up than the address's: the first time nothing waits.
    if (first) {
      this.#look();
      this.#draw();
      this.#write(scene);
      return;
    }
    // The figure under the reader's hand goes before the others on the page.
    if (this.matches(':focus-within, :hover')) this.#frame = requestAnimationFrame(this.#draw);
    else if (this.#near) afterDrawing(this.#draw);
    this.#timer = window.setTimeout(() => {
      this.#draw();
      this.#write(scene);
    }, pauseMs);
  }

  /** Draws only the size that is on the page; the other follows when it comes to be shown. */
  #draw = (): void => this.#drawIn(this.#shown);

  /** The drawing that is not shown as well. */
  override settle(): void {
    for (const drawing of this.querySelectorAll<HTMLElement>('.drawing')) this.#drawIn(drawing);
    if (this.#latest) this.#write(this.#latest);
  }

  #drawIn(drawing: HTMLElement | undefined): void {
    const scene = this.#latest;
    if (!scene || !drawing || drawing.dataset['drawn']) return;
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
