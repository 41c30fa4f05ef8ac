import * as Plot from '@observablehq/plot';
import { frictions, sideBySide } from './values.ts';
import type { UnderFriction } from './values.ts';
import { routesWords } from './words.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { valueText } from '../../figure-kit/value-text.ts';

/** What is compared at both frictions, from part to whole. */
const lines: readonly { name: string; short: string; of: (at: UnderFriction) => number }[] = [
  { name: 'Wedge', short: 'Wedge', of: ({ wedge }) => wedge },
  { name: 'Apex', short: 'Apex', of: ({ apex }) => apex },
  { name: 'Angle: both', short: 'Angle: both', of: ({ angle }) => angle },
  { name: 'Grind', short: 'Grind', of: ({ grind }) => grind },
  { name: 'All, if they multiply', short: 'All multiplied', of: ({ multiplied }) => multiplied },
  { name: 'All, if the forces add', short: 'All, forces add', of: ({ added }) => added },
  { name: 'All, if the force has a limit', short: 'All, to a limit', of: ({ toLimit }) => toLimit },
];

interface Line {
  line: string;
  none: number;
  much: number;
}

const linesOf = (scene: Scene, narrow: boolean): Line[] => {
  const both = sideBySide(scene);
  return both === null
    ? []
    : lines.map(({ name, short, of }) => ({
        line: narrow ? short : name,
        none: of(both[0]),
        much: of(both[1]),
      }));
};

const [none, much] = frictions;
const rowPx = 36;

const refused = Plot.text([`at a friction of ${brief(much)} one of these cannot be driven in`], {
  frameAnchor: 'middle',
  lineWidth: 18,
  className: 'kf-faint',
});

/** The chain without friction and at the most friction of the stated range, part by part. */
export const frictionSideBySide: Figure = {
  id: 'friction-side-by-side',
  title: ({ subject, baseline }) =>
    `${subject.name} against ${baseline.name}, without friction and at a friction of ${brief(much)}`,
  units: 'times as long as the baseline',
  scale: 'logarithmic axis',
  reading: () => 'careful estimate, at the middle settings',
  source: 'factor model',
  options(scene, { narrow }) {
    const rows = linesOf(scene, narrow);
    const all = [1, ...rows.flatMap((row) => [row.none, row.much])];
    const [low, high] = [Math.min(...all) / 1.25, Math.max(...all) * 1.25];
    const key = [
      { text: 'no friction', className: 'kf-stem kf-open' },
      { text: `friction ${brief(much)}`, className: 'kf-answer' },
    ].map((one, index) => ({ ...one, x: low, line: ' ', dx: index * (narrow ? 108 : 120) + 8 }));
    return {
      height: (lines.length + 1) * rowPx + 48,
      marginLeft: narrow ? 104 : 176,
      marginRight: narrow ? 12 : 96,
      marginTop: 4,
      marginBottom: 42,
      x: ratioAxisX(low, high, narrow, 'times as long as the baseline'),
      y: { domain: [' ', ...rows.map(({ line }) => line)], label: null, tickSize: 0 },
      marks: [
        gridX(tickValues(low, high, narrow)),
        baselineX(1),
        Plot.ruleY(rows, { y: 'line', x1: 'none', x2: 'much', className: 'kf-stem' }),
        Plot.dot(rows, { x: 'none', y: 'line', r: 5, className: 'kf-stem kf-open' }),
        Plot.dot(rows, { x: 'much', y: 'line', r: 5, className: 'kf-answer' }),
        ...(narrow
          ? []
          : [
              Plot.text(rows, {
                y: 'line',
                text: (row: Line) => `${times(row.none)}, ${times(row.much)}`,
                frameAnchor: 'right',
                textAnchor: 'start',
                dx: 8,
                className: 'kf-value',
              }),
            ]),
        ...key.flatMap(({ x, line, dx, text, className }) => [
          Plot.dot([{ x, line }], { x: 'x', y: 'line', dx, r: 5, className }),
          valueText([{ x, line }], { x: 'x', y: 'line', dx: dx + 9, text: () => text }),
        ]),
        ...(rows.length === 0 ? [refused] : []),
      ],
    };
  },
  table(scene) {
    const rows = linesOf(scene, false);
    return {
      columns: ['Factor or total', `Friction ${brief(none)}`, `Friction ${brief(much)}`],
      rows:
        rows.length === 0
          ? [['all of it', 'not computed', 'cannot be driven in']]
          : rows.map((row) => [row.line, times(row.none), times(row.much)]),
    };
  },
  caption(scene) {
    const both = sideBySide(scene);
    const whole =
      both === null
        ? []
        : [
            `All factors multiplied make ${plain(both[0].multiplied, 2)} times as long without friction and ${plain(both[1].multiplied, 2)} times at ${brief(much)}.`,
          ];
    return [...(routesWords['routes-friction']?.(scene) ?? []), ...whole].join(' ');
  },
};
