import * as Plot from '@observablehq/plot';
import { costAskedFirst, costsOf } from './values.ts';
import type { CostAsked } from './asked.ts';
import { costVerdict, offerName } from './words.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, times } from '../../scene/show.ts';
import { knifeName } from '../what-it-takes/words.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { frameOf } from '../../figure-kit/frame.ts';
import type { Drawing } from '../../figure-kit/figure.ts';
import { valueText } from '../../figure-kit/value-text.ts';

interface Point {
  name: string;
  price: number;
  ratio: number;
  belowFloor: boolean;
}

/** Labels of points as near as this, px, would lie on each other. */
const besidePx = 130;
const linePx = 15;

/**
 * The height of each label: its point's own, or further down where another label is in the way.
 *
 * @param places of the points, px
 */
function labelHeights(places: readonly { x: number; y: number }[]): number[] {
  const taken: { x: number; y: number }[] = [];
  const heights = places.map(() => 0);
  const order = places.map((place, index) => ({ ...place, index })).sort((a, b) => a.y - b.y);
  for (const { x, y, index } of order) {
    let height = y;
    for (const other of taken)
      if (Math.abs(other.x - x) < besidePx && height - other.y < linePx) height = other.y + linePx;
    taken.push({ x, y: height });
    heights[index] = height;
  }
  return heights;
}

/** The offers that have a price. */
const pricedPoints = (scene: Scene, asked: CostAsked): Point[] =>
  costsOf(scene, asked).flatMap((one) =>
    'cost' in one && one.cost.price !== null
      ? [
          {
            name: offerName(one.asked),
            price: one.cost.price,
            ratio: one.cost.ratioGained,
            belowFloor: one.cost.belowFloor,
          },
        ]
      : [],
  );

/** The points' names and ratios, beside them on the side that has room, none across another. */
function labelMarks(
  points: readonly Point[],
  {
    low,
    high,
    dearest,
    inner,
  }: { low: number; high: number; dearest: number; inner: { width: number; height: number } },
): Plot.RenderableMark[] {
  const across = (price: number) => (price / dearest) * inner.width;
  const down = (ratio: number) => (Math.log(high / ratio) / Math.log(high / low)) * inner.height;
  const heights = labelHeights(points.map(({ price, ratio }) => ({ x: across(price), y: down(ratio) })));
  const labelled = points.map((point, index) => ({
    ...point,
    at: high / (high / low) ** ((heights[index] ?? 0) / inner.height),
    left: point.price > dearest * 0.55,
  }));
  return [false, true].map((left) =>
    valueText(
      labelled.filter((one) => one.left === left),
      {
        x: 'price',
        y: 'at',
        text: ({ name, ratio }: Point) => `${name} ${times(ratio)}`,
        textAnchor: left ? 'end' : 'start',
        dx: left ? -10 : 10,
      },
    ),
  );
}

function drawn(points: readonly Point[], { width, narrow }: Size): Drawing {
  const ratios = [1, ...points.map(({ ratio }) => ratio)];
  const [low, high] = [Math.min(...ratios) / 1.25, Math.max(...ratios) * 1.35];
  const dearest = Math.max(1, ...points.map(({ price }) => price)) * 1.08;
  const { frame, inner } = frameOf(width, narrow ? 280 : 320, { top: 14, right: 14, bottom: 44, left: 46 });
  return {
    ...frame,
    x: {
      domain: [0, dearest],
      ...centredLabel('price, in your own money'),
      ticks: narrow ? 4 : 8,
      tickFormat: brief,
    },
    y: ratioAxis(low, high, narrow, 'times as long as now'),
    marks: [
      gridY(tickValues(low, high, narrow)),
      baselineY(1),
      Plot.link(points, { x1: 0, y1: 1, x2: 'price', y2: 'ratio', className: 'kf-dimension' }),
      Plot.dot(points, { x: 'price', y: 'ratio', r: 6, symbol: 'diamond', className: 'kf-answer' }),
      ...labelMarks(points, { low, high, dearest, inner }),
    ],
  };
}

/** What each offer gives against its price. Offers are typed beside the comparison, so they come with the figure. */
export function priceGainOf(askedOf: (scene: Scene) => CostAsked): Figure {
  const pointsOf = (scene: Scene): Point[] => pricedPoints(scene, askedOf(scene));
  return {
    id: 'price-gain',
    title: (scene) => `What offers for ${knifeName(scene, askedOf(scene).knife)} give, and their price`,
    units: 'times as long as now; your own money',
    scale: 'logarithmic upright axis',
    reading: () => 'if the factors multiply, middle settings',
    source: 'factor model; prices as typed',
    options: (scene, size) => drawn(pointsOf(scene), size),
    table(scene) {
      const points = pointsOf(scene);
      const columns = ['Offer', 'Price', 'Times as long as now'];
      if (points.length === 0) return { columns, rows: [['no offer with a price', '–', '–']] };
      return {
        columns,
        rows: points.map(({ name, price, ratio, belowFloor }) => [
          name,
          brief(price),
          `${times(ratio)}${belowFloor ? ', below the floor' : ''}`,
        ]),
      };
    },
    caption(scene) {
      const asked = askedOf(scene);
      const priced = pointsOf(scene).length > 0 ? '' : ' No offer has a price yet.';
      return `${costVerdict(scene, asked, costsOf(scene, asked)).join(' ')}${priced}`;
    },
  };
}

/** The same of the offers that stand in the fields at first. */
export const priceGain = priceGainOf(costAskedFirst);
