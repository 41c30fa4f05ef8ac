import * as Plot from '@observablehq/plot';
import { quantileDots } from '../../model/index.ts';
import { exactSaid } from './words.ts';
import { rangeInWords } from '../../phrases/headline.ts';
import { headlineOf } from '../../scene/headline.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import { percent, times } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { frameOf } from '../../figure-kit/frame.ts';
import { span } from '../../figure-kit/span.ts';

/** Few enough to count, enough to see the tails; the reader may choose from 20 to 100. */
const usualCount = 50;

interface Dot {
  x: number;
  row: number;
  ahead: boolean;
}

/** Dots of equal chance, stacked in columns as wide as a dot. */
function stacked(values: readonly number[], low: number, columnLog: number): Dot[] {
  const heights = new Map<number, number>();
  return values.map((value) => {
    const column = Math.floor(Math.log(value / low) / columnLog);
    const row = heights.get(column) ?? 0;
    heights.set(column, row + 1);
    return { x: low * Math.exp((column + 0.5) * columnLog), row, ahead: value >= 1 };
  });
}

interface Other {
  x: number;
  name: string;
  className: string;
}

/** The middle of the samples under each structure, and the quick sum. */
function othersOf(scene: Scene, narrow: boolean): Other[] {
  const { multiplied, added, toLimit } = sureOf(scene).byStructure;
  return [
    {
      x: multiplied.median,
      name: narrow ? 'multiplied' : 'if they multiply',
      className: 'kf-total-multiplied',
    },
    { x: added.median, name: narrow ? 'added' : 'if the forces add', className: 'kf-total-added' },
    { x: toLimit.median, name: narrow ? 'limit' : 'to a limit', className: 'kf-total-toLimit' },
    { x: scene.row.quick.multiplied, name: 'quick sum', className: 'kf-total-quick' },
  ];
}

/** The room for the names of the other ways, px. */
const namesPx = 76;

/** The frame, the axis of ratios and the dots; heights in px from the foot. */
function layoutOf(scene: Scene, { width, narrow, detail: count = usualCount }: Size) {
  const sure = sureOf(scene);
  const values = quantileDots(sure.logs, count).map(Math.exp);
  const all = [1, ...values, sure.line.low, sure.line.high, ...othersOf(scene, narrow).map(({ x }) => x)];
  const [low, high] = [Math.min(...all) / 1.25, Math.max(...all) * 1.25];
  const radius = (narrow ? 4 : 5) - (count > 60 ? 1 : 0);
  const margins = { top: 8, right: 14, bottom: 40, left: 14 };
  const columnLog = (Math.log(high / low) * (2 * radius + 1)) / frameOf(width, 0, margins).inner.width;
  const dots = stacked(values, low, columnLog);
  const dotsPx = (Math.max(...dots.map(({ row }) => row)) + 1) * (2 * radius + 1);
  const top = dotsPx + 46;
  const { frame } = frameOf(width, top + namesPx + 44, margins);
  return { frame, low, high, count, dots, radius, dotsPx, top };
}

type Layout = ReturnType<typeof layoutOf>;

const dotMarks = ({ dots, radius }: Layout): Plot.RenderableMark[] => [
  Plot.dot(dots, {
    x: 'x',
    y: ({ row }: Dot) => row * (2 * radius + 1) + radius + 1,
    r: radius,
    className: 'kf-chance',
    stroke: 'currentColor',
    fill: ({ ahead }: Dot) => (ahead ? 'currentColor' : 'none'),
  }),
];

/** A line for each of the other ways, its name beside it, towards the side that has more room. */
function otherMarks(others: readonly Other[], { low, high, top }: Layout): Plot.RenderableMark[] {
  const labelY = (index: number): number => top + 14 + index * 17;
  const sides = ([-1, 1] as const).map((side) => ({
    side,
    labels: others
      .map(({ x, name }, index) => ({ x, y: labelY(index), text: `${name} ${times(x)}` }))
      .filter(({ x }) => (x > Math.sqrt(low * high) ? -1 : 1) === side),
  }));
  return [
    ...others.map(({ x, className }, index) => Plot.ruleX([x], { y1: 0, y2: labelY(index) - 6, className })),
    ...sides
      .filter(({ labels }) => labels.length > 0)
      .map(({ side, labels }) =>
        Plot.text(labels, {
          x: 'x',
          y: 'y',
          text: 'text',
          textAnchor: side < 0 ? 'end' : 'start',
          dx: -4 * side,
          className: 'kf-faint kf-on-paper',
        }),
      ),
  ];
}

/** The band by the samples above the dots, and above it the band by hand. */
const bandMarks = (
  sure: ReturnType<typeof sureOf>,
  dotsPx: number,
  narrow: boolean,
): Plot.RenderableMark[] => [
  span([sure], { low: 'low', high: 'high', y: dotsPx + 12, className: 'kf-dimension' }),
  Plot.tickX([sure.low, sure.high], { y: null, className: 'kf-dimension', insetTop: 80 }),
  Plot.text([sure], {
    x: 'median',
    y: dotsPx + 12,
    text: () => (narrow ? '90%' : '90% of the samples'),
    dy: -9,
    className: 'kf-value kf-on-paper',
  }),
  span(
    [sure.line],
    { low: 'low', high: 'high', y: dotsPx + 32, className: 'kf-dimension' },
    { strokeWidth: 1 },
  ),
  Plot.text([sure.line], {
    x: ({ low: from, high: to }: { low: number; high: number }) => Math.sqrt(from * to),
    y: dotsPx + 32,
    text: () => (narrow ? 'by hand' : 'by hand, to first order'),
    dy: -9,
    className: 'kf-faint kf-on-paper',
  }),
];

/** How sure: dots of equal chance, fifty or as many as the reader chooses, so that counting dots is counting chances. */
export const quantileDotsFigure: Figure = {
  id: 'quantile-dots',
  title: ({ subject, baseline }) => `How sure: ${subject.name} against ${baseline.name}`,
  units: 'times as long; every dot the same chance',
  scale: 'logarithmic axis',
  reading: () => 'careful estimate; middles of the three ways and the quick sum marked',
  source: 'factor model, sampled; assumptions stated',
  options(scene, size) {
    const { narrow } = size;
    const layout = layoutOf(scene, size);
    const { frame, low, high, top, count } = layout;
    return {
      ...frame,
      x: ratioAxisX(low, high, narrow, `times as long; each dot 1 chance in ${count}`),
      y: { domain: [0, top + namesPx - 4], axis: null },
      marks: [
        gridX(tickValues(low, high, narrow)),
        baselineX(1),
        ...dotMarks(layout),
        ...otherMarks(othersOf(scene, narrow), layout),
        ...bandMarks(sureOf(scene), layout.dotsPx, narrow),
      ],
    };
  },
  table(scene) {
    const { low, median, high, beats, byStructure, line } = sureOf(scene);
    const { row } = scene;
    return {
      columns: ['What', 'Times as long'],
      rows: [
        ['Band, lower end (5% of samples below)', times(low)],
        ['Middle of the samples', times(median)],
        ['Band, upper end (5% above)', times(high)],
        ['Share of samples ahead', percent(beats, 1)],
        ['Band to first order, lower end', times(line.low)],
        ['Band to first order, upper end', times(line.high)],
        ['Middle if the factors multiply', times(byStructure.multiplied.median)],
        ['Middle if the forces add', times(byStructure.added.median)],
        ['Middle if the force has a limit', times(byStructure.toLimit.median)],
        ['Quick sum', times(row.quick.multiplied)],
      ],
    };
  },
  caption: (scene) =>
    isExact(sureOf(scene))
      ? exactSaid(scene)
      : `Nine dots in ten lie where ${scene.subject.name} cuts ${rangeInWords(headlineOf(scene))} as long as ${scene.baseline.name}.`,
};
