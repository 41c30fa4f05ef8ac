import * as Plot from '@observablehq/plot';
import { behindOf, slipMm, slippedAngleDeg, thicknessAtMm } from './values.ts';
import type { Behind } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { fixed, short } from '../../scene/show.ts';
import type { Figure, Place, Size } from '../../figure-kit/figure.ts';
import { flankDeg, nearPx } from './held-section.ts';
import { sectionOutline } from './section-outline.ts';
import { dimensionLine, segmentEnds } from '../../figure-kit/segments.ts';
import { shortName } from '../../figure-kit/short-name.ts';

const bladesOf = (scene: Scene): Behind[] => {
  const { subject, baseline } = behindOf(scene);
  return [baseline, subject];
};

const mm = (value: number): string => `${fixed(value, 2)} mm`;
const angle = (degrees: number | null): string => (degrees === null ? 'no bevel' : `${short(degrees)}°`);

/** The one scale, and where either section stands, mm. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const blades = bladesOf(scene);
  const foot = Math.max(...blades.map(({ bevelHeightMm }) => bevelHeightMm));
  const top = slipMm * 1.25;
  const slot = (width - 8) / 2;
  const widest = Math.max(...blades.map((blade) => thicknessAtMm(blade, top)));
  // Beside the section stand C on its left and B on its right.
  const pxPerMm = Math.min((narrow ? 240 : 300) / (top + foot), (slot - 76) / widest);
  const centres = blades.map((_, index) => (4 + (index + 0.5) * slot) / pxPerMm);
  return { blades, foot, top, pxPerMm, centres };
}

/** A length on the sheet, px, in mm of the drawing. */
type MmOf = (pixels: number) => number;

/** A blade's section where it stands, with the lines of its three measures and what it reads held too high. */
function placedAt(blade: Behind, centre: number, mmOf: MmOf) {
  const half = blade.edgeMm / 2;
  const apex = -blade.bevelHeightMm;
  const tilt = (blade.angleDeg * Math.PI) / 180;
  // The line of B lies beside the bevel, a few pixels off it.
  const [offX, offY] = [Math.cos(tilt) * mmOf(12), -Math.sin(tilt) * mmOf(12)];
  const high = thicknessAtMm(blade, slipMm);
  const leftX = centre - Math.max(half, high / 2) - mmOf(14);
  return {
    blade,
    centre,
    a: { x1: centre - half, x2: centre + half, y1: 0, y2: 0 },
    b: { x1: centre + half + offX, y1: offY, x2: centre + offX, y2: apex + offY },
    c: { x1: leftX, x2: leftX, y1: 0, y2: apex },
    high,
  };
}

type Placed = ReturnType<typeof placedAt>;

/** The heights of the apexes, the dimension lines, and where the jaws are when held too high. */
const lineMarks = (placed: readonly Placed[], mmOf: MmOf): Plot.RenderableMark[] => [
  Plot.link(
    placed.map(({ centre, blade, c }) => ({
      x1: c.x1 - mmOf(5),
      x2: centre,
      y1: -blade.bevelHeightMm,
      y2: -blade.bevelHeightMm,
    })),
    { ...segmentEnds, className: 'kf-grid' },
  ),
  Plot.link(
    placed.flatMap(({ a, b, c }) => [a, b, c].flatMap((line) => dimensionLine(line, mmOf(4)))),
    { ...segmentEnds, className: 'kf-thin' },
  ),
  Plot.link(
    placed.map(({ centre, high }) => ({
      x1: centre - high / 2 - mmOf(8),
      x2: centre + high / 2 + mmOf(8),
      y1: slipMm,
      y2: slipMm,
    })),
    { ...segmentEnds, className: 'kf-dimension' },
  ),
];

/** The letters of the three measures beside their lines. */
const letterMarks = (placed: readonly Placed[]): Plot.RenderableMark[] =>
  placed
    .flatMap(({ a, b, c }) => [
      { x: (a.x1 + a.x2) / 2, y: 0, dx: 0, dy: -10, text: 'A' },
      { x: (b.x1 + b.x2) / 2, y: (b.y1 + b.y2) / 2, dx: 10, dy: 4, text: 'B' },
      { x: c.x1, y: (c.y1 + c.y2) / 2, dx: -10, dy: 0, text: 'C' },
    ])
    .map(({ text, ...place }) => Plot.text([text], { ...place, className: 'kf-value kf-on-paper' }));

/** What is read on each blade, below it. */
const readings = (placed: readonly Placed[], y: number, narrow: boolean): Plot.RenderableMark =>
  Plot.text(placed, {
    x: 'centre',
    y,
    text: ({ blade, high }: Placed) =>
      [
        shortName(blade.name, narrow ? 16 : 30),
        `A ${mm(blade.edgeMm)}${narrow ? '\n' : ', '}B ${mm(blade.bevelWidthMm)}${narrow ? ' ' : ', '}C ${mm(blade.bevelHeightMm)}`,
        `${angle(blade.angleDeg)} per side`,
        `too high: ${mm(high)},${narrow ? '\n' : ' '}${angle(slippedAngleDeg(blade))}`,
      ].join('\n'),
    dy: 12,
    lineAnchor: 'top',
    lineHeight: 1.25,
    className: 'kf-value',
  });

/** Where the jaws go on either knife, to one scale, and what they read a little too high. */
export const caliperPlaces: Figure = {
  id: 'caliper-places',
  title: ({ subject, baseline }) => `Where the caliper goes on ${baseline.name} and ${subject.name}`,
  units: 'mm and degrees per side',
  scale: 'to scale, both directions alike',
  reading: () => 'as entered',
  source: 'derived',
  options(scene, size) {
    const { width, narrow } = size;
    const { blades, foot, top, pxPerMm, centres } = layoutOf(scene, size);
    const [marginTop, marginBottom] = [14, narrow ? 108 : 92];
    const height = (top + foot) * pxPerMm + marginTop + marginBottom;
    const mmOf = (pixels: number): number => pixels / pxPerMm;
    const placed = blades.map((blade, index) => placedAt(blade, centres[index] ?? 0, mmOf));
    return {
      width,
      height,
      marginTop,
      marginBottom,
      marginLeft: 0,
      marginRight: 0,
      x: { domain: [0, mmOf(width)], axis: null },
      y: { domain: [-foot, top], axis: null },
      marks: [
        ...placed.map(({ blade, centre }) =>
          Plot.line(
            sectionOutline(blade.bevelHeightMm, top, (up) => thicknessAtMm(blade, up)).map(
              ([across, up]): [number, number] => [centre + across, up],
            ),
            { className: 'kf-section' },
          ),
        ),
        ...lineMarks(placed, mmOf),
        ...letterMarks(placed),
        readings(placed, -foot, narrow),
      ],
    };
  },
  /** The shoulder across, and below it the bevel, which turns about the shoulder. */
  drag(scene, size, { x, y }) {
    const { blades, pxPerMm, centres } = layoutOf(scene, size);
    const [left = 0, right = 0] = centres;
    const index = x < (left + right) / 2 ? 0 : 1;
    const role = index === 0 ? 'baseline' : 'subject';
    const halfMm = (at: Place): number => Math.abs(at.x - (centres[index] ?? 0));
    const nearMm = nearPx / pxPerMm;
    if (y > nearMm) return undefined;
    if (y > -nearMm) return { control: `${role}.edge`, value: (at) => 2 * halfMm(at) };
    const shoulderMm = (blades[index]?.edgeMm ?? 0) / 2;
    return {
      control: `${role}.angle`,
      value: (at) => flankDeg(shoulderMm - halfMm(at), Math.max(-at.y, nearMm)),
    };
  },
  table(scene) {
    const blades = bladesOf(scene);
    const row = (head: string, of: (blade: Behind) => string) => [head, ...blades.map(of)];
    return {
      columns: ['Measure', ...blades.map(({ name }) => name)],
      rows: [
        row('A, thickness across the shoulder', ({ edgeMm }) => mm(edgeMm)),
        row('B, width along one bevel', ({ bevelWidthMm }) => mm(bevelWidthMm)),
        row('C, height along the blade', ({ bevelHeightMm }) => mm(bevelHeightMm)),
        row('Edge angle per side', ({ angleDeg }) => angle(angleDeg)),
        row(`Read ${slipMm} mm above the shoulder`, (blade) => mm(thicknessAtMm(blade, slipMm))),
        row('The angle that would make', (blade) => angle(slippedAngleDeg(blade))),
      ],
    };
  },
  caption: (scene) =>
    `${bladesOf(scene)
      .map(
        (blade) =>
          `${blade.name}: A ${mm(blade.edgeMm)} with B ${mm(blade.bevelWidthMm)} or C ${mm(blade.bevelHeightMm)} makes ${angle(blade.angleDeg)} per side; held ${slipMm} mm too high, on the broken line, A reads ${mm(thicknessAtMm(blade, slipMm))} and the angle ${angle(slippedAngleDeg(blade))}`,
      )
      .join('. ')}.`,
};
