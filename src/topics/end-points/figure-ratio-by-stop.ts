import * as Plot from '@observablehq/plot';
import type { EndPointRatio } from '../../runs/equal-sharpness.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, percent, times } from '../../scene/show.ts';
import { endPointsWords } from './words.ts';
import { endPointsOf } from './values.ts';
import type { EndPoints } from './values.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';

interface Way {
  id: string;
  what(compared: EndPoints): string;
  units: string;
  axis(compared: EndPoints): string;
  endPoints(compared: EndPoints): readonly EndPointRatio[];
  /** The one that is pointed at. */
  one(compared: EndPoints): EndPointRatio | null;
  show(endPoint: number): string;
  words: readonly string[];
}

const saidOf = (scene: Scene, names: readonly string[]): string =>
  names
    .flatMap((name) => endPointsWords[name]?.(scene) ?? [])
    .filter((sentence) => sentence !== '')
    .join(' ');

/** The ends of the axis of ratios, and the points that have a band, or a ratio without a curve. */
function reachOf(points: readonly EndPointRatio[]) {
  const banded = points.filter(({ low, high }) => low !== null && high !== null);
  const free = points.filter(({ curveFree }) => curveFree !== null);
  const values = [
    1,
    ...points.map(({ ratio }) => ratio),
    ...banded.flatMap(({ low, high }) => [low ?? 1, high ?? 1]),
    ...free.map(({ curveFree }) => curveFree ?? 1),
  ];
  return { banded, free, low: Math.min(...values) / 1.2, high: Math.max(...values) * 1.2 };
}

const noneInCommon = Plot.text([1], {
  frameAnchor: 'middle',
  text: () => 'no end point in common',
  className: 'kf-value',
});

const pointedAt = (at: EndPointRatio | null): Plot.RenderableMark[] =>
  at === null
    ? []
    : [
        Plot.ruleX([at.endPoint], { className: 'kf-dimension' }),
        Plot.dot([at], { x: 'endPoint', y: 'ratio', r: 5, className: 'kf-answer' }),
        Plot.text([at], {
          x: 'endPoint',
          y: 'ratio',
          text: ({ ratio }: EndPointRatio) => times(ratio),
          dy: -14,
          className: 'kf-value kf-on-paper',
        }),
      ];

const rowOf = (show: Way['show'], { endPoint, ratio, low, high, curveFree }: EndPointRatio): string[] => {
  const orOpen = (value: number | null): string => (value === null ? '–' : times(value));
  return [show(endPoint), times(ratio), orOpen(low), orOpen(high), orOpen(curveFree)];
};

/** The ratio of what two knives have cut, over the end point at which they are compared. */
const ratioOver = ({ id, what, units, axis, endPoints, one, show, words }: Way): Figure => ({
  id,
  title: (scene) => `${scene.subject.name} against ${scene.baseline.name} ${what(endPointsOf(scene))}`,
  units,
  scale: 'ratio: logarithmic axis',
  reading: (scene) =>
    endPointsOf(scene).origin === 'own' ? 'as logged; no model in it' : 'careful estimate as the truth',
  source: 'least squares; 95% for all end points at once, as logs are judged',
  options(scene, { narrow }) {
    const compared = endPointsOf(scene);
    const points = endPoints(compared);
    const { low, high, banded, free } = reachOf(points);
    const [first, last] = [points[0]?.endPoint ?? 1, points.at(-1)?.endPoint ?? 0];
    return {
      height: narrow ? 280 : 320,
      marginLeft: narrow ? 46 : 54,
      marginRight: 16,
      marginTop: 24,
      marginBottom: 42,
      x: {
        domain: first === last ? [first * 1.1, first * 0.9] : [first, last],
        ...centredLabel(axis(compared)),
        ticks: narrow ? 5 : 8,
        tickFormat: show,
      },
      y: { ...ratioAxis(low, high, false, 'times as much cut'), labelAnchor: 'top' },
      marks: [
        gridY(tickValues(low, high, false)),
        baselineY(1),
        Plot.areaY(banded, { x: 'endPoint', y1: 'low', y2: 'high', className: 'kf-stop-band' }),
        Plot.line(points, { x: 'endPoint', y: 'ratio', className: 'kf-route-careful' }),
        Plot.dot(free, {
          x: 'endPoint',
          y: 'curveFree',
          r: 2.5,
          className: 'kf-chance',
          stroke: 'currentColor',
        }),
        ...pointedAt(one(compared)),
        ...(points.length === 0 ? [noneInCommon] : []),
      ],
    };
  },
  table(scene) {
    const compared = endPointsOf(scene);
    return {
      columns: [axis(compared), 'Times as much cut', 'From', 'To', 'Without a curve'],
      rows: endPoints(compared).map((point) => rowOf(show, point)),
    };
  },
  caption: (scene) =>
    `${saidOf(scene, words)} The line is the ratio by the fitted curves, the grey its band where there is one, the dots the ratio without any curve. The band holds at all end points at once, in 95 of 100 such tests.`,
});

export const ratioByEndPoint: Figure = ratioOver({
  id: 'ratio-by-stop',
  what: ({ read }) => `at equal ${read ?? 'readings'}`,
  units: 'times as much cut, by the reading at the end point',
  axis: ({ read }) => `${read ?? 'reading'} at the end point, from sharp to blunt`,
  endPoints: ({ bySharpness }) => bySharpness,
  one: ({ chosen }) => chosen,
  show: brief,
  words: ['stops-ratio'],
});

export const ratioByLoss: Figure = ratioOver({
  id: 'ratio-by-loss',
  what: () => 'at equal loss',
  units: 'times as much cut, by what is left of each edge’s start',
  axis: ({ read }) => (read === 'force' ? 'first force as a share of the force' : 'left of the own start'),
  endPoints: ({ byLoss }) => byLoss,
  one: ({ half }) => half,
  show: (share) => percent(share),
  words: ['stops-loss'],
});
