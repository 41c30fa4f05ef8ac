import * as Plot from '@observablehq/plot';
import type { Family } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { ends, stackOf, ways } from '../../scene/stack.ts';
import type { Stacked, Way } from '../../scene/stack.ts';
import { readingName } from '../../phrases/reading-name.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { familyName } from '../../phrases/family-names.ts';
import { factorIds, families } from '../../scene/factors.ts';

const wayName: Record<Way, string> = { quick: 'pocket', careful: 'close', rival: 'forces added' };

interface Line {
  line: string;
  /** What stands at its left. */
  label: string;
  knife: Stacked;
  /** Null on a line that only carries the knife's name. */
  way: Way | null;
  ratio: number;
}

/** A name line for every knife, and below it one line for each way, save for the baseline, which is 1 by all. */
const linesOf = (scene: Scene): Line[] =>
  stackOf(scene).flatMap((knife, index) => [
    { line: `${index}`, label: knife.name, knife, way: null, ratio: 1 },
    ...(knife.isBaseline ? [] : ways).map((way) => ({
      line: `${index}-${way}`,
      label: wayName[way],
      knife,
      way,
      ratio: knife[way],
    })),
  ]);

const left = 92;

/** The names of the knives and of the ways, at the left of their lines. */
const labels = (lines: readonly Line[], { narrow }: Size) => [
  Plot.text(
    lines.filter(({ way }) => way === null),
    {
      y: 'line',
      text: ({ label, knife }: Line) =>
        `${shortName(label, narrow ? 24 : 48)}${knife.isBaseline ? ', the baseline: ×1' : ''}`,
      frameAnchor: 'left',
      dx: -left + 2,
      textAnchor: 'start',
      className: 'kf-value kf-on-paper',
    },
  ),
  Plot.text(
    lines.filter(({ way }) => way !== null),
    { y: 'line', text: 'label', frameAnchor: 'left', dx: -8, textAnchor: 'end', className: 'kf-faint' },
  ),
];

/** The column of a family: a factor may bear its name alone. */
const familyColumn = (family: Family): string => {
  const { name } = familyName[family];
  return factorIds.some((id) => factorName(id).name === name) ? `${name}, all` : name;
};

const table: Figure['table'] = (scene) => ({
  columns: [
    'Knife',
    'Reading',
    ...factorIds.map((id) => factorName(id).name),
    ...families.map(familyColumn),
    'Together',
    'Forces added',
  ],
  rows: stackOf(scene).flatMap(({ name, rows }) =>
    (['quick', 'careful'] as const).map((reading) => {
      const { terms, families: byFamily, product, rival, complete } = rows[reading];
      const part = complete ? '' : ' (part)';
      return [
        name,
        readingName[reading],
        ...factorIds.map((id) => {
          const factor = terms.find((term) => term.id === id)?.factor ?? null;
          return factor === null ? 'left out' : times(factor);
        }),
        ...families.map((family) => times(byFamily[family])),
        `${times(product)}${part}`,
        `${times(rival)}${part}`,
      ];
    }),
  ),
});

/** Every knife of the comparison against the baseline, by both readings and by the rival, on one ruler of ratios. */
export const stack: Figure = {
  id: 'stack',
  title: ({ baseline }) => `Every knife of the line-up against ${baseline.name}`,
  units: 'times as long as the baseline',
  scale: 'logarithmic axis',
  reading: () => 'both, and the close one with its forces added',
  source: 'factor model',
  options(scene, size) {
    const lines = linesOf(scene);
    const marks = lines.filter(({ way }) => way !== null);
    const ratios = [1, ...marks.map(({ ratio }) => ratio)];
    const low = Math.min(...ratios) / 1.3;
    const high = Math.max(...ratios) * 1.3;
    const of = (way: Way) => marks.filter((mark) => mark.way === way);
    return {
      height: lines.length * 19 + 54,
      marginLeft: left,
      // Room for the value beside the longest stem.
      marginRight: 50,
      marginTop: 4,
      marginBottom: 42,
      x: { ...ratioAxis(low, high, size.narrow, 'times as long as the baseline'), labelAnchor: 'center' },
      y: { domain: lines.map(({ line }) => line), axis: null },
      marks: [
        gridX(tickValues(low, high, size.narrow)),
        baselineX(1),
        Plot.ruleY(marks, { y: 'line', x1: 1, x2: 'ratio', className: 'kf-stem' }),
        Plot.dot(of('quick'), { x: 'ratio', y: 'line', r: 4.5, className: 'kf-stem kf-open' }),
        Plot.dot(of('careful'), { x: 'ratio', y: 'line', r: 4.5, className: 'kf-answer' }),
        Plot.dot(of('rival'), {
          x: 'ratio',
          y: 'line',
          r: 4.5,
          symbol: 'diamond',
          className: 'kf-answer',
        }),
        Plot.text(marks, {
          // Right of the stem on either side of 1.
          x: ({ ratio }: Line) => Math.max(1, ratio),
          y: 'line',
          text: ({ ratio }: Line) => times(ratio),
          textAnchor: 'start',
          dx: 9,
          className: 'kf-value kf-on-paper',
        }),
        ...labels(lines, size),
      ],
    };
  },
  table,
  caption(scene) {
    const { first, last, ratio } = ends(scene, 'careful');
    const [quick, rival] = [ends(scene, 'quick'), ends(scene, 'rival')];
    return `By the close reading ${first.name} and ${last.name}, the two ends of the line-up, are ${times(ratio)} apart${first.rows.careful.complete && last.rows.careful.complete ? '' : ' as far as the terms that stand go'}, with ${scene.baseline.name} at 1. The ends are ${times(quick.ratio)} apart by the pocket reading and ${times(rival.ratio)} with the forces added. Open ring: pocket; dot: close; diamond: forces added.`;
  },
};

/** The same ratios again, each as long as it is. */
export const stackLinear: Figure = {
  id: 'stack-linear',
  title: ({ baseline }) => `The same knives, drawn in proportion to ${baseline.name}`,
  units: 'times as long as the baseline',
  scale: 'linear axis from 0',
  reading: () => 'both, and the close one with its forces added',
  source: 'factor model',
  options(scene, size) {
    const lines = linesOf(scene);
    const marks = lines.filter(({ way }) => way !== null);
    const high = Math.max(1, ...marks.map(({ ratio }) => ratio));
    const of = (way: Way) => marks.filter((mark) => mark.way === way);
    return {
      height: lines.length * 19 + 54,
      marginLeft: left,
      marginRight: 50,
      marginTop: 4,
      marginBottom: 42,
      x: {
        domain: [0, high],
        label: 'times as long as the baseline',
        labelAnchor: 'center',
        labelArrow: 'none',
        ticks: 5,
      },
      y: { domain: lines.map(({ line }) => line), axis: null },
      marks: [
        gridX(5),
        ...ways.map((way) =>
          Plot.barX(of(way), {
            y: 'line',
            x: 'ratio',
            className: `kf-total-${way}`,
            insetTop: 3,
            insetBottom: 3,
          }),
        ),
        baselineX(1),
        Plot.text(marks, {
          x: 'ratio',
          y: 'line',
          text: ({ ratio }: Line) => times(ratio),
          textAnchor: 'start',
          dx: 6,
          className: 'kf-value kf-on-paper',
        }),
        ...labels(lines, size),
      ],
    };
  },
  table: (scene) => ({
    columns: ['Knife', 'Pocket', 'Close', 'Close, forces added'],
    rows: stackOf(scene).map((knife) => [knife.name, ...ways.map((way) => times(knife[way]))]),
  }),
  caption(scene) {
    const { baseline } = scene;
    const { first, last } = ends(scene, 'careful');
    const said = ({ name, careful, quick }: Stacked) =>
      `${name} cuts ${times(careful)} of it by the close reading and ${times(quick)} by the pocket reading`;
    const others = [first, last].filter(
      ({ isBaseline, id }, index) => !isBaseline && (index === 0 || id !== first.id),
    );
    return `For one length of rope that ${baseline.name} cuts before it is blunt, ${others.map(said).join('; ')}. The upright line is ${baseline.name}.`;
  },
};
