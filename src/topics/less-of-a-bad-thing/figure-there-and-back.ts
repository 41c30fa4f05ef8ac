import * as Plot from '@observablehq/plot';
import { undoPercent } from '../../model/index.ts';
import { barsInProportion } from './bars.ts';
import type { Bar } from './bars.ts';
import { lessOf, shortPercent, signedShortPercent } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';

function stagesOf(scene: Scene): Bar[] {
  const { percent } = lessOf(scene);
  const undo = undoPercent(percent);
  const back = (fall: number) => (1 + percent / 100) * (1 + fall / 100);
  return [
    { line: 'Start', factor: 1 },
    { line: `Up ${shortPercent(percent)}`, factor: 1 + percent / 100 },
    { line: `then ${signedShortPercent(-percent)}`, factor: back(-percent) },
    // Of nothing risen, both falls are none; each line still needs its own name.
    { line: `or ${signedShortPercent(undo)}`, factor: back(undo) },
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
  options: (scene, { narrow }) =>
    barsInProportion(stagesOf(scene), {
      rowPx: 40,
      marginLeft: 98,
      marginRight: 54,
      end: 2,
      label: 'times the start',
      ticks: narrow ? 4 : 8,
      atOne: Plot.ruleX([1], { className: 'kf-dimension' }),
    }),
  /** What it rose to, and what it fell to from there, by the end of the bar. */
  drag: (_scene, _size, { y: line }) =>
    line < 1 || line > 2
      ? undefined
      : { control: 'less', stands: (scene) => stagesOf(scene)[line]?.factor ?? 1 },
  table(scene) {
    return {
      columns: ['Stage', 'Times the start'],
      rows: stagesOf(scene).map(({ line, factor }) => [line, times(factor)]),
    };
  },
  caption(scene) {
    const { percent } = lessOf(scene);
    return `Up by ${shortPercent(percent)} and down by ${shortPercent(percent)} ends at ${times(1 - (percent / 100) ** 2)}. To be back at the start, the risen heap must fall by only ${shortPercent(-undoPercent(percent))}.`;
  },
};
