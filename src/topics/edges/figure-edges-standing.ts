import * as Plot from '@observablehq/plot';
import { isUnknown } from '../../model/index.ts';
import { arrows } from '../../figure-kit/arrow.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { halfOutline, thicknessAboveApexMm } from '../../figure-kit/outline.ts';
import { pxPlane, tickStep } from '../../figure-kit/plane.ts';
import type { Points } from '../../figure-kit/plane.ts';
import { segmentEnds } from '../../figure-kit/segments.ts';
import type { Segment } from '../../figure-kit/segments.ts';
import { nameWithin } from '../../figure-kit/short-name.ts';
import { short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { ropeMarks } from './rope.ts';
import { edgesCaption, edgesOf, edgesTable, lengthShownMm, unknownOf } from './section.ts';
import type { SceneEdge } from './section.ts';

/** The measures of a wide and a narrow sheet, px; `usualMm` of blade are shown of edges of a common size. */
const rooms = {
  wide: {
    height: 500,
    usualMm: 6,
    topPx: 44,
    tipPx: 382,
    ropePx: 378,
    strandPx: 96,
    thickPx: 110,
    arcPx: 138,
    labelPx: 74,
    stands: [0.32, 0.7],
    unit: 'kf-unit',
  },
  narrow: {
    height: 240,
    usualMm: 4,
    topPx: 26,
    tipPx: 180,
    ropePx: 177,
    strandPx: 52,
    thickPx: 46,
    arcPx: 72,
    labelPx: 54,
    stands: [0.25, 0.73],
    unit: 'kf-unit-small',
  },
} as const;
type Room = (typeof rooms)['wide' | 'narrow'];

/** How far a torn end bulges, px. */
const tornPx = 8;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** One edge as it stands, px. */
interface Standing extends SceneEdge {
  centre: number;
  shoulderY: number;
  shoulderHalf: number;
  /** Half as thick as at a height of the drawing. */
  halfAt(y: number): number;
  points: Points;
}

/** One scale for both, in both directions, and where each stands. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const room: Room = narrow ? rooms.narrow : rooms.wide;
  const edges = edgesOf(scene);
  const bladePx = room.tipPx - room.topPx;
  const lengthMm = lengthShownMm(edges, room.usualMm, bladePx, room.thickPx, 1.8);
  const pxPerMm = bladePx / lengthMm;
  const standing = edges.map((edge, index): Standing => {
    const centre = (room.stands[index] ?? 0.5) * width;
    const half = halfOutline(edge.knife, lengthMm).map(({ upMm, halfMm }): [number, number] => [
      halfMm * pxPerMm,
      room.tipPx - upMm * pxPerMm,
    ]);
    const end = half.at(-1)?.[0] ?? 0;
    const torn = Array.from({ length: 15 }, (_, step): [number, number] => {
      const part = (step + 1) / 16;
      const bulge = Math.min(tornPx, end) * Math.sin(2 * Math.PI * part);
      return [centre + end * (1 - 2 * part), room.topPx - bulge];
    });
    return {
      ...edge,
      centre,
      shoulderY: room.tipPx - edge.shape.shoulder.upMm * pxPerMm,
      shoulderHalf: edge.shape.shoulder.halfMm * pxPerMm,
      halfAt: (y) =>
        (thicknessAboveApexMm(edge.knife, Math.min(lengthMm, Math.max(0, (room.tipPx - y) / pxPerMm))) / 2) *
        pxPerMm,
      points: [
        ...half.map(([out, y]): [number, number] => [centre + out, y]),
        ...torn,
        ...[...half].reverse().map(([out, y]): [number, number] => [centre - out, y]),
      ],
    };
  });
  return { room, pxPerMm, standing };
}

type Layout = ReturnType<typeof layoutOf>;

/** A text of the sheet, px. */
interface Said {
  x: number;
  y: number;
  text: string;
}

const texts = (all: readonly Said[], options: Plot.TextOptions): Plot.Text =>
  Plot.text(all, { x: 'x', y: 'y', text: 'text', ...options });

/** The arc clears the arrows at the shoulder; of a wide angle it is nearer to the tip, so that its label has room. */
function arcRadius({ shape, shoulderY }: Standing, room: Room, width: number): number {
  const most = (room.stands[0] * width - room.labelPx) / Math.sin(radians(shape.angleDeg));
  const radius = Math.min(room.arcPx, most);
  const slant = (room.tipPx - shoulderY) / Math.cos(radians(shape.angleDeg));
  const clear = 34;
  if (Math.abs(radius - slant) >= clear) return radius;
  return slant + clear <= most ? slant + clear : Math.max(24, slant - clear);
}

/** The angle per side: an arc from the axis to the flank, which is drawn on as a broken line. */
function angleMarks(edge: Standing, room: Room, width: number): Plot.Markish[] {
  const { centre, shape, knife, halfAt } = edge;
  const { angleDeg } = shape;
  const radius = arcRadius(edge, room, width);
  const on = (degrees: number, out = radius): [number, number] => [
    centre - out * Math.sin(radians(degrees)),
    room.tipPx - out * Math.cos(radians(degrees)),
  ];
  const arc = Array.from({ length: 17 }, (_, step) => on((angleDeg * step) / 16));
  const [endX, endY] = on(angleDeg);
  const [farX, farY] = on(angleDeg, radius + 12);
  const labelX = Math.min(endX, centre - halfAt(endY)) - 7;
  const unit = `kf-faint ${room.unit}`;
  const said = isUnknown(knife.angleDeg) ? ['angle', 'not known'] : [`${short(angleDeg)}°`, 'per side'];
  const [first = '', second = ''] = said;
  return [
    Plot.link([{ x1: centre, y1: room.tipPx, x2: farX, y2: farY }], {
      ...segmentEnds,
      className: 'kf-extended',
    }),
    Plot.line(arc, { className: 'kf-thin' }),
    texts([{ x: labelX, y: endY - 8, text: first }], { textAnchor: 'end', className: 'kf-measure' }),
    texts([{ x: labelX, y: endY + 8, text: second }], { textAnchor: 'end', className: unit }),
  ];
}

/** The thickness behind the edge: arrows at the shoulder, with their measure above the right one. */
function thicknessMarks(edge: Standing, room: Room, narrow: boolean): Plot.Markish[] {
  const { centre, shoulderY: y, shoulderHalf, shape, knife, halfAt } = edge;
  const reach = narrow ? 15 : 20;
  const inward = [1, -1].map((side): Segment => {
    const x = centre + side * shoulderHalf;
    return { x1: x + side * reach, y1: y, x2: x + side * 2, y2: y };
  });
  const unknown = isUnknown(knife.edgeMm);
  const value = unknown ? 'thickness' : `${short(shape.edgeMm)} mm`;
  const more = unknown ? ['not known'] : narrow ? ['behind', 'the edge'] : ['behind the edge'];
  const lines = [value, ...more];
  // Of a shoulder close to the tip the measure stands above the rope.
  const top = Math.min(y, room.ropePx - 14) - 12 - 14 * (lines.length - 1);
  const x =
    centre + Math.max(shoulderHalf, ...lines.map((_, line) => halfAt(top + 14 * line))) + (narrow ? 8 : 14);
  const said = lines.map((text, line): Said => ({ x, y: top + 15 * line, text }));
  return [
    ...arrows(inward, 1),
    texts(said.slice(0, 1), { textAnchor: 'start', className: 'kf-measure' }),
    texts(said.slice(1), { textAnchor: 'start', className: `kf-faint ${room.unit}` }),
  ];
}

function edgeMarks(edge: Standing, { room }: Layout, { width, narrow }: Size): Plot.Markish[] {
  const { centre, points, knife, halfAt, name } = edge;
  const unknown = unknownOf(knife).length > 0;
  const nameY = room.topPx + (narrow ? 16 : 34);
  const nameX = centre + halfAt(nameY) + 8;
  // Up to the next blade, or to the end of the sheet.
  const nameRoom =
    (edge.role === 'baseline' ? room.stands[1] * width - room.thickPx / 2 : width - 6) - nameX - 2;
  return [
    Plot.line(points as [number, number][], { className: unknown ? 'kf-blade kf-not-known' : 'kf-blade' }),
    Plot.link([{ x1: centre, x2: centre, y1: room.topPx - 14, y2: room.tipPx + 14 }], {
      ...segmentEnds,
      className: 'kf-centre',
    }),
    ...angleMarks(edge, room, width),
    ...thicknessMarks(edge, room, narrow),
    texts([{ x: nameX, y: nameY, text: nameWithin(name, nameRoom, narrow ? 14.5 : 19) }], {
      textAnchor: 'start',
      className: narrow ? 'kf-measure' : 'kf-big-name',
    }),
  ];
}

/** A bar of a round length, at the lower right. */
function scaleMarks(width: number, { room, pxPerMm }: Layout): Plot.Markish[] {
  const mm = tickStep(36 / pxPerMm);
  const [end, y] = [width - 16, room.height - 14];
  const start = end - mm * pxPerMm;
  const across = [start, end].map((x): Segment => ({ x1: x, x2: x, y1: y - 5, y2: y + 5 }));
  return [
    Plot.link([{ x1: start, x2: end, y1: y, y2: y }, ...across], { ...segmentEnds, className: 'kf-thin' }),
    texts([{ x: (start + end) / 2, y: y - 12, text: `${short(mm)} mm` }], { className: 'kf-on-rope' }),
  ];
}

/** Both edges in section, standing on the rope they cut, to one scale in both directions. */
export const edgesStanding: Figure = {
  id: 'edges-standing',
  title: ({ subject, baseline }) => `The edges of ${baseline.name} and ${subject.name}, on a rope`,
  units: 'mm and degrees per side',
  scale: 'edges to scale, both directions alike; the rope is not',
  reading: () => 'as entered',
  source: 'derived',
  options(scene, size) {
    const layout = layoutOf(scene, size);
    const { room, standing } = layout;
    return {
      ...pxPlane(size.width, room.height),
      marks: [
        ...ropeMarks(size.width, room.ropePx, room.strandPx),
        ...standing.flatMap((edge) => edgeMarks(edge, layout, size)),
        ...scaleMarks(size.width, layout),
      ],
    };
  },
  table: edgesTable,
  caption: edgesCaption,
};
