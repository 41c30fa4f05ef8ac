import * as Plot from '@observablehq/plot';
import { undoPercent } from '../../model/index.ts';
import { lessOf, shortPercent, signedShortPercent } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { gridX } from '../../figure-kit/grid.ts';

interface Stage {
  line: string;
  height: number;
}

function stagesOf(scene: Scene): Stage[] {
  const { percent } = lessOf(scene);
  const undo = undoPercent(percent);
  const back = (fall: number) => (1 + percent / 100) * (1 + fall / 100);
  return [
    { line: 'Start', height: 1 },
    { line: `Up ${shortPercent(percent)}`, height: 1 + percent / 100 },
    { line: `then ${signedShortPercent(-percent)}`, height: back(-percent) },
    // Of nothing risen, both falls are none; each line still needs its own name.
    { line: `or ${signedShortPercent(undo)}`, height: back(undo) },
  ];
}

/** A rise, the same fall taken of the risen heap, and the fall that truly undoes the rise. */
export const thereAndBack: Figure = {
  id: 'there-and-back',
  title: (scene) => `Up by ${shortPercent(lessOf(scene).percent)}, and two ways down again`,
  units: 'times the start',
  scale: 'linear axis from 0',
  reading: () => 'face values',
  source: 'derived',
  options(scene, { narrow }) {
    const stages = stagesOf(scene);
    return {
      height: 4 * 40 + 50,
      marginLeft: 98,
      marginRight: 54,
      marginTop: 6,
      marginBottom: 42,
      x: {
        domain: [0, 2],
        label: 'times the start',
        labelAnchor: 'center',
        labelArrow: 'none',
        ticks: narrow ? 4 : 8,
      },
      y: { domain: stages.map(({ line }) => line), label: null, tickSize: 0 },
      marks: [
        gridX(narrow ? 4 : 8),
        Plot.barX(stages, { y: 'line', x: 'height', insetTop: 7, insetBottom: 7, className: 'kf-product' }),
        Plot.ruleX([1], { className: 'kf-dimension' }),
        Plot.text(stages, {
          y: 'line',
          x: 'height',
          text: ({ height }: Stage) => times(height),
          textAnchor: 'start',
          dx: 7,
          className: 'kf-value kf-on-paper',
        }),
      ],
    };
  },
  /** What it rose to, and what it fell to from there, by the end of the bar. */
  drag: (_scene, _size, { y: line }) =>
    line < 1 || line > 2
      ? undefined
      : { control: 'less', stands: (scene) => stagesOf(scene)[line]?.height ?? 1 },
  table(scene) {
    return {
      columns: ['Stage', 'Times the start'],
      rows: stagesOf(scene).map(({ line, height }) => [line, times(height)]),
    };
  },
  caption(scene) {
    const { percent } = lessOf(scene);
    return `Up by ${shortPercent(percent)} and down by ${shortPercent(percent)} ends at ${times(1 - (percent / 100) ** 2)}. To be back at the start, the risen heap must fall by only ${shortPercent(-undoPercent(percent))}.`;
  },
};
