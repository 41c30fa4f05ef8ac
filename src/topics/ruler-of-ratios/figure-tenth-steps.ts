import * as Plot from '@observablehq/plot';
import { fullName, largest, rulerOf } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';

/** More bars than this are a wall; a factor beyond it is told, not drawn. */
const mostSteps = 26;

interface Bar {
  step: number;
  height: number;
}

/** How far the largest effect reaches, forward or back, in steps of a tenth. */
const reachOf = (scene: Scene): number => Math.abs(largest(rulerOf(scene))?.steps ?? 0);

const barsOf = (scene: Scene): Bar[] =>
  Array.from({ length: Math.min(mostSteps, Math.max(4, Math.ceil(reachOf(scene)))) + 1 }, (_, step) => ({
    step,
    height: 1.1 ** step,
  }));

/** A tenth more, again and again, on a linear axis: how many steps make the largest effect? */
export const tenthSteps: Figure = {
  id: 'tenth-steps',
  title: () => 'A tenth more, again and again',
  units: 'times the start',
  scale: 'linear axis from 0',
  reading: (scene) => (scene.entry.faceValues ? 'face values' : 'careful estimate'),
  source: 'derived',
  options(scene, { narrow }) {
    const bars = barsOf(scene);
    const last = bars.length - 1;
    const reach = reachOf(scene);
    const target = 1.1 ** reach;
    const drawn = reach > 0 && reach <= last ? [{ step: reach, height: target }] : [];
    // A label of the target that would leave the sheet stands on its other side.
    const early = reach < last / 2;
    return {
      height: narrow ? 260 : 280,
      marginLeft: 36,
      marginRight: 10,
      marginTop: 26,
      marginBottom: 40,
      x: {
        domain: [-0.6, last + 0.6],
        ...centredLabel('steps of a tenth more'),
        ticks: bars.map(({ step }) => step).filter((step) => step % (last > (narrow ? 8 : 16) ? 4 : 1) === 0),
        tickFormat: String,
        tickSize: 0,
      },
      y: { domain: [0, (bars.at(-1)?.height ?? 1) * 1.08], label: 'times the start', ticks: 5 },
      marks: [
        gridY(5),
        Plot.rectY(bars, {
          x1: ({ step }: Bar) => step - 0.38,
          x2: ({ step }: Bar) => step + 0.38,
          y1: 0,
          y2: 'height',
          className: 'kf-product',
        }),
        baselineY(1),
        Plot.ruleX(drawn, { x: 'step', y1: 0, y2: 'height', className: 'kf-dimension' }),
        Plot.link(drawn, { x1: -0.6, x2: 'step', y1: 'height', y2: 'height', className: 'kf-dimension' }),
        Plot.dot(drawn, { x: 'step', y: 'height', r: 5, className: 'kf-answer' }),
        valueText(drawn, {
          x: early ? 'step' : () => -0.5,
          y: 'height',
          text: () => `${times(target)} at ${plain(reach)} steps`,
          dx: early ? 8 : 0,
          dy: -9,
        }),
      ],
    };
  },
  table: (scene) => ({
    columns: ['Steps', 'Times the start'],
    rows: barsOf(scene).map(({ step, height }) => [String(step), times(height)]),
  }),
  caption(scene) {
    const ruler = rulerOf(scene);
    const big = largest(ruler);
    if (!big) return 'A tenth more at each step. There is no effect, so no step is needed.';
    const way =
      big.steps < 0
        ? `${plain(-big.steps)} steps back, for it undoes ${times(1 / big.factor)}`
        : `${plain(big.steps)} steps`;
    return `A tenth more at each step. ${fullName(big)} takes ${way}; all the effects together take ${plain(ruler.steps)}.`;
  },
};
