import * as Plot from '@observablehq/plot';
import { differentWords } from './words.ts';
import { chanceAt, chances, countedExactly, mostRuns, neededFor, power } from './values.ts';
import type { Chance, Needed } from './values.ts';
import { percent, thousands, wholePercent } from '../../scene/show.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { gridY } from '../../figure-kit/grid.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { frameOf } from '../../figure-kit/frame.ts';
import { strokeKey } from '../../figure-kit/key.ts';
import { linearAt } from '../../figure-kit/pixels.ts';

const curves = ['within', 'mixed', 'alike'] as const;
type Curve = (typeof curves)[number];

const curveName: Record<Curve, string> = {
  within: 'a real difference, within batches',
  mixed: 'a real difference, batches ignored',
  alike: 'as good as equal, within batches',
};

const runsOf = (needed: Needed, curve: Curve): string => {
  const count = needed[curve];
  if (count === null) return 'never';
  return `${count > countedExactly ? 'about ' : ''}${thousands(count)} runs`;
};

const strokeOf = (curve: Curve): string => `kf-plan-${curve}`;

/** The frame, and the key above the curves, in a stretch of the sheet no chance reaches. */
function layoutOf(needed: Needed, most: number, { width, narrow }: Size) {
  const { frame, inner } = frameOf(width, narrow ? 320 : 350, { top: 10, right: 14, bottom: 42, left: 52 });
  const keyPx = 64;
  const top = inner.height / (inner.height - keyPx);
  const [atX, atY] = [linearAt(2, most, inner.width), linearAt(top, 1, keyPx)];
  const key = curves.map((curve, index) => ({
    className: strokeOf(curve),
    y: atY(8 + 19 * index),
    text: `${curveName[curve]}: ${runsOf(needed, curve)}`,
  }));
  return { frame, top, key, strokes: [atX(0), atX(narrow ? 26 : 40)] as const };
}

/** The chance that a plan of so many runs shows the predicted ratio as a real difference, or as good as equal. */
export const powerCurveFigure: Figure = {
  id: 'power-curve',
  title: ({ subject, baseline }) =>
    `Chance of an answer by runs a knife: ${subject.name} against ${baseline.name}`,
  units: 'chance; runs a knife',
  scale: 'linear axes',
  reading: () => 'careful estimate as the true ratio',
  source: 'noncentral t; spread of the example',
  options(scene, size) {
    const { narrow } = size;
    const points = chances(scene);
    const most = mostRuns(scene);
    const needed = neededFor(scene);
    const { frame, top, key, strokes } = layoutOf(needed, most, size);
    return {
      ...frame,
      x: { domain: [2, most], ...centredLabel('runs a knife'), ticks: narrow ? 5 : 8 },
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
            className: strokeOf(curve),
          }),
        ),
        ...strokeKey(key, strokes, { dx: 7 }),
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
    const cell = (share: number): string => (share > 0.9995 ? 'over 99.9%' : percent(share, 1));
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
