import * as Plot from '@observablehq/plot';
import { behindOf, regrindOf, removedMm2 } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, short } from '../../scene/show.ts';
import type { Figure, Place, Size } from '../../figure-kit/figure.ts';
import { flankDeg, nearPx } from './held-section.ts';
import { segmentEnds } from '../../figure-kit/segments.ts';
import type { Segment } from '../../figure-kit/segments.ts';

type Point = readonly [across: number, up: number];

/** One bevel before and after, with what comes off one side; measured from the apex up, mm. */
function bevelOf(scene: Scene, edgeMm: number) {
  const job = regrindOf(scene);
  const cot = (degrees: number): number => 1 / Math.tan((degrees * Math.PI) / 180);
  const half = edgeMm / 2;
  const [before, after] = [half * cot(job.fromDeg), half * cot(job.toDeg)];
  return { edgeMm, half, before, after, areaMm2: removedMm2(edgeMm, job) };
}

const bevelsOf = (scene: Scene) => {
  const { edgeMm } = behindOf(scene).subject;
  return [bevelOf(scene, edgeMm), bevelOf(scene, 2 * edgeMm)];
};

/** The one scale, and where either bevel stands, mm. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const bevels = bevelsOf(scene);
  const large = Math.max(...bevels.map(({ after }) => after));
  const widest = Math.max(...bevels.map(({ edgeMm }) => edgeMm));
  const slot = (width - 16) / 2;
  const top = large * 1.08;
  const pxPerMm = Math.min((narrow ? 260 : 320) / top, (slot - 24) / widest);
  const placed = bevels.map((bevel, index) => ({
    ...bevel,
    centre: (8 + (index + 0.5) * slot) / pxPerMm,
  }));
  return { top, pxPerMm, placed };
}

type Placed = ReturnType<typeof layoutOf>['placed'][number];

const at = ({ centre }: Placed, points: readonly Point[]): [number, number][] =>
  points.map(([across, up]) => [centre + across, up]);

/** The slivers that come off both sides of a bevel, and the bevel as it was before. */
function bevelMarks(bevel: Placed, top: number): Plot.RenderableMark[] {
  const { half, before, after } = bevel;
  const sliver = (side: 1 | -1): Point[] => [
    [0, 0],
    [side * half, before],
    [side * half, after],
    [0, 0],
  ];
  return [
    ...([1, -1] as const).map((side) => Plot.line(at(bevel, sliver(side)), { className: 'kf-section' })),
    Plot.line(
      at(bevel, [
        [-half, top],
        [-half, before],
        [0, 0],
        [half, before],
        [half, top],
      ]),
      { className: 'kf-thin' },
    ),
  ];
}

/** From halfway along each side of a large sliver: the three lines that cut it into four small ones. */
const cutsOf = ({ centre, half, before, after }: Placed): Segment[] =>
  [1, -1].flatMap((side) => {
    const a: Point = [centre + (side * half) / 2, before / 2];
    const b: Point = [centre + (side * half) / 2, after / 2];
    const c: Point = [centre + side * half, (before + after) / 2];
    return (
      [
        [a, b],
        [b, c],
        [c, a],
      ] as const
    ).map(([[x1, y1], [x2, y2]]) => ({ x1, y1, x2, y2 }));
  });

/** The same lowering of a bevel at one thickness and at twice that: four of the small slivers fill the large one. */
export const fourTimes: Figure = {
  id: 'four-times',
  title: ({ subject }) => `A lower bevel at the thickness of ${subject.name}, and at twice that`,
  units: 'mm, and mm² of the section',
  scale: 'to scale, both directions alike',
  reading: () => 'as entered',
  source: 'derived; flanks above the bevel taken as parallel',
  options(scene, size) {
    const { width, narrow } = size;
    const { top, pxPerMm, placed } = layoutOf(scene, size);
    const [marginTop, marginBottom] = [14, 58];
    const height = top * pxPerMm + marginTop + marginBottom;
    return {
      width,
      height,
      marginTop,
      marginBottom,
      marginLeft: 0,
      marginRight: 0,
      x: { domain: [0, width / pxPerMm], axis: null },
      y: { domain: [0, top], axis: null },
      marks: [
        ...placed.flatMap((bevel) => bevelMarks(bevel, top)),
        Plot.link(
          placed.map(({ centre }) => ({ x1: centre, x2: centre, y1: 0, y2: top })),
          { ...segmentEnds, className: 'kf-centre' },
        ),
        Plot.link(placed.slice(1).flatMap(cutsOf), { ...segmentEnds, className: 'kf-cut' }),
        Plot.text(placed, {
          x: 'centre',
          y: 0,
          text: ({ edgeMm, areaMm2 }: Placed) =>
            `${short(edgeMm)} mm${narrow ? '\n' : ' '}behind the edge\n${plain(areaMm2)} mm² off`,
          dy: 10,
          lineAnchor: 'top',
          lineHeight: 1.25,
          className: 'kf-value',
        }),
      ],
    };
  },
  /** Either flank of a bevel; above its shoulder the side, which is the thickness behind the edge. */
  drag(scene, size, at) {
    const { pxPerMm, placed } = layoutOf(scene, size);
    const [one, twice] = placed;
    if (!one || !twice) return undefined;
    const bevel = at.x < (one.centre + twice.centre) / 2 ? one : twice;
    const acrossMm = ({ x }: Place): number => Math.abs(x - bevel.centre);
    if (at.y > bevel.after)
      return { control: 'subject.edge', value: (to) => (2 * acrossMm(to) * one.edgeMm) / bevel.edgeMm };
    const angleDeg = (to: Place): number => flankDeg(acrossMm(to), Math.max(to.y, nearPx / pxPerMm));
    const { fromDeg, toDeg, madeUp } = regrindOf(scene);
    // A lower angle that is made up is no knife's.
    const slimmer = !madeUp && angleDeg(at) < (fromDeg + toDeg) / 2;
    const { subject, baseline } = behindOf(scene);
    const isSubject = slimmer === subject.angleDeg < baseline.angleDeg;
    return { control: isSubject ? 'subject.angle' : 'baseline.angle', value: angleDeg };
  },
  table(scene) {
    const { subject, baseline } = behindOf(scene);
    const line = (name: string, edgeMm: number) => {
      const { areaMm2, before, after } = bevelOf(scene, edgeMm);
      return [
        name,
        `${short(edgeMm)} mm`,
        `${plain(before, 2)} mm`,
        `${plain(after, 2)} mm`,
        `${plain(areaMm2)} mm²`,
        `${short(areaMm2 * 100)} mm³`,
      ];
    };
    return {
      columns: [
        'Edge',
        'Thickness behind it',
        'Bevel height before',
        'Bevel height after',
        'Off the section',
        'Off 100 mm of edge',
      ],
      rows: [
        line(subject.name, subject.edgeMm),
        line(`${subject.name}, twice as thick`, 2 * subject.edgeMm),
        line(baseline.name, baseline.edgeMm),
      ],
    };
  },
  caption(scene) {
    const { fromDeg, toDeg } = regrindOf(scene);
    const [one, twice] = bevelsOf(scene);
    if (!one || !twice) return '';
    return `From ${short(fromDeg)}° down to ${short(toDeg)}° per side ${scene.subject.name} loses ${plain(one.areaMm2)} mm² at ${short(one.edgeMm)} mm behind the edge, and ${plain(twice.areaMm2)} mm² at ${short(twice.edgeMm)} mm: the small sliver fits four times into the large one.`;
  },
};
