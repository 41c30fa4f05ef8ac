import * as Plot from '@observablehq/plot';
import { measures } from '../../model/index.ts';
import { arrows } from '../../figure-kit/arrow.ts';
import type { Figure, Handle, Place, Size } from '../../figure-kit/figure.ts';
import { namedText } from '../../figure-kit/named-text.ts';
import { halfOutline, thicknessAboveApexMm } from '../../figure-kit/outline.ts';
import { tickStep } from '../../figure-kit/plane.ts';
import type { Points } from '../../figure-kit/plane.ts';
import { segmentEnds } from '../../figure-kit/segments.ts';
import { nameWithin, textPx } from '../../figure-kit/short-name.ts';
import { inFigures, short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import {
  edgesCaption,
  edgesOf,
  edgesTable,
  lengthShownMm,
  lyingRoom,
  measuresSaid,
  thickestMm,
  unknownOf,
} from './section.ts';
import type { SceneEdge } from './section.ts';

/** How long an arrow at a shoulder is, and how near it ends, px. */
const arrowPx = 20;
const apartPx = 3;
/** The ruler below, px. */
const rulerPx = 44;
/** A handle is taken within this, px. */
const nearPx = 12;
/** Extents are rounded up to these, so that the drawing stays where it is while it is dragged, px. */
const evenPx = 12;
/** As high as two slim blades may need: what stands below them then stays in its place, whichever of these they are. */
const leastPx = { wide: 308, narrow: 248 };
/** How far a torn end bulges, px. */
const tornPx = 5;

const even = (px: number): number => Math.ceil(px / evenPx) * evenPx;

/** An edge with its place on the sheet, px from the top. */
interface Placed extends SceneEdge {
  label: { name: string; rest: string; startPx: number; topPx: number };
  abovePx: number;
  belowPx: number;
}

/** Where one edge needs room: its label stands over the thinnest part that its words leave it. */
function placed(edge: SceneEdge, { width, narrow }: Size, lengthMm: number, pxPerMm: number): Placed {
  const side = lyingRoom[narrow ? 'narrow' : 'wide'].sidePx;
  const name = nameWithin(edge.name, narrow ? 120 : 260);
  const rest = measuresSaid(edge, narrow);
  const shoulderPx = edge.shape.shoulder.upMm * pxPerMm;
  const wide = textPx(name) + textPx(rest);
  const startPx = Math.max(0, Math.min(shoulderPx + 10, width - 2 * side - wide));
  const under = [0, 0.25, 0.5, 0.75, 1].map((part) => Math.min(lengthMm, (startPx + part * wide) / pxPerMm));
  const halfPx = (upMm: number): number => (thicknessAboveApexMm(edge.knife, upMm) / 2) * pxPerMm;
  const shoulderHalfPx = (edge.shape.edgeMm / 2) * pxPerMm;
  // Where the label has to begin before the shoulder it clears the arrow as well.
  const overArrow = startPx < shoulderPx + 8 ? arrowPx : 8;
  const topPx = Math.max(shoulderHalfPx + overArrow, ...under.map(halfPx)) + 10;
  const halfThickPx = (thickestMm(edge, lengthMm) / 2) * pxPerMm;
  return {
    ...edge,
    label: { name, rest, startPx, topPx },
    abovePx: even(Math.max(halfThickPx + 4, topPx + 18, shoulderHalfPx + arrowPx + 6)),
    belowPx: even(Math.max(halfThickPx, shoulderHalfPx + arrowPx) + 6),
  };
}

/** One scale for both, in both directions, and where each lies. */
function layoutOf(scene: Scene, size: Size) {
  const { width, narrow } = size;
  const { sidePx: side, usualMm, thickPx } = lyingRoom[narrow ? 'narrow' : 'wide'];
  const lengthPx = width - 2 * side;
  const edges = edgesOf(scene);
  const lengthMm = lengthShownMm(edges, usualMm, lengthPx, thickPx);
  const pxPerMm = lengthPx / lengthMm;
  const both = edges.map((edge) => placed(edge, size, lengthMm, pxPerMm));
  const neededPx = both.reduce((sum, { abovePx, belowPx }) => sum + abovePx + belowPx, rulerPx);
  const heightPx = Math.max(neededPx, leastPx[narrow ? 'narrow' : 'wide']);
  let topPx = 0;
  const lying = both.map((edge) => {
    const centreMm = (heightPx - topPx - edge.abovePx) / pxPerMm;
    topPx += edge.abovePx + edge.belowPx;
    return { ...edge, centreMm };
  });
  return { lengthMm, pxPerMm, heightPx, side, lying, width };
}
type Layout = ReturnType<typeof layoutOf>;
type Lying = Layout['lying'][number];

/** The whole outline of a section that lies with its tip to the left, its end torn off. */
function outline({ knife, centreMm }: Lying, { lengthMm, pxPerMm }: Layout): Points {
  const half = halfOutline(knife, lengthMm);
  const end = half.at(-1)?.halfMm ?? 0;
  const torn = Array.from({ length: 15 }, (_, step): [number, number] => {
    const part = (step + 1) / 16;
    return [lengthMm + (tornPx / pxPerMm) * Math.sin(2 * Math.PI * part), centreMm + end * (1 - 2 * part)];
  });
  return [
    ...half.map(({ upMm, halfMm }): [number, number] => [upMm, centreMm + halfMm]),
    ...torn,
    ...[...half].reverse().map(({ upMm, halfMm }): [number, number] => [upMm, centreMm - halfMm]),
  ];
}

/** The ruler below both: mm from the edge. */
function rulerMarks({ lengthMm, pxPerMm }: Layout): Plot.RenderableMark[] {
  const y = (rulerPx - 10) / pxPerMm;
  const step = tickStep(40 / pxPerMm);
  const count = Math.floor(lengthMm / step + 1e-9);
  const words = 'mm from the edge';
  const numbers = Array.from({ length: count + 1 }, (_, at) => inFigures(at * step, 6));
  const small = Array.from(
    { length: Math.floor((lengthMm / step) * 4 + 1e-9) + 1 },
    (_, at) => (at * step) / 4,
  );
  const tick = (long: number) => (x: number) => ({ x1: x, x2: x, y1: y, y2: y - long / pxPerMm });
  return [
    Plot.link(
      [{ x1: 0, x2: lengthMm, y1: y, y2: y }, ...small.map(tick(5)), ...[...numbers, lengthMm].map(tick(9))],
      { ...segmentEnds, className: 'kf-ruler' },
    ),
    Plot.text(
      numbers.filter((number) => (lengthMm - number) * pxPerMm > textPx(words)),
      {
        x: (number: number) => number,
        y,
        text: (number: number) => short(number),
        dy: 20,
        className: 'kf-faint',
      },
    ),
    Plot.text([words], { x: lengthMm, y, dy: 20, textAnchor: 'end', className: 'kf-faint' }),
  ];
}

/** The shoulders of an edge, on both sides of its centre line. */
const shoulders = ({ shape, centreMm }: Lying): [side: number, x: number, y: number][] =>
  [1, -1].map((side) => [side, shape.shoulder.upMm, centreMm + side * shape.shoulder.halfMm]);

/** The outline, its centre line, the arrows at its shoulder, and what can be taken hold of. */
function edgeMarks(edge: Lying, layout: Layout): Plot.Markish[] {
  const { pxPerMm, lengthMm } = layout;
  const px = (pixels: number): number => pixels / pxPerMm;
  const unknown = unknownOf(edge.knife).length > 0;
  const centre = { x1: px(-10), x2: lengthMm + px(10), y1: edge.centreMm, y2: edge.centreMm };
  const corners = shoulders(edge);
  return [
    Plot.line(outline(edge, layout), { className: unknown ? 'kf-blade kf-not-known' : 'kf-blade' }),
    Plot.link([centre], { ...segmentEnds, className: 'kf-centre' }),
    ...arrows(
      corners.map(([side, x, y]) => ({
        x1: x,
        x2: x,
        y1: y + side * px(arrowPx),
        y2: y + side * px(apartPx),
      })),
      pxPerMm,
    ),
    Plot.dot(
      corners.map(([, x, y]) => [x, y]),
      { r: 3.5, className: 'kf-handle' },
    ),
    namedText([
      {
        x: px(edge.label.startPx),
        y: edge.centreMm + px(edge.label.topPx),
        name: edge.label.name,
        rest: edge.label.rest,
      },
    ]),
  ];
}

/** Nearer to where the bevel begins than this a flank says too little of its angle, px. */
const leastHoldPx = 6;

/** The angle of a flank that runs through a place, degrees per side. */
const flankAngle =
  ({ shape, centreMm }: Lying, leastMm: number) =>
  ({ x, y }: Place): number => {
    const across = Math.max(0, Math.abs(y - centreMm) - shape.foot.halfMm);
    return (Math.atan2(across, Math.max(x - shape.foot.upMm, leastMm)) * 180) / Math.PI;
  };

/** Both edges in section, lying one above the other, to one scale in both directions. */
export const edgesFigure: Figure = {
  id: 'edges',
  title: ({ subject, baseline }) => `The edges of ${baseline.name} and ${subject.name}`,
  units: 'mm and degrees per side',
  scale: 'to scale, both directions alike',
  reading: () => 'as entered',
  source: 'derived',
  options(scene, size) {
    const layout = layoutOf(scene, size);
    const { heightPx, pxPerMm, side, width } = layout;
    return {
      width,
      height: heightPx,
      marginTop: 0,
      marginRight: 0,
      marginBottom: 0,
      marginLeft: 0,
      x: { domain: [-side / pxPerMm, (width - side) / pxPerMm], axis: null },
      y: { domain: [0, heightPx / pxPerMm], axis: null },
      marks: [...layout.lying.flatMap((edge) => edgeMarks(edge, layout)), ...rulerMarks(layout)],
    };
  },
  /**
   * The shoulder of either edge by its thickness, the flank below it by its angle. Where it is taken hold of changes
   * nothing: the section follows from there.
   */
  drag(scene, size, at): Handle | undefined {
    const layout = layoutOf(scene, size);
    const { pxPerMm } = layout;
    const edge = layout.lying.find(
      ({ centreMm, shape }) => Math.abs(at.y - centreMm) <= shape.shoulder.halfMm + nearPx / pxPerMm,
    );
    if (!edge) return undefined;
    const { role, shape, centreMm } = edge;
    const equal = role === 'subject' ? scene.entry.madeEqual : [];
    const bevelPx = (shape.shoulder.upMm - shape.foot.upMm) * pxPerMm;
    const away = (at.x - shape.shoulder.upMm) * pxPerMm;
    if (Math.abs(away) <= Math.min(nearPx, Math.max(bevelPx / 2, nearPx / 2)))
      return equal.includes('edgeMm')
        ? undefined
        : {
            control: `${role}.edge`,
            typed: true,
            within: { low: 0.01, high: measures.edgeMm.high },
            value: ({ y }) => shape.edgeMm + 2 * (Math.abs(y - centreMm) - Math.abs(at.y - centreMm)),
          };
    if (away > 0 || at.x * pxPerMm < -nearPx || equal.includes('angleDeg')) return undefined;
    const { low, high } = measures.angleDeg;
    const angleThrough = flankAngle(edge, leastHoldPx / pxPerMm);
    return {
      control: `${role}.angle`,
      typed: true,
      within: { low, high },
      value: (to) => shape.angleDeg + angleThrough(to) - angleThrough(at),
    };
  },
  table: edgesTable,
  caption: edgesCaption,
};
