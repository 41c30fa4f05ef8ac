import type { Scene } from '../lineup/scene.ts';
import { settled } from '../lineup/settled.ts';
import { sizes } from '../plots/figure.ts';
import type { Figure, Place } from '../plots/figure.ts';
import { store } from './page.ts';
import { registry } from './topics.ts';

/** What a drawing tells of its axes; the library that draws puts it on the SVG. */
interface Scale {
  domain: readonly unknown[];
  range: readonly number[];
  invert?(px: number): number;
}
interface Drawn extends SVGSVGElement {
  scale?(name: 'x' | 'y'): Scale | undefined;
}

const along = ({ domain, range, invert }: Scale, px: number): number => {
  if (invert) return invert(px);
  const [from = 0, to = 1] = range;
  return Math.floor((domain.length * (px - from)) / (to - from));
};

/**
 * Turns a pointer's place on the screen into a place in the drawing, by the axes it has now: a drawing that changes
 * under the hand does not run away from it. Nothing where it has no such axes.
 */
function placesOf(svg: Drawn, width: number): ((event: MouseEvent) => Place) | undefined {
  const [x, y] = [svg.scale?.('x'), svg.scale?.('y')];
  if (!x || !y) return undefined;
  const { left, top, width: shown } = svg.getBoundingClientRect();
  const perPx = width / shown;
  return ({ clientX, clientY }) => ({
    x: along(x, (clientX - left) * perPx),
    y: along(y, (clientY - top) * perPx),
  });
}

/**
 * Takes hold of what a figure shows where a pointer goes down: until the pointer is up, what it would be there is
 * written as its slider would write it. Where nothing can be dragged, nothing happens.
 *
 * @param drawing holds the SVG, which is drawn anew at every step
 */
export function takeHold(event: PointerEvent, figure: Figure, scene: Scene, drawing: HTMLElement): void {
  const svg = drawing.querySelector<SVGSVGElement>(':scope > svg');
  if (!svg || event.button !== 0 || !(event.target instanceof Element) || !svg.contains(event.target)) return;
  const size = sizes[drawing.dataset['size'] === 'narrow' ? 'narrow' : 'wide'];
  const placeOf = placesOf(svg, size.width);
  const handle = placeOf && figure.drag?.(scene, size, placeOf(event));
  if (!placeOf || !handle) return;
  // A drag selects no text.
  event.preventDefault();
  drawing.setPointerCapture(event.pointerId);
  const control = registry().control(handle.control);
  const follow = (at: PointerEvent): void => {
    const value = settled(control, store.entry.value, handle.value(placeOf(at)));
    store.change((entry) => control.write(entry, value), handle.control);
  };
  const ended = new AbortController();
  for (const end of ['pointerup', 'pointercancel'])
    drawing.addEventListener(end, () => ended.abort(), { signal: ended.signal });
  drawing.addEventListener('pointermove', follow, { signal: ended.signal });
  follow(event);
}
