import * as Plot from '@observablehq/plot';
import { gritTable } from '../../model/index.ts';
import type { GritScale } from '../../model/index.ts';
import { finishesOf, gradeOn, gritName, scaleName, scales, umOf } from './values.ts';
import type { SeenFinish } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain } from '../../scene/show.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { gridX, gridY } from '../../figure-kit/grid.ts';
import { tickValues } from '../../figure-kit/ratio-axis.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { frameOf } from '../../figure-kit/frame.ts';
import { strokeKey } from '../../figure-kit/key.ts';
import { logAt } from '../../figure-kit/pixels.ts';

interface Point {
  grit: number;
  um: number;
}

const pointsOf = (scale: GritScale): Point[] => gritTable(scale).rows.map(([grit, um]) => ({ grit, um }));
const strokeOf = (scale: GritScale): string => `kf-scale-${scale.toLowerCase()}`;

const [lowGrit, highGrit] = [70, 9000];

const knivesOf = (scene: Scene) => {
  const finishes = finishesOf(scene);
  return (['baseline', 'subject'] as const).map((role) => ({
    ...finishes[role],
    name: scene[role].name,
  }));
};

/** Heights of two labels, px: each its own knife's, but two that would touch make room for each other. */
function labelHeights(
  [first, second]: readonly [number, number],
  highPx: number,
  innerHeight: number,
): number[] {
  const apart = Math.max(0, highPx - Math.abs(first - second)) / 2;
  const inside = (px: number): number => Math.min(innerHeight - highPx / 2, Math.max(highPx / 2 - 20, px));
  const upper = first <= second ? -apart : apart;
  return [inside(first + upper), inside(second - upper)];
}

/** The frame and the axes; each knife's label, which stands in the margin; and the key in the lower left corner. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const knives = knivesOf(scene);
  const { frame, inner } = frameOf(width, narrow ? 360 : 400, {
    top: 26,
    right: narrow ? 82 : 168,
    bottom: 42,
    left: 36,
  });
  const low = Math.min(1, ...knives.map(({ um }) => um)) / 1.05;
  const high = Math.max(250, ...knives.map(({ um }) => um));
  const atX = logAt(lowGrit, highGrit, inner.width);
  const atY = logAt(high, low, inner.height);
  const pxOf = (um: number): number => (inner.height * Math.log(um / high)) / Math.log(low / high);
  const heights = labelHeights(
    knives.map(({ um }) => pxOf(um)) as [number, number],
    narrow ? 50 : 34,
    inner.height,
  );
  const labels = knives.map(({ name, grit, um }, index) => ({
    y: atY(heights[index] ?? 0),
    text: `${shortName(name, narrow ? 9 : 20)}\n${grit ? `${gritName(grit.scale, grit.number)}${narrow ? '\n' : ': '}` : ''}${umOf(um)}`,
  }));
  const key = scales.map((scale, index) => ({
    className: strokeOf(scale),
    y: atY(inner.height - 14 - 18 * (scales.length - 1 - index)),
    text: scaleName[scale],
  }));
  const ticks = {
    x: narrow ? [100, 300, 1000, 3000] : [100, 200, 500, 1000, 2000, 5000],
    y: tickValues(low, high, narrow),
  };
  return { knives, frame, low, high, ticks, labels, key, strokes: [atX(4), atX(32)] as const };
}

/** Grit against grain size by four scales, with the two knives on them. */
export const gritScales: Figure = {
  id: 'grit-scales',
  title: () => 'Grit number against grain size, by four scales',
  units: 'grit number; µm, median particle size',
  scale: 'both axes logarithmic',
  reading: () => 'as entered',
  source: 'ISO 6344, ISO 8486 (memory), JIS R 6001, ANSI B74.18',
  options(scene, size) {
    const { knives, frame, low, high, ticks, labels, key, strokes } = layoutOf(scene, size);
    return {
      ...frame,
      x: { type: 'log', domain: [lowGrit, highGrit], axis: null },
      y: { type: 'log', domain: [low, high], axis: null },
      marks: [
        // The labels of a logarithmic axis are thinned out unless they come as a channel of their own.
        Plot.axisX(ticks.x, { text: brief, ...centredLabel('grit number') }),
        Plot.axisY(ticks.y, { text: brief, label: 'grain, µm', labelArrow: 'none' }),
        gridY(ticks.y),
        gridX(ticks.x),
        Plot.ruleY(knives, {
          y: 'um',
          x1: ({ grit }: SeenFinish) => grit?.number ?? lowGrit,
          x2: highGrit,
          className: 'kf-dimension',
        }),
        ...scales.flatMap((scale) => [
          Plot.line(pointsOf(scale), { x: 'grit', y: 'um', className: strokeOf(scale) }),
          Plot.dot(pointsOf(scale), { x: 'grit', y: 'um', r: 1.7, className: 'kf-grade' }),
        ]),
        Plot.dot(
          knives.filter(({ grit }) => grit !== null),
          { x: ({ grit }: SeenFinish) => grit?.number ?? lowGrit, y: 'um', r: 5, className: 'kf-answer' },
        ),
        Plot.text(labels, {
          x: highGrit,
          y: 'y',
          text: 'text',
          dx: 6,
          textAnchor: 'start',
          lineHeight: 1.15,
          className: 'kf-value',
        }),
        ...strokeKey(key, strokes),
      ],
    };
  },
  /** The nearer knife's dot, along the curve of its scale: down it and to the right are one way. */
  drag(scene, _size, { x, y }) {
    const slope = (um: number, grit: number): number => Math.log(um / grit);
    const away = ({ um, grit }: SeenFinish): number =>
      Math.hypot(Math.log(um / y), Math.log((grit?.number ?? lowGrit) / x));
    const { subject, baseline } = finishesOf(scene);
    const role = away(subject) < away(baseline) ? 'subject' : 'baseline';
    return {
      control: `${role}.grit`,
      aim: (at) => slope(at.y, at.x),
      stands(other) {
        const { um, grit } = finishesOf(other)[role];
        return slope(um, grit?.number ?? lowGrit);
      },
    };
  },
  table(scene) {
    const grits = [...new Set(scales.flatMap((scale) => pointsOf(scale).map(({ grit }) => grit)))].sort(
      (a, b) => a - b,
    );
    const own = knivesOf(scene);
    return {
      columns: ['Grit', ...scales.map((scale) => `${scaleName[scale]}, µm`)],
      rows: grits.map((grit) => {
        const here = own.filter((knife) => knife.grit?.number === grit).map(({ name }) => name);
        return [
          `${grit}${here.length > 0 ? ` (${here.join(', ')})` : ''}`,
          ...scales.map((scale) => {
            const um = pointsOf(scale).find((point) => point.grit === grit)?.um;
            return um === undefined ? '–' : brief(um);
          }),
        ];
      }),
    };
  },
  caption(scene) {
    const said = knivesOf(scene).map(({ name, um, grit }) => {
      const others = scales.flatMap((scale) => {
        const grade = scale === grit?.scale ? 'none so fine' : gradeOn(scale, um);
        return typeof grade === 'string' ? [] : [gritName(scale, grade.grit)];
      });
      return `${name}, ${grit ? `${gritName(grit.scale, grit.number)}, ` : ''}${umOf(um)}: ${others.length > 0 ? `nearest elsewhere ${others.join(', ')}` : 'beyond every other list'}.`;
    });
    const [first, second] = knivesOf(scene);
    const ratio = first && second ? Math.max(first.um / second.um, second.um / first.um) : 1;
    return `${said.join(' ')} On the upright axis the two are a ratio of ${plain(ratio)} apart; each curve ends where its list ends.`;
  },
};
