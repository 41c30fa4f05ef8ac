import * as Plot from '@observablehq/plot';
import { lessOf, readLess, shortPercent } from './values.ts';
import type { Less } from './values.ts';
import { brief, plain, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';

interface Line {
  name: string;
  at(less: Less): string;
  mark(less: Less): string;
}

const lines: readonly Line[] = [
  {
    name: 'Left',
    at: ({ leftPercent }) => brief(leftPercent),
    mark: ({ leftPercent }) => shortPercent(leftPercent),
  },
  { name: 'Face value', at: ({ faceValue }) => plain(faceValue), mark: ({ faceValue }) => times(faceValue) },
  { name: 'Inverse', at: ({ inverse }) => plain(inverse), mark: ({ inverse }) => times(inverse) },
  { name: 'Damped', at: ({ damped }) => plain(damped), mark: ({ damped }) => times(damped) },
];

/** How much less, per cent, at the marks of the lines; of nothing left there is no inverse. */
const marked = [0, 20, 40, 60, 80];

interface Mark {
  left: number;
  line: string;
  text: string;
}

/** Number lines under one another: what is left, and what each reading makes of it at the same place. */
export const lessLines: Figure = {
  id: 'less-lines',
  title: () => 'What is left, and what each reading makes of it',
  units: 'per cent left; times as much as before',
  scale: 'linear in what is left',
  reading: () => 'face value, inverse and damped',
  source: 'derived; the exponent assumed',
  options(scene) {
    const less = lessOf(scene);
    const { exponent, leftPercent } = less;
    const marks = marked.flatMap((percent) =>
      lines.map(({ name, at }): Mark => {
        const there = readLess(percent, exponent);
        return { left: there.leftPercent, line: name, text: at(there) };
      }),
    );
    const here = lines.map(({ name, mark }): Mark => ({ left: leftPercent, line: name, text: mark(less) }));
    const anchor = leftPercent > 90 ? 'start' : leftPercent < 10 ? 'end' : 'middle';
    return {
      height: 4 * 58 + 16,
      marginLeft: 84,
      marginRight: 14,
      marginTop: 10,
      marginBottom: 6,
      x: { domain: [100, 0], axis: null },
      y: { type: 'band', domain: lines.map(({ name }) => name), label: null, tickSize: 0 },
      marks: [
        Plot.ruleY(
          lines.map(({ name }) => name),
          { y: (name: string) => name, x1: 0, x2: 100, className: 'kf-stem' },
        ),
        Plot.tickX(marks, { x: 'left', y: 'line', insetTop: 20, insetBottom: 20, className: 'kf-stem' }),
        Plot.ruleX([leftPercent], { className: 'kf-dimension' }),
        Plot.text(marks, { x: 'left', y: 'line', text: 'text', dy: 15, className: 'kf-faint kf-on-paper' }),
        Plot.dot(here, { x: 'left', y: 'line', r: 4, className: 'kf-answer' }),
        Plot.text(here, {
          x: 'left',
          y: 'line',
          text: 'text',
          dy: -14,
          textAnchor: anchor,
          dx: anchor === 'start' ? 2 : anchor === 'end' ? -2 : 0,
          className: 'kf-value kf-on-paper',
        }),
      ],
    };
  },
  drag: () => ({ control: 'less', value: ({ x }) => 100 - x }),
  table(scene) {
    const { exponent } = lessOf(scene);
    return {
      columns: ['Left', 'Less', 'Face value', 'Inverse', 'Damped'],
      rows: [...marked, 90].map((percent) => {
        const { leftPercent, faceValue, inverse, damped } = readLess(percent, exponent);
        return [`${brief(leftPercent)}%`, `${percent}%`, times(faceValue), times(inverse), times(damped)];
      }),
    };
  },
  caption(scene) {
    const { leftPercent, faceValue, inverse } = lessOf(scene);
    return `Where ${shortPercent(leftPercent)} is left, face value reads ${times(faceValue)} and the inverse ${times(inverse)}. Equal steps at face value; ever longer ones as the inverse, which has no end.`;
  },
};
