import * as Plot from '@observablehq/plot';
import { behindFactors, behindOf, contactDepthOf, thicknessAtMm } from './values.ts';
import type { Behind } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, fixed, times } from '../../scene/show.ts';
import type { Figure, Place, Size } from '../../figure-kit/figure.ts';
import { holdSection, nearPx } from './held-section.ts';
import { sectionOutline } from './section-outline.ts';
import { shortName } from '../../figure-kit/short-name.ts';

/** Heights above the shoulder at which both thicknesses are shown, as parts of the contact depth. */
const heightsShown = [1, 0.75, 0.5, 0.25, 0];

const mm = (value: number): string => `${fixed(value, 2)} mm`;

/** The one scale, and what the drawing is made of. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const { subject, baseline } = behindOf(scene);
  const depth = contactDepthOf(scene);
  const top = depth * 1.1;
  const foot = Math.max(subject.bevelHeightMm, baseline.bevelHeightMm);
  const widest = Math.max(
    ...[subject, baseline].flatMap((blade) =>
      [0, 0.25, 0.5, 0.75, 1, 1.1].map((part) => thicknessAtMm(blade, part * depth)),
    ),
  );
  // The labels stand either side of the sections; what is left between them, and a page's height, set the scale.
  const [axisPx, labelPx] = [54, 62];
  const between = width - axisPx - 2 * labelPx - 8;
  const pxPerMm = Math.min((narrow ? 340 : 400) / (top + foot), between / widest);
  const centrePx = axisPx + labelPx + between / 2;
  return { subject, baseline, depth, top, foot, widest, axisPx, pxPerMm, centrePx };
}

/** Whose section it is, above it on one side of the centre plane. */
const sideName = (text: string, x: number, y: number, textAnchor: 'start' | 'end') =>
  Plot.text([text], { x, y, dy: -24, lineHeight: 1.2, textAnchor, className: 'kf-value' });

/** Both sections nested on one centre plane, shoulder on shoulder, to scale: how far each opens what it cuts. */
export const opened: Figure = {
  id: 'opened',
  title: ({ subject, baseline }) => `${baseline.name} and ${subject.name}, one laid over the other`,
  units: 'mm',
  scale: 'to scale, both directions alike',
  reading: () => 'as entered',
  source: 'derived',
  options(scene, size) {
    const { subject, baseline, depth, top, foot, widest, axisPx, pxPerMm, centrePx } = layoutOf(scene, size);
    const { width, narrow } = size;
    const [marginTop, marginBottom] = [48, 12];
    const levels = heightsShown.map((part) => part * depth);
    const height = (top + foot) * pxPerMm + marginTop + marginBottom;
    const x = (mmAcross: number): number => centrePx + mmAcross * pxPerMm;
    const outline = (blade: Behind) =>
      sectionOutline(blade.bevelHeightMm, top, (up) => thicknessAtMm(blade, up)).map(
        ([across, up]): [number, number] => [x(across), up],
      );
    const halfPx = (widest / 2) * pxPerMm + 10;
    const column = (blade: Behind, side: -1 | 1) =>
      levels.map((up) => ({
        up,
        x: centrePx + side * halfPx,
        text: mm(thicknessAtMm(blade, up)),
        anchor: side,
      }));
    const labels = { left: column(baseline, -1), right: column(subject, 1) };
    const text = { x: 'x', y: 'up', text: 'text', className: 'kf-value kf-on-paper' } as const;
    return {
      width,
      height,
      marginTop,
      marginBottom,
      marginLeft: 0,
      marginRight: 0,
      x: { domain: [0, width], axis: null },
      y: { domain: [-foot, top], axis: null },
      marks: [
        Plot.ruleY(levels, { x1: axisPx, x2: width - 8, className: 'kf-grid' }),
        Plot.line(outline(subject), { className: 'kf-section' }),
        Plot.line(outline(baseline), { className: 'kf-laid-over' }),
        Plot.text(labels.left, { ...text, textAnchor: 'end' }),
        Plot.text(labels.right, { ...text, textAnchor: 'start' }),
        Plot.text(levels, {
          x: axisPx - 6,
          y: (up: number) => up,
          text: (up: number) => `${brief(up)} mm`,
          textAnchor: 'end',
          className: 'kf-faint',
        }),
        sideName(`${shortName(baseline.name, narrow ? 15 : 30)}\nbroken line`, centrePx - 14, top, 'end'),
        sideName(`${shortName(subject.name, narrow ? 15 : 30)}\nhatched`, centrePx + 14, top, 'start'),
      ],
    };
  },
  /** The nearer of the two sections. */
  drag(scene, size, at) {
    const { subject, baseline, pxPerMm, centrePx } = layoutOf(scene, size);
    const acrossMm = ({ x }: Place): number => (2 * Math.abs(x - centrePx)) / pxPerMm;
    const away = (blade: Behind): number => Math.abs(thicknessAtMm(blade, at.y) - acrossMm(at));
    const role = away(subject) < away(baseline) ? 'subject' : 'baseline';
    const thicknessMm = (other: Scene, upMm: number): number => thicknessAtMm(behindOf(other)[role], upMm);
    return holdSection({ role, acrossMm, thicknessMm, nearMm: nearPx / pxPerMm }, at);
  },
  table(scene) {
    const { subject, baseline } = behindOf(scene);
    const depth = contactDepthOf(scene);
    return {
      columns: ['Above the shoulder', baseline.name, subject.name],
      rows: [...heightsShown]
        .reverse()
        .map((part) => part * depth)
        .map((up) => [`${brief(up)} mm`, mm(thicknessAtMm(baseline, up)), mm(thicknessAtMm(subject, up))]),
    };
  },
  caption(scene) {
    const { subject, baseline } = behindOf(scene);
    const depth = contactDepthOf(scene);
    const { thickness, grind } = behindFactors(scene).careful;
    const from = (blade: Behind) =>
      `${blade.name} goes from ${mm(blade.edgeMm)} to ${mm(thicknessAtMm(blade, depth))}`;
    return `From the shoulder to ${brief(depth)} mm above it, ${from(baseline)} and ${from(subject)}. By the careful estimate that is ${times(thickness)} for the thickness and ${times(grind)} for the grind.`;
  },
};
