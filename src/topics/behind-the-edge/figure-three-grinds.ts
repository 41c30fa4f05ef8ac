import * as Plot from '@observablehq/plot';
import { grindThicknessMm } from '../../model/index.ts';
import { behindOf, contactDepthOf, formsOf, grindPush } from './values.ts';
import type { Form } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, fixed, short, times } from '../../scene/show.ts';
import type { Figure, Place, Size } from '../../figure-kit/figure.ts';
import { holdSection, nearPx } from './held-section.ts';
import { sectionOutline } from './section-outline.ts';
import { dimensionLine, segmentEnds } from '../../figure-kit/segments.ts';

const thickness = (scene: Scene, { form, radiusMm }: Form, upMm: number): number => {
  const { edgeMm, grind } = behindOf(scene).subject;
  return grindThicknessMm({ ...grind, form, radiusMm, edgeMm }, upMm);
};

const mm = (value: number): string => `${fixed(value, 2)} mm`;
const angle = (degrees: number): string => `${short(degrees)}°`;

/** What a form is worth against the flat one, by the careful estimate. */
const againstFlat = (scene: Scene, form: Form): number => {
  const [, flat] = formsOf(scene);
  return grindPush(scene, flat.grindAngleDeg) / grindPush(scene, form.grindAngleDeg);
};

/** The one scale, and where each form has its place. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const { subject } = behindOf(scene);
  const depth = contactDepthOf(scene);
  const all = formsOf(scene);
  const top = Math.max(depth, Math.min(subject.grind.heightMm, 1.6 * depth)) * 1.04;
  const foot = subject.bevelHeightMm;
  const slot = (width - 16) / all.length;
  const widest = Math.max(
    ...all.flatMap((form) => [0, 0.25, 0.5, 0.75, 1].map((part) => thickness(scene, form, part * top))),
  );
  const pxPerMm = Math.min((narrow ? 320 : 380) / (top + foot), (slot - 16) / widest);
  const placed = all.map((form, index) => ({
    ...form,
    centre: 8 + (index + 0.5) * slot,
    at: thickness(scene, form, depth),
  }));
  return { depth, top, foot, slot, pxPerMm, placed };
}

/** One knife ground hollow, flat and convex between the same shoulder and the same spine, to scale. */
export const threeGrinds: Figure = {
  id: 'three-grinds',
  title: ({ subject }) => `${subject.name} ground hollow, flat and convex`,
  units: 'mm and degrees per side',
  scale: 'to scale, both directions alike',
  reading: () => 'factors: careful estimate',
  source: 'derived; a radius not given is assumed',
  options(scene, size) {
    const { depth, top, foot, pxPerMm, placed } = layoutOf(scene, size);
    const [marginTop, marginBottom] = [12, 66];
    const height = (top + foot) * pxPerMm + marginTop + marginBottom;
    type Placed = (typeof placed)[number];
    const outline = (form: Placed): [number, number][] =>
      sectionOutline(foot, top, (up) => thickness(scene, form, up)).map(([across, up]) => [
        form.centre + across * pxPerMm,
        up,
      ]);
    const halfPx = (value: number): number => (value / 2) * pxPerMm;
    const dimensions = placed.flatMap(({ centre, at }) =>
      dimensionLine({ x1: centre - halfPx(at), x2: centre + halfPx(at), y1: depth, y2: depth }, 0),
    );
    return {
      width: size.width,
      height,
      marginTop,
      marginBottom,
      marginLeft: 0,
      marginRight: 0,
      x: { domain: [0, size.width], axis: null },
      y: { domain: [-foot, top], axis: null },
      marks: [
        Plot.ruleY([0], { className: 'kf-grid' }),
        Plot.ruleY([depth], { className: 'kf-dimension' }),
        ...placed.map((form) => Plot.line(outline(form), { className: form.own ? 'kf-section' : 'kf-thin' })),
        Plot.link(dimensions, { ...segmentEnds, className: 'kf-stem' }),
        Plot.text(placed, {
          x: 'centre',
          y: depth,
          text: ({ at }: Placed) => mm(at),
          dy: 12,
          className: 'kf-value kf-on-paper',
        }),
        Plot.text(placed, {
          x: 'centre',
          y: -foot,
          text: (form: Placed) =>
            `${form.form}${form.own ? ' (its own)' : ''}\n${angle(form.grindAngleDeg)} per side\n${form.form === 'flat' ? '×1' : times(againstFlat(scene, form))}`,
          dy: 10,
          lineAnchor: 'top',
          lineHeight: 1.25,
          className: 'kf-value',
        }),
      ],
    };
  },
  /** Any of the three sections: they have one shoulder and one height. */
  drag(scene, size, at) {
    const { slot, pxPerMm, placed } = layoutOf(scene, size);
    const column = Math.min(placed.length - 1, Math.max(0, Math.floor((at.x - 8) / slot)));
    const acrossMm = ({ x }: Place): number => (2 * Math.abs(x - (placed[column]?.centre ?? 0))) / pxPerMm;
    const thicknessMm = (other: Scene, upMm: number): number => {
      const form = formsOf(other)[column];
      return form ? thickness(other, form, upMm) : 0;
    };
    return holdSection({ role: 'subject', acrossMm, thicknessMm, nearMm: nearPx / pxPerMm }, at);
  },
  table(scene) {
    const depth = contactDepthOf(scene);
    return {
      columns: [
        'Grind',
        'Radius',
        'Hollowed at mid height, each side',
        ...[0.25, 0.5, 1].map((part) => `${brief(depth * part)} mm above the shoulder`),
        'Wedge per side',
        'Against flat',
      ],
      rows: formsOf(scene).map((form) => [
        `${form.form}${form.own ? ' (its own)' : ''}`,
        form.form === 'flat' ? 'none' : `${short(form.radiusMm)} mm`,
        mm(form.sagMm),
        ...[0.25, 0.5, 1].map((part) => mm(thickness(scene, form, depth * part))),
        angle(form.grindAngleDeg),
        times(againstFlat(scene, form)),
      ]),
    };
  },
  caption(scene) {
    const { name, edgeMm, grind } = behindOf(scene).subject;
    const [hollow, flat, convex] = formsOf(scene);
    return `${name}, ${mm(edgeMm)} at the shoulder and ${brief(grind.spineMm)} mm at ${brief(grind.heightMm)} mm above it: as a wedge ${angle(hollow.grindAngleDeg)} hollow, ${angle(flat.grindAngleDeg)} flat, ${angle(convex.grindAngleDeg)} convex. Against flat the hollow makes ${times(againstFlat(scene, hollow))}, the convex ${times(againstFlat(scene, convex))}. The broken line is the depth of contact, ${brief(contactDepthOf(scene))} mm.`;
  },
};
