import * as Plot from '@observablehq/plot';
import { lessOf, shortPercent } from './values.ts';
import type { Less } from './values.ts';
import { plain, short, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { steadyTop } from '../../figure-kit/steady-top.ts';

interface Bar {
  line: string;
  factor: number;
  sum: string;
}

const barsOf = ({ percent, leftPercent, exponent, faceValue, inverse, damped }: Less): Bar[] => {
  const p = short(percent);
  const left = plain(leftPercent / 100);
  return [
    { line: 'Before', factor: 1, sum: '' },
    { line: 'Face value', factor: faceValue, sum: `1 + ${p}/100` },
    { line: 'Inverse', factor: inverse, sum: `1 / ${left}` },
    { line: 'Damped', factor: damped, sum: `(1 / ${left})^${plain(exponent, 2)}` },
  ];
};

/** The three readings of "so much less of something harmful", as bars in proportion. */
export const lessBars: Figure = {
  id: 'less-bars',
  title: (scene) => `${shortPercent(lessOf(scene).percent)} less of what is in the way, read three ways`,
  units: 'times as much as before',
  scale: 'linear axis from 0',
  reading: () => 'face value, inverse and damped',
  source: 'derived; the exponent assumed',
  options(scene, { narrow }) {
    const bars = barsOf(lessOf(scene));
    return {
      height: 4 * 44 + 50,
      marginLeft: 78,
      marginRight: 66,
      marginTop: 6,
      marginBottom: 42,
      x: {
        domain: [0, steadyTop(Math.max(...bars.map(({ factor }) => factor)))],
        label: 'times as much as before',
        labelAnchor: 'center',
        labelArrow: 'none',
        ticks: narrow ? 4 : 8,
      },
      y: { domain: bars.map(({ line }) => line), label: null, tickSize: 0 },
      marks: [
        gridX(narrow ? 4 : 8),
        Plot.barX(bars, { y: 'line', x: 'factor', insetTop: 7, insetBottom: 7, className: 'kf-product' }),
        baselineX(1),
        Plot.text(bars, {
          y: 'line',
          x: 'factor',
          text: ({ factor }: Bar) => times(factor),
          textAnchor: 'start',
          dx: 7,
          className: 'kf-value kf-on-paper',
        }),
      ],
    };
  },
  /** A reading's bar by its end. */
  drag: (_scene, _size, { y: line }) =>
    line < 1 || line > 3
      ? undefined
      : { control: 'less', stands: (scene) => barsOf(lessOf(scene))[line]?.factor ?? 1 },
  table(scene) {
    return {
      columns: ['Reading', 'Sum', 'Times as long'],
      rows: barsOf(lessOf(scene)).map(({ line, sum, factor }) => [line, sum, times(factor)]),
    };
  },
  caption(scene) {
    const { percent, faceValue, inverse, damped, exponent } = lessOf(scene);
    return `${shortPercent(percent)} less: ${times(faceValue)} at face value, ${times(inverse)} as the inverse, ${times(damped)} damped to the power ${plain(exponent, 2)}. The line at 1 is before.`;
  },
};
