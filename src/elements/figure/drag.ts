import type { Control } from '../../topics/base/controls.ts';
import type { Scene } from '../../scene/scene.ts';
import { sizes } from '../../figure-kit/figure.ts';
import type { Figure, Handle, Place } from '../../figure-kit/figure.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { changeOwn, store } from '../page/page.ts';
import { registry } from '../page/topics.ts';
import { valueAt } from './value-at.ts';

/** What a drawing tells of its axes; the library that draws puts it on the SVG. */
interface Scale {
  domain: readonly unknown[];
  range: readonly number[];
  invert?(px: number): number;
}
interface Drawn extends SVGSVGElement {
  scale?(name: 'x' | 'y'): Scale | undefined;
}

/** A figure as it stands on the page. */
export interface Shown {
  figure: Figure;
  scene: Scene;
  /** Holds the SVG, which is drawn anew at every step. */
  drawing: HTMLElement;
}

/** Where a pointer is on the screen. */
type Point = Pick<MouseEvent, 'clientX' | 'clientY'>;

/** What would be taken hold of, and what makes a pointer's place one in the drawing. */
interface Grip {
  handle: Handle;
  control: Control;
  placeOf(point: Point): Place;
}

/** This far outside the frame what stands at its edge can still be taken, px of the drawing. */
const slackPx = 12;
/** A finger takes what is this near, CSS px; farther off it scrolls the page. */
const fingerPx = 22;

const along = ({ domain, range, invert }: Scale, px: number): number => {
  if (invert) return invert(px);
  const [from = 0, to = 1] = range;
  return Math.floor((domain.length * (px - from)) / (to - from));
};

const within = ({ range }: Scale, px: number): boolean =>
  px >= Math.min(...range) - slackPx && px <= Math.max(...range) + slackPx;

/** What is dragged can be set without a pointer as well: by its slider, or by a field where it is one that is typed. */
const hasSlider = (control: string): boolean => document.querySelector(`kf-slider[of="${control}"]`) !== null;
const hasField = (): boolean => document.querySelector('kf-compare') !== null;

/** Writes what is dragged as the slider would, or as the field. Each drag is one step to undo, however long it takes. */
function write({ control, handle }: Grip, value: number, drag: string): void {
  const update = (entry: ComparisonEntry): ComparisonEntry => control.write(entry, value);
  if (hasSlider(handle.control)) store.change(update, drag, true);
  else changeOwn(update, drag, true);
}

/** How many drags there were: each has a name of its own. */
let drags = 0;

/**
 * What a pointer is over. Its place is told by the axes the drawing has now: one that changes under the hand does not
 * run away from it.
 */
function gripAt(event: MouseEvent, { figure, scene, drawing }: Shown): Grip | undefined {
  const svg = drawing.querySelector<Drawn>(':scope > svg');
  if (!svg || !(event.target instanceof Element) || !svg.contains(event.target)) return undefined;
  const [x, y] = [svg.scale?.('x'), svg.scale?.('y')];
  if (!x || !y) return undefined;
  const size = sizes[drawing.dataset['size'] === 'narrow' ? 'narrow' : 'wide'];
  const { left, top, width } = svg.getBoundingClientRect();
  const pxOf = ({ clientX, clientY }: Point): Place => ({
    x: ((clientX - left) * size.width) / width,
    y: ((clientY - top) * size.width) / width,
  });
  const placeOf = (point: Point): Place => {
    const px = pxOf(point);
    return { x: along(x, px.x), y: along(y, px.y) };
  };
  const px = pxOf(event);
  const handle = within(x, px.x) && within(y, px.y) ? figure.drag?.(scene, size, placeOf(event)) : undefined;
  return handle && (hasSlider(handle.control) || (handle.typed && hasField()))
    ? { handle, control: registry().control(handle.control), placeOf }
    : undefined;
}

/** The value a grip has at a point; nothing where the model refuses it. */
function valueOf({ handle, control, placeOf }: Grip, point: Point): number {
  try {
    return valueAt(handle, control, store.entry.value, placeOf(point));
  } catch (error) {
    if (error instanceof RangeError) return Number.NaN;
    throw error;
  }
}

/** Whether what is shown now stands within a finger's reach of a point. */
function isNear(grip: Grip, { clientX, clientY }: Point): boolean {
  const values = [
    [-fingerPx, 0],
    [fingerPx, 0],
    [0, -fingerPx],
    [0, fingerPx],
  ].map(([right = 0, down = 0]) => valueOf(grip, { clientX: clientX + right, clientY: clientY + down }));
  const now = grip.control.read(store.entry.value);
  const half = grip.control.step / 2;
  return Math.min(...values) - half <= now && now <= Math.max(...values) + half;
}

/**
 * Lets what a figure shows be dragged. A mouse takes it wherever it goes down, as on the way of a slider; a finger takes
 * only what it touches, and scrolls the page from everywhere else. Until the pointer is up, what would stand there is
 * written as its slider would write it.
 *
 * @param shown what stands in the element at the moment
 */
export function letDrag(element: HTMLElement, shown: () => Shown | undefined): void {
  let held: AbortController | undefined;

  element.addEventListener('pointermove', (event) => {
    const now = shown();
    if (now && !held) now.drawing.toggleAttribute('data-handle', gripAt(event, now) !== undefined);
  });

  element.addEventListener('pointerdown', (event) => {
    const now = shown();
    if (!now || held || event.button !== 0) return;
    const grip = gripAt(event, now);
    const isMouse = event.pointerType === 'mouse';
    if (!grip || !(isMouse || isNear(grip, event))) return;
    // A drag selects no text.
    event.preventDefault();
    now.drawing.setPointerCapture(event.pointerId);
    const drag = `${grip.handle.control} dragged ${(drags += 1)}`;
    const follow = (at: PointerEvent): void => {
      const value = valueOf(grip, at);
      if (Number.isFinite(value) && value !== grip.control.read(store.entry.value)) write(grip, value, drag);
    };
    const ended = new AbortController();
    held = ended;
    ended.signal.addEventListener('abort', () => (held = undefined));
    for (const end of ['pointerup', 'pointercancel', 'lostpointercapture'])
      now.drawing.addEventListener(end, () => ended.abort(), { signal: ended.signal });
    now.drawing.addEventListener('pointermove', follow, { signal: ended.signal });
    // What was typed stays as exact as it is until it is moved.
    if (isMouse && !grip.handle.typed) follow(event);
  });

  // What is held does not scroll the page as well; what goes down on a page that is scrolling holds nothing.
  element.addEventListener(
    'touchstart',
    (event) => {
      if (event.cancelable && held) event.preventDefault();
      else held?.abort();
    },
    { passive: false },
  );
}
