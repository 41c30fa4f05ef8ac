import * as Plot from '@observablehq/plot';
import { finishesOf, umOf } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { scratchesOf } from './scratches.ts';
import { plain } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { whisker } from '../../figure-kit/whisker.ts';
import { valueText } from '../../figure-kit/value-text.ts';

const roles = ['subject', 'baseline'] as const;
const bandsOf = (scene: Scene) => {
  const finishes = finishesOf(scene);
  return roles.map((role) => ({
    line: role,
    name: scene[role].name,
    finish: finishes[role],
    ...scratchesOf(finishes[role].um),
  }));
};
type Band = ReturnType<typeof bandsOf>[number];

const ends = ['least', 'low', 'high', 'most'] as const;

/** How deep the scratches of either finish go: the rule's band as a bar, its doubt as a line through it. */
export const scratchDepths: Figure = {
  id: 'scratch-depths',
  title: ({ subject, baseline }) => `Scratches of the finishes of ${subject.name} and ${baseline.name}`,
  units: 'µm deep',
  scale: 'linear axis from 0',
  reading: () => 'as entered',
  source: 'two charts, a factor of two apart',
  options(scene, { narrow }) {
    const bands = bandsOf(scene);
    return {
      height: 2 * 70 + 54,
      marginLeft: 10,
      marginRight: 14,
      marginTop: 6,
      marginBottom: 42,
      x: {
        domain: [0, Math.max(...bands.map(({ most }) => most)) * 1.04],
        ...centredLabel('depth of the scratches, µm'),
        ticks: narrow ? 4 : 8,
      },
      y: { domain: bands.map(({ line }) => line), axis: null },
      marks: [
        gridX(narrow ? 4 : 8),
        Plot.barX(bands, {
          y: 'line',
          x1: 'low',
          x2: 'high',
          fill: hatch('finish'),
          stroke: ink('finish'),
          insetTop: 32,
          insetBottom: 10,
        }),
        ...whisker(bands, { y: 'line', low: 'least', high: 'most', dy: 10, insetTop: 38, insetBottom: 16 }),
        baselineX(0),
        valueText(bands, {
          y: 'line',
          x: 0,
          text: ({ name, finish, low, high }: Band) =>
            `${shortName(name, narrow ? 12 : 30)}, ${finish.name}: ${plain(low, 2)} to ${plain(high, 2)} µm`,
          dx: 6,
          dy: -20,
        }),
      ],
    };
  },
  /** A bar or its doubt by either end, whichever is nearest. */
  drag(scene, _size, { x, y: line }) {
    const band = bandsOf(scene)[line];
    if (!band) return undefined;
    const [end] = [...ends].sort((a, b) => Math.abs(band[a] - x) - Math.abs(band[b] - x));
    return end && { control: `${band.line}.grit`, stands: (other) => bandsOf(other)[line]?.[end] ?? 0 };
  },
  table: (scene) => ({
    columns: ['Knife', 'Grain', 'Least, by the doubt', 'From', 'To', 'Most, by the doubt'],
    rows: bandsOf(scene).map(({ name, finish, low, high, least, most }) => [
      name,
      umOf(finish.um),
      ...[least, low, high, most].map((um) => `${plain(um, 2)} µm`),
    ]),
  }),
  caption: (scene) =>
    `${bandsOf(scene)
      .map(({ name, low, high }) => `${name}: ${plain(low, 2)} to ${plain(high, 2)} µm deep`)
      .join('; ')}. The line through each bar is the doubt of a factor of two either way.`,
};
