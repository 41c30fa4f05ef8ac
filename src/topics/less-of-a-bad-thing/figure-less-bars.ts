import { barsInProportion } from './bars.ts';
import type { Bar } from './bars.ts';
import { lessOf, shortPercent } from './values.ts';
import type { Less } from './values.ts';
import { plain, short, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX } from '../../figure-kit/grid.ts';
import { steadyTop } from '../../figure-kit/steady-top.ts';

interface ReadBar extends Bar {
  sum: string;
}

const barsOf = ({ percent, leftPercent, exponent, faceValue, inverse, damped }: Less): ReadBar[] => {
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
    return barsInProportion(bars, {
      rowPx: 44,
      marginLeft: 78,
      marginRight: 66,
      end: steadyTop(Math.max(...bars.map(({ factor }) => factor))),
      label: 'times as much as before',
      ticks: narrow ? 4 : 8,
      atOne: baselineX(1),
    });
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
