import * as Plot from '@observablehq/plot';
import type { Scene } from '../../scene/scene.ts';
import { ratioSaid } from '../../phrases/judged-runs.ts';
import { times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';

interface Answer {
  name: string;
  ratio: number;
}

const answersOf = ({ row }: Scene): Answer[] => [
  { name: 'Quick sum', ratio: row.quick.multiplied },
  { name: 'All multiplied', ratio: row.careful.multiplied },
  { name: 'Forces added', ratio: row.careful.added },
  { name: 'To a limit', ratio: row.careful.toLimit },
];

/** The quick sum, and the careful estimate combined three ways: four answers to one question, on one axis. */
export const readings: Figure = {
  id: 'readings',
  title: ({ subject, baseline }) =>
    `${subject.name} against ${baseline.name}: the quick sum, and three ways to combine`,
  units: 'times as long as the baseline',
  scale: 'logarithmic axis',
  reading: () => 'quick sum; careful estimate at its middle settings',
  source: 'factor model',
  options(scene, { narrow }) {
    const answers = answersOf(scene);
    const ratios = [1, ...answers.map(({ ratio }) => ratio)];
    const low = Math.min(...ratios) / 1.4;
    const high = Math.max(...ratios) * 1.6;
    const ticks = tickValues(low, high, narrow);
    return {
      height: 196,
      marginLeft: 148,
      marginRight: 52,
      marginTop: 6,
      marginBottom: 42,
      x: ratioAxisX(low, high, narrow, 'times as long as the baseline'),
      y: { domain: answers.map(({ name }) => name), label: null, tickSize: 0 },
      marks: [
        gridX(ticks),
        baselineX(1),
        Plot.ruleY(answers, { y: 'name', x1: 1, x2: 'ratio', className: 'kf-stem' }),
        Plot.dot(answers, { x: 'ratio', y: 'name', r: 5, className: 'kf-answer' }),
        Plot.text(answers, {
          // Right of the stem on either side of 1.
          x: ({ ratio }: Answer) => Math.max(1, ratio),
          y: 'name',
          text: ({ ratio }: Answer) => times(ratio),
          dx: 9,
          textAnchor: 'start',
          className: 'kf-value',
        }),
      ],
    };
  },
  table: (scene) => ({
    columns: ['Way', 'Times as long'],
    rows: answersOf(scene).map(({ name, ratio }) => [name, times(ratio)]),
  }),
  caption: (scene) => {
    const { added, multiplied, toLimit } = scene.row.careful;
    const ends = [Math.min(added, multiplied, toLimit), Math.max(added, multiplied, toLimit)];
    const range = [...new Set(ends.map((end) => ratioSaid(end)))].join(' to ');
    return `The quick sum gives ${ratioSaid(scene.row.quick.multiplied)}. At its middle settings the careful estimate gives ${range}${range.includes(' to ') ? ', by how the effects combine' : ', however the effects combine'}.`;
  },
};
