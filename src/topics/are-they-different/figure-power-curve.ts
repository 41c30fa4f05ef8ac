import * as Plot from '@observablehq/plot';
import { differentWords } from './words.ts';
import { chanceAt, chances, countedExactly, mostRuns, neededFor, power } from './values.ts';
import type { Chance, Needed } from './values.ts';
import { percent, thousands, wholePercent } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { gridY } from '../../figure-kit/grid.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';

const curves = ['within', 'mixed', 'alike'] as const;
type Curve = (typeof curves)[number];

const curveName: Record<Curve, string> = {
  within: 'told apart, within lots',
  mixed: 'told apart, lots ignored',
  alike: 'shown alike, within lots',
};

const runsOf = (needed: Needed, curve: Curve): string => {
  const count = needed[curve];
  if (count === null) return 'never';
  return `${count > countedExactly ? 'about ' : ''}${thousands(count)} runs`;
};

/** The chance that a plan of so many runs tells the predicted ratio, or shows it alike. */
export const powerCurveFigure: Figure = {
  id: 'power-curve',
  title: ({ subject, baseline }) =>
    `Chance of an answer by runs a knife: ${subject.name} against ${baseline.name}`,
  units: 'chance; runs a knife',
  scale: 'linear axes',
  reading: () => 'close reading as the true ratio',
  source: 'noncentral t; spread of the example',
  options(scene, { width, narrow }) {
    const points = chances(scene);
    const most = mostRuns(scene);
    const needed = neededFor(scene);
    const [marginLeft, marginRight, strokePx] = [52, 14, narrow ? 26 : 40];
    const inner = width - marginLeft - marginRight;
    const atX = (px: number): number => 2 + ((most - 2) * px) / inner;
    const [height, marginTop, marginBottom] = [narrow ? 320 : 350, 10, 42];
    // The key stands above the curves, in a stretch of the sheet no chance reaches.
    const keyPx = 64;
    const top = (height - marginTop - marginBottom) / (height - marginTop - marginBottom - keyPx);
    const keyY = (index: number): number => top - ((top - 1) * (8 + 19 * index)) / keyPx;
    const key = curves.map((curve, index) => ({
      curve,
      y: keyY(index),
      text: `${curveName[curve]}: ${runsOf(needed, curve)}`,
    }));
    return {
      height,
      marginTop,
      marginBottom,
      marginLeft,
      marginRight,
      x: {
        domain: [2, most],
        ...centredLabel('runs a knife'),
        ticks: narrow ? 5 : 8,
      },
      y: {
        domain: [0, top],
        label: null,
        ticks: [0, 0.2, 0.4, 0.6, 0.8, 1],
        tickFormat: wholePercent,
      },
      marks: [
        gridY([0, 0.2, 0.4, 0.6, 1]),
        Plot.ruleY([power], { className: 'kf-dimension' }),
        ...curves.map((curve) =>
          Plot.line(points, {
            x: 'runs',
            y: ({ [curve]: chance }: Chance) => chance,
            className: `kf-plan-${curve}`,
          }),
        ),
        ...key.map(({ curve, y }) =>
          Plot.line(
            [
              [atX(0), y],
              [atX(strokePx), y],
            ],
            { className: `kf-plan-${curve}` },
          ),
        ),
        Plot.text(key, { x: atX(strokePx), y: 'y', text: 'text', dx: 7, textAnchor: 'start' }),
        Plot.dot(
          curves.flatMap((curve) => {
            const count = needed[curve];
            return count === null || count > most
              ? []
              : [{ runs: count, chance: chanceAt(scene, count)[curve] }];
          }),
          { x: 'runs', y: 'chance', r: 4, className: 'kf-answer' },
        ),
      ],
    };
  },
  table(scene) {
    const most = mostRuns(scene);
    const listed = [2, 3, 4, 6, 9, 12, 20, 30, 45, 60, 90, 120].filter((runs) => runs <= most);
    const cell = (share: number): string => (share > 0.9995 ? 'over 99.9 %' : percent(share, 1));
    return {
      columns: ['Runs a knife', ...curves.map((curve) => curveName[curve])],
      rows: listed.map((runs) => {
        const at = chanceAt(scene, runs);
        return [String(runs), ...curves.map((curve) => cell(at[curve]))];
      }),
    };
  },
  caption: (scene) => (differentWords['runs-plan']?.(scene) ?? []).filter(Boolean).join(' '),
};
