import * as Plot from '@observablehq/plot';
import type { GritScale } from '../../model/index.ts';
import { finishesOf, gritName, scaleName, scales, sizeOn, spanOf, umOf } from './values.ts';
import type { SeenFinish } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, times } from '../../scene/show.ts';
import type { Figure, Place } from '../../figure-kit/figure.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { segmentEnds } from '../../figure-kit/segments.ts';

/** One number read on one scale. */
interface Grain {
  scale: GritScale;
  um: number | null;
  /** The scale the knife's own finish was given in. */
  own: boolean;
}

interface Line {
  name: string;
  finish: SeenFinish;
  grains: Grain[];
}

const roles = ['subject', 'baseline'] as const;

const linesOf = (scene: Scene): Line[] => {
  const finishes = finishesOf(scene);
  return roles.map((role) => {
    const finish = finishes[role];
    return {
      name: scene[role].name,
      finish,
      // A size in µm is the same on every scale.
      grains: scales.map((scale) => ({
        scale,
        um: finish.grit ? sizeOn(scale, finish.grit.number) : finish.um,
        own: finish.grit ? finish.grit.scale === scale : true,
      })),
    };
  });
};

const numberOf = ({ grit, name }: SeenFinish): string => (grit ? brief(grit.number) : name);

/** Round sizes the sheet is drawn for, µm: it changes its scale in steps, so that a grain is seen to grow. */
const rooms = [3, 12, 25, 50, 75, 100, 150, 250];
const margin = 8;
/** How near its rim a grain is taken by it, px. */
const rimPx = 10;

/** The one scale, and where each grain has its place, px. */
function layoutOf(scene: Scene, width: number) {
  const lines = linesOf(scene);
  const largest = Math.max(...lines.flatMap((line) => line.grains.map(({ um }) => um ?? 0)));
  const room = rooms.find((size) => size >= largest) ?? largest;
  const inner = width - 2 * margin;
  const slot = inner / scales.length;
  const largestPx = Math.min(slot - 12, 120);
  const pxPerUm = largestPx / room;
  const [headPx, namePx, labelPx, barPx] = [24, 22, 24, 44];
  // Whole dots: a drawing whose height is no whole number of them is stretched to one on a page.
  const grainPx = lines.map(({ grains: read }) =>
    Math.ceil(Math.max(30, ...read.map(({ um }) => (um ?? 0) * pxPerUm))),
  );
  const rowPx = grainPx.map((high) => namePx + high + labelPx + 10);
  const topPx = rowPx.map((_, row) => headPx + rowPx.slice(0, row).reduce((sum, high) => sum + high, 0));
  const height = rowPx.reduce((sum, high) => sum + high, headPx) + barPx;
  const placed = lines.flatMap((line, row) =>
    line.grains.map((grain, column) => ({
      ...grain,
      row,
      x: (column + 0.5) * slot,
      y: (topPx[row] ?? 0) + namePx + (grainPx[row] ?? 0) / 2,
      half: (grainPx[row] ?? 0) / 2,
      r: Math.max(0.6, ((grain.um ?? 0) * pxPerUm) / 2),
    })),
  );
  return { lines, room, inner, slot, pxPerUm, topPx, height, placed };
}

type Layout = ReturnType<typeof layoutOf>;
type Placed = Layout['placed'][number];

/** The grains with their sizes, and what stands where a scale does not list the number. */
function grainMarks(placed: readonly Placed[]): Plot.RenderableMark[] {
  const drawn = placed.filter(({ um }) => um !== null);
  return [
    Plot.dot(drawn, {
      x: 'x',
      y: 'y',
      r: 'r',
      fill: ({ own }: Placed) => (own ? hatch('finish') : 'none'),
      stroke: ({ own }: Placed) => (own ? ink('finish') : 'var(--text)'),
      strokeWidth: ({ own }: Placed) => (own ? 2 : 1.2),
    }),
    Plot.text(drawn, {
      x: 'x',
      y: ({ y, half }: Placed) => y + half + 13,
      text: ({ um }: Placed) => umOf(um ?? 0),
      className: 'kf-value',
    }),
    Plot.text(
      placed.filter(({ um }) => um === null),
      {
        x: 'x',
        y: 'y',
        text: ({ scale }: Placed) => `not listed:\n${spanOf(scale).first}–${spanOf(scale).last}`,
        lineHeight: 1.2,
        className: 'kf-faint',
      },
    ),
  ];
}

/** A round length at the scale of the drawing, at its foot. */
function scaleBar({ room, slot, pxPerUm, height }: Layout): Plot.RenderableMark[] {
  const barUm = [...rooms].reverse().find((size) => size * pxPerUm <= slot) ?? room;
  const [x1, x2, y] = [4, 4 + barUm * pxPerUm, height - 22];
  return [
    Plot.link(
      [{ x1, x2, y1: y, y2: y }, ...[x1, x2].map((x) => ({ x1: x - 4, x2: x + 4, y1: y + 4, y2: y - 4 }))],
      { ...segmentEnds, className: 'kf-thin' },
    ),
    Plot.text([`${barUm} µm`], { x: x2, y, dx: 10, textAnchor: 'start', className: 'kf-value' }),
  ];
}

/** Both knives' grit numbers on the four scales, each as a grain drawn to scale: the linear twin of `grit-scales`. */
export const grains: Figure = {
  id: 'grains',
  title: (scene) =>
    `${linesOf(scene)
      .map(({ finish }) => numberOf(finish))
      .join(' and ')}: one number, four scales`,
  units: 'µm, median particle size',
  scale: 'to scale, all grains alike',
  reading: () => 'as entered',
  source: 'ISO 6344, ISO 8486 (memory), JIS R 6001, ANSI B74.18',
  options(scene, { width, narrow }) {
    const layout = layoutOf(scene, width);
    const { lines, inner, slot, topPx, height, placed } = layout;
    return {
      height,
      margin: 0,
      marginLeft: margin,
      marginRight: margin,
      x: { domain: [0, inner], axis: null },
      y: { domain: [height, 0], axis: null },
      r: { type: 'identity' },
      marks: [
        Plot.text(scales, {
          x: (_: GritScale, index: number) => (index + 0.5) * slot,
          y: 12,
          text: (scale: GritScale) => scaleName[scale],
        }),
        Plot.ruleY(topPx, { className: 'kf-grid' }),
        Plot.text(lines, {
          x: 0,
          y: (_: Line, row: number) => (topPx[row] ?? 0) + 13,
          text: ({ name, finish }: Line) => `${shortName(name, narrow ? 26 : 50)}: ${numberOf(finish)}`,
          textAnchor: 'start',
          className: 'kf-value',
        }),
        ...grainMarks(placed),
        ...scaleBar(layout),
      ],
    };
  },
  /** A knife's own grain by its rim, which is its size; elsewhere in its row the scale it is of. */
  drag(scene, { width }, at) {
    const { placed, slot, pxPerUm, topPx } = layoutOf(scene, width);
    const row = at.y < (topPx[1] ?? 0) ? 0 : 1;
    const own = placed.find((grain) => grain.row === row && grain.own);
    const role = roles[row];
    if (!own || !role) return undefined;
    const away = ({ x, y }: Place): number => Math.hypot(x - own.x, y - own.y);
    return Math.abs(away(at) - own.r) < rimPx
      ? {
          control: `${role}.grit`,
          aim: (to) => (2 * away(to)) / pxPerUm,
          stands: (other) => finishesOf(other)[role].um,
        }
      : { control: `${role}.scale`, value: ({ x }) => Math.floor(x / slot) };
  },
  table(scene) {
    return {
      columns: ['Knife and its number', ...scales.map((scale) => scaleName[scale]), 'widest over finest'],
      rows: linesOf(scene).map(({ name, finish, grains: read }) => {
        const sizes = read.flatMap(({ um }) => um ?? []);
        return [
          `${name}: ${numberOf(finish)}`,
          ...read.map(({ um, own }) =>
            um === null ? 'not listed' : `${umOf(um)}${own && finish.grit ? ' (its own)' : ''}`,
          ),
          sizes.length > 1 ? times(Math.max(...sizes) / Math.min(...sizes)) : 'only one',
        ];
      }),
    };
  },
  caption(scene) {
    const said = linesOf(scene).map(({ name, finish, grains: read }) => {
      if (!finish.grit) return `${name} has a grain of ${finish.name}, whatever the scale.`;
      const { scale, number } = finish.grit;
      const others = read.flatMap(({ scale: other, um }) =>
        other !== scale && um !== null ? [`${umOf(um)} as ${gritName(other, number)}`] : [],
      );
      return `${name}’s ${finish.name} is a grain of ${umOf(finish.um)}; the same number would be ${others.length > 0 ? others.join(', ') : 'no grade of any other scale'}.`;
    });
    return `${said.join(' ')} Hatched: the scale the finish was given in.`;
  },
};
