import * as Plot from '@observablehq/plot';
import { flatUm, scratchUm, toothOf, wearOf } from './numbers.ts';
import { anglesOf, frictionAngleAt, routesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, short, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import { dimensionLine, segmentEnds } from '../../figure-kit/segments.ts';
import type { Segment } from '../../figure-kit/segments.ts';
import { shortName } from '../../figure-kit/short-name.ts';

/** How deep both wedges are drawn, mm: equally deep, so that only the angle sets them apart. */
const deepMm = 1;
/** The drawing keeps its scale up to this angle per side. */
const roomForDeg = 30;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const widthMm = (angleDeg: number): number => 2 * deepMm * Math.tan(radians(angleDeg));

const wedgesOf = (scene: Scene) => {
  const { baseline, subject } = anglesOf(scene);
  return [
    { name: scene.baseline.name, angleDeg: baseline.bevel },
    { name: scene.subject.name, angleDeg: subject.bevel },
  ];
};

/** So many px in mm of the drawing. */
type Px = (pixels: number) => number;

const margins = { marginLeft: 60, marginRight: 8, marginTop: 30, marginBottom: 30 };

/** One scale for both directions, and the room of the drawing at that scale. */
function layoutOf(scene: Scene, width: number) {
  const wedges = wedgesOf(scene);
  const widest = Math.max(roomForDeg, ...wedges.map(({ angleDeg }) => angleDeg));
  const innerWidth = width - margins.marginLeft - margins.marginRight;
  // The slot of each wedge holds it at its widest, and a gap beside it.
  const pxPerMm = Math.min(240, (innerWidth / 2 - 24) / widthMm(widest));
  const px: Px = (pixels) => pixels / pxPerMm;
  return {
    wedges,
    px,
    innerHeight: deepMm * pxPerMm + 26,
    acrossMm: px(innerWidth),
    topMm: deepMm + px(26),
  };
}

/** Where the first and the second wedge stand. */
const centreMm = (index: number, acrossMm: number): number => ((index === 0 ? 1 : 3) * acrossMm) / 4;

/** The wedges with the places they stand at, mm. */
const placedOf = ({ wedges, acrossMm }: ReturnType<typeof layoutOf>) =>
  wedges.map((wedge, index) => ({
    ...wedge,
    centre: centreMm(index, acrossMm),
    half: widthMm(wedge.angleDeg) / 2,
  }));

type Placed = ReturnType<typeof placedOf>[number];

/** Radius of the arcs that mark the angles, mm. */
const arcMm = deepMm * 0.5;

/** A point of the arc about a tip, so many degrees from upright. */
const onArc = (centre: number, degrees: number): [x: number, y: number] => [
  centre + arcMm * Math.sin(radians(degrees)),
  arcMm * Math.cos(radians(degrees)),
];

/** How high the widths are written, and how far left the depth, mm. */
const widthsMm = (px: Px): number => deepMm + px(18);
const depthMm = (px: Px): number => px(-14);

/** Centre lines, dimension lines with what leads to them, and the arcs of the angles. */
function dimensionMarks(placed: readonly Placed[], px: Px): Plot.RenderableMark[] {
  const [across, down] = [widthsMm(px), depthMm(px)];
  const lines: Segment[] = [
    ...dimensionLine({ x1: down, y1: 0, x2: down, y2: deepMm }, px(4)),
    ...placed.flatMap(({ centre, half }) => [
      ...dimensionLine({ x1: centre - half, y1: across, x2: centre + half, y2: across }, px(4)),
      ...[-half, half].map((side) => ({
        x1: centre + side,
        y1: deepMm + px(3),
        x2: centre + side,
        y2: across + px(6),
      })),
    ]),
  ];
  return [
    Plot.link(
      placed.map(({ centre }) => ({ x1: centre, y1: px(-8), x2: centre, y2: across - px(6) })),
      { ...segmentEnds, className: 'kf-centre' },
    ),
    Plot.link(lines, { ...segmentEnds, className: 'kf-thin' }),
    ...placed.map(({ centre, angleDeg }) =>
      Plot.line(
        Array.from({ length: 13 }, (_, step) => onArc(centre, (angleDeg * step) / 12)),
        { className: 'kf-thin' },
      ),
    ),
  ];
}

/** The angles, the widths and the depth in figures. */
const measureMarks = (placed: readonly Placed[], px: Px): Plot.RenderableMark[] => [
  valueText(placed, {
    x: ({ centre, angleDeg }: Placed) => onArc(centre, angleDeg)[0],
    y: ({ centre, angleDeg }: Placed) => onArc(centre, angleDeg)[1],
    text: ({ angleDeg }: Placed) => `${short(angleDeg)}°`,
    dx: 7,
    dy: 8,
  }),
  Plot.text(placed, {
    x: 'centre',
    y: widthsMm(px),
    text: ({ half }: Placed) => `${plain(2 * half, 2)} mm`,
    dy: -13,
    className: 'kf-value',
  }),
  Plot.text([`${deepMm} mm`], {
    x: depthMm(px),
    y: deepMm / 2,
    dx: -6,
    textAnchor: 'end',
    className: 'kf-value',
  }),
];

/** Nearer to the tip than this a flank says too little of its angle to be dragged by. */
const leastHoldMm = 0.3;

/** Both edges as bare wedges, equally deep in the material, to one scale in both directions. */
export const twoWedges: Figure = {
  id: 'two-wedges',
  title: ({ subject, baseline }) => `${baseline.name} and ${subject.name} as wedges, equally deep`,
  units: 'mm and degrees per side',
  scale: 'to scale, both directions alike',
  reading: () => 'as entered',
  source: 'derived',
  options(scene, { width, narrow }) {
    const layout = layoutOf(scene, width);
    const { innerHeight, acrossMm, topMm, px } = layout;
    const placed = placedOf(layout);
    const surfaces: Segment[] = [0, deepMm].map((y) => ({ x1: px(-20), y1: y, x2: acrossMm, y2: y }));
    return {
      width,
      height: innerHeight + margins.marginTop + margins.marginBottom,
      ...margins,
      x: { domain: [0, acrossMm], axis: null },
      y: { domain: [0, topMm], axis: null },
      marks: [
        Plot.link(surfaces, { ...segmentEnds, className: 'kf-grid' }),
        ...placed.map(({ centre, half }) =>
          Plot.line(
            [
              [centre - half, deepMm],
              [centre, 0],
              [centre + half, deepMm],
            ],
            { className: 'kf-section' },
          ),
        ),
        ...dimensionMarks(placed, px),
        ...measureMarks(placed, px),
        Plot.text(placed, {
          x: 'centre',
          y: 0,
          text: ({ name }: Placed) => shortName(name, narrow ? 16 : 30),
          dy: 20,
        }),
      ],
    };
  },
  /** Either wedge by its flank. */
  drag(scene, { width }, { x }) {
    const { acrossMm } = layoutOf(scene, width);
    const index = x < acrossMm / 2 ? 0 : 1;
    return {
      control: index === 0 ? 'baseline.angle' : 'subject.angle',
      value: (at) =>
        (Math.atan2(Math.abs(at.x - centreMm(index, acrossMm)), Math.max(at.y, leastHoldMm)) * 180) / Math.PI,
    };
  },
  table(scene) {
    const { baseline, subject } = anglesOf(scene);
    const row = (head: string, of: (angles: { bevel: number; apex: number }) => string) => [
      head,
      of(baseline),
      of(subject),
    ];
    return {
      columns: ['Measure', scene.baseline.name, scene.subject.name],
      rows: [
        row('Edge angle per side', ({ bevel }) => `${short(bevel)}°`),
        row('Included angle', ({ bevel }) => `${short(2 * bevel)}°`),
        row('Angle per side at the apex', ({ apex }) => `${short(apex)}°`),
        row(`Width ${deepMm} mm above the apex`, ({ bevel }) => `${plain(widthMm(bevel))} mm`),
        row('Friction angle left for the push', ({ bevel }) => `${plain(frictionAngleAt(scene, bevel))}°`),
        row(`Apex set back by a scratch of ${scratchUm} µm`, ({ apex }) => toothOf(apex)),
        row(`Steel to wear to a flat of ${flatUm} µm`, ({ apex }) => wearOf(apex)),
      ],
    };
  },
  caption(scene) {
    const [baseline, subject] = wedgesOf(scene);
    if (!baseline || !subject) return '';
    const at = (angleDeg: number) => `${plain(widthMm(angleDeg), 2)} mm wide at ${short(angleDeg)}° per side`;
    return `Equally deep, ${baseline.name} is ${at(baseline.angleDeg)} and ${subject.name} ${at(subject.angleDeg)}. Pushed in as wedges the two differ by ${times(routesOf(scene).wedge)}.`;
  },
};
