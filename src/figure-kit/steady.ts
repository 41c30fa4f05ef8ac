import * as Plot from '@observablehq/plot';
import type { Markish, PlotOptions, RenderableMark, RenderFunction, ScaleOptions } from '@observablehq/plot';

type Axis = 'x' | 'y';

/** Marks that are drawn again only where an axis they stand by, or what they are made of, is another than before. */
export interface Steady {
  by: readonly Axis[];
  /** All that they are made of. */
  of: unknown;
  make(): RenderableMark | (RenderableMark | null)[];
}

/** What a figure gives: Plot's options, with steady marks among the others. */
export interface Drawing extends Omit<PlotOptions, 'marks'> {
  marks: readonly (Markish | Steady)[];
}

export const steady = (by: readonly Axis[], of: unknown, make: Steady['make']): Steady => ({ by, of, make });

const isSteady = (mark: Markish | Steady): mark is Steady =>
  typeof mark === 'object' && mark !== null && 'make' in mark;

/** What an SVG was drawn from, and the nodes of its steady marks, in their order. */
interface Laid {
  drawing: Drawing;
  marks: readonly { mark: Steady; nodes: readonly SVGElement[] }[];
}

type Drawn = ReturnType<typeof Plot.plot>;

const laid = new WeakMap<Element, Laid>();

/** Whether two values come to the same, member by member; functions where they are the same one. */
function alike(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const [names, others] = [Object.keys(one), Object.keys(other)];
  return (
    names.length === others.length &&
    names.every((name) => alike(one[name as keyof object], other[name as keyof object]))
  );
}

/** The axes of two drawings that are the same, as far as what was asked for tells. */
function stillAxes(now: Drawing, before: Drawing): Axis[] {
  const { x, y, marks: _marks, ...frame } = now;
  const { x: wasX, y: wasY, marks: _were, ...wasFrame } = before;
  if (!alike(frame, wasFrame)) return [];
  return [...(alike(x, wasX) ? ['x' as const] : []), ...(alike(y, wasY) ? ['y' as const] : [])];
}

function sameScale(axis: Axis, now: Drawn, before: Drawn): boolean {
  const [one, other] = [now.scale(axis), before.scale(axis)];
  return alike([one?.type, one?.domain, one?.range], [other?.type, other?.domain, other?.range]);
}

/** What of a scale's options is its axis'. */
const axisParts = [
  'ticks',
  'tickSize',
  'tickFormat',
  'tickRotate',
  'label',
  'labelAnchor',
  'labelArrow',
  'labelOffset',
] as const satisfies readonly (keyof ScaleOptions)[];

/** An axis of the x scale with its ticks at these values, or as its options say. */
export const axisX = (at: readonly unknown[] | null, options: Plot.AxisXOptions): Steady =>
  steady(['x'], [at, options], () => parted(at ? Plot.axisX(at, options) : Plot.axisX(options)));

/** The same of the y scale. */
export const axisY = (at: readonly unknown[] | null, options: Plot.AxisYOptions): Steady =>
  steady(['y'], [at, options], () => parted(at ? Plot.axisY(at, options) : Plot.axisY(options)));

/** Ticks, their labels and the axis' own: a list of marks, which its type does not say. */
const parted = (mark: Plot.CompoundMark): RenderableMark[] => mark as unknown as RenderableMark[];

/** The axis that Plot would add of itself, as steady marks. */
function axisOf(axis: Axis, scale: ScaleOptions | undefined): Steady[] {
  if (!scale || scale.axis === null) return [];
  const asked = Object.fromEntries(axisParts.flatMap((part) => (part in scale ? [[part, scale[part]]] : [])));
  const options = typeof scale.axis === 'string' ? { ...asked, anchor: scale.axis } : asked;
  return [axis === 'x' ? axisX(null, options) : axisY(null, options)];
}

/** The mark, and on a list the node it is drawn as. */
function noting(mark: RenderableMark, nodes: SVGElement[]): RenderableMark {
  const render = mark.render.bind(mark);
  mark.render = (...args) => {
    const node = render(...args);
    if (node) nodes.push(node);
    return node;
  };
  return mark;
}

/** Draws with what of an earlier drawing still stands: by these axes. */
function plotted(drawing: Drawing, still: readonly Axis[], before?: Laid): Drawn {
  const steadyMarks: { mark: Steady; nodes: SVGElement[] }[] = [];
  const marks = drawing.marks.map((mark): Markish => {
    if (!isSteady(mark)) return mark;
    const was = before?.marks[steadyMarks.length];
    const nodes: SVGElement[] = [];
    steadyMarks.push({ mark, nodes });
    if (
      was &&
      alike(mark.by, was.mark.by) &&
      mark.by.every((axis) => still.includes(axis)) &&
      alike(mark.of, was.mark.of)
    ) {
      nodes.push(...was.nodes);
      return nodes.map(
        (node): RenderFunction =>
          () =>
            node,
      );
    }
    return [mark.make()].flat().map((made) => made && noting(made, nodes));
  });
  const drawn = Plot.plot({ ...drawing, marks });
  laid.set(drawn, { drawing, marks: steadyMarks });
  return drawn;
}

/**
 * What Plot draws, its axes as steady marks. It takes over the nodes of those that an earlier drawing, which is to be
 * thrown away, shows the same.
 */
export function plot(asked: Drawing, before?: Element | null): Drawn {
  const { x, y } = asked;
  const drawing: Drawing = {
    ...asked,
    ...(x && { x: { ...x, axis: null } }),
    ...(y && { y: { ...y, axis: null } }),
    marks: [...axisOf('y', y), ...axisOf('x', x), ...asked.marks],
  };
  const was = before ? laid.get(before) : undefined;
  if (!was) return plotted(drawing, []);
  // A margin that is not given is made to fit the marks, of which those taken over say nothing.
  const fixed = [asked.marginTop, asked.marginRight, asked.marginBottom, asked.marginLeft].every(
    Number.isFinite,
  );
  const still = fixed ? stillAxes(drawing, was.drawing) : [];
  const drawn = plotted(drawing, still, was);
  // Where a scale is made to fit the marks, it may have become another.
  return still.every((axis) => sameScale(axis, drawn, before as Drawn)) ? drawn : plotted(drawing, []);
}
