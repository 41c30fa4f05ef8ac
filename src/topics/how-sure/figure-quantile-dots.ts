import * as Plot from '@observablehq/plot';
import { quantileDots } from '../../model/index.ts';
import { bandSentence } from './words.ts';
import { sureOf } from '../../scene/sure.ts';
import { percent, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';

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

/** How sure: dots of equal chance, fifty or as many as the reader chooses, so that counting dots is counting chances. */
export const quantileDotsFigure: Figure = {
  id: 'quantile-dots',
  title: ({ subject, baseline }) => `How sure: ${subject.name} against ${baseline.name}`,
  units: 'times as long; every dot the same chance',
  scale: 'logarithmic axis',
  reading: () => 'close reading; rival and pocket marked',
  source: 'factor model, sampled; assumptions stated',
  options(scene, { width, narrow, detail: count = usualCount }) {
    const sure = sureOf(scene);
    const { row } = scene;
    const values = quantileDots(sure.logs, count).map(Math.exp);
    const others = [
      { x: row.careful.rival, name: narrow ? 'added' : 'forces added', className: 'kf-total-rival' },
      { x: row.quick.product, name: 'pocket', className: 'kf-total-quick' },
      { x: row.careful.product, name: 'close', className: 'kf-total-careful' },
    ];
    const all = [1, ...values, sure.line.low, sure.line.high, ...others.map(({ x }) => x)];
    const low = Math.min(...all) / 1.25;
    const high = Math.max(...all) * 1.25;
    const [marginLeft, marginRight] = [14, 14];
    const inner = width - marginLeft - marginRight;
    const radius = (narrow ? 4 : 5) - (count > 60 ? 1 : 0);
    const columnLog = (Math.log(high / low) * (2 * radius + 1)) / inner;
    const dots = stacked(values, low, columnLog);
    const tallest = Math.max(...dots.map(({ row: at }) => at)) + 1;
    const dotsHeight = tallest * (2 * radius + 1);
    const namesHeight = 58;
    const px = (rowAt: number): number => rowAt * (2 * radius + 1) + radius + 1;
    const top = dotsHeight + 46;
    const labelY = (index: number): number => top + 14 + index * 17;
    return {
      height: top + namesHeight + 44,
      marginLeft,
      marginRight,
      marginTop: 8,
      marginBottom: 40,
      x: {
        ...ratioAxis(low, high, narrow, `times as long; each dot 1 chance in ${count}`),
        labelAnchor: 'center',
      },
      y: { domain: [0, top + namesHeight - 4], axis: null },
      marks: [
        gridX(tickValues(low, high, narrow)),
        baselineX(1),
        Plot.dot(dots, {
          x: 'x',
          y: ({ row: at }: Dot) => px(at),
          r: radius,
          className: 'kf-chance',
          stroke: 'currentColor',
          fill: ({ ahead }: Dot) => (ahead ? 'currentColor' : 'none'),
        }),
        ...others.map(({ x, className }, index) =>
          Plot.ruleX([x], { y1: 0, y2: labelY(index) - 6, className }),
        ),
        // Each towards the side that has more room.
        ...([-1, 1] as const)
          .map((side) => ({
            side,
            labels: others
              .map(({ x, name }, index) => ({ x, y: labelY(index), text: `${name} ${times(x)}` }))
              .filter(({ x }) => (x > Math.sqrt(low * high) ? -1 : 1) === side),
          }))
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
        Plot.link([{ x1: sure.low, x2: sure.high }], {
          x1: 'x1',
          x2: 'x2',
          y1: dotsHeight + 12,
          y2: dotsHeight + 12,
          className: 'kf-dimension',
        }),
        Plot.tickX([sure.low, sure.high], {
          y: null,
          className: 'kf-dimension',
          insetTop: 80,
        }),
        Plot.text([sure], {
          x: 'median',
          y: dotsHeight + 12,
          text: () => (narrow ? '90 %' : '90 % of the samples'),
          dy: -9,
          className: 'kf-value kf-on-paper',
        }),
        Plot.link([sure.line], {
          x1: 'low',
          x2: 'high',
          y1: dotsHeight + 32,
          y2: dotsHeight + 32,
          className: 'kf-dimension',
          strokeWidth: 1,
        }),
        Plot.text([sure.line], {
          x: ({ low: from, high: to }: { low: number; high: number }) => Math.sqrt(from * to),
          y: dotsHeight + 32,
          text: () => (narrow ? 'by hand' : 'by hand, to first order'),
          dy: -9,
          className: 'kf-faint kf-on-paper',
        }),
      ],
    };
  },
  table(scene) {
    const { low, median, high, beats, line } = sureOf(scene);
    const { row } = scene;
    return {
      columns: ['What', 'Times as long'],
      rows: [
        ['Band, lower end (5 % of samples below)', times(low)],
        ['Middle of the samples', times(median)],
        ['Band, upper end (5 % above)', times(high)],
        ['Share of samples ahead', percent(beats, 1)],
        ['Band to first order, lower end', times(line.low)],
        ['Band to first order, upper end', times(line.high)],
        ['Close reading', times(row.careful.product)],
        ['Forces added', times(row.careful.rival)],
        ['Pocket reading', times(row.quick.product)],
      ],
    };
  },
  caption: (scene) =>
    `${bandSentence(scene)} The forces added give ${times(scene.row.careful.rival)}, the pocket reading ${times(scene.row.quick.product)}.`,
};
