import type { Control } from '../lineup/controls.ts';
import type { LineUpEntry } from '../lineup/schema.ts';
import type { Place } from '../plots/figure.ts';

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
export function placesOf(svg: Drawn, width: number): ((event: MouseEvent) => Place) | undefined {
  const [x, y] = [svg.scale?.('x'), svg.scale?.('y')];
  if (!x || !y) return undefined;
  const { left, top, width: shown } = svg.getBoundingClientRect();
  const perPx = width / shown;
  return ({ clientX, clientY }) => ({
    x: along(x, (clientX - left) * perPx),
    y: along(y, (clientY - top) * perPx),
  });
}

/** The nearest value a control's slider could stand at. */
export function settled({ min, max, last, step }: Control, entry: LineUpEntry, value: number): number {
  const steps = Math.round((value - min) / step);
  const nearest = Number((min + steps * step).toFixed(6));
  return Math.min(last?.(entry) ?? max, Math.max(min, nearest));
}
