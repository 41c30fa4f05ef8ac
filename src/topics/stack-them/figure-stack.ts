import * as Plot from '@observablehq/plot';
import type { Family, TermId } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { short, times } from '../../scene/show.ts';
import { list } from '../../phrases/list.ts';
import { factorOf as factorIn } from '../../comparison/found.ts';
import { ends, stackOf, ways } from '../../scene/stack.ts';
import type { Stacked, Way } from '../../scene/stack.ts';
import { rangeSaid } from '../../phrases/judged-runs.ts';
import { readingName } from '../../phrases/reading-name.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import type { Drawing } from '../../figure-kit/figure.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { familyName } from '../../phrases/family-names.ts';
import { families } from '../../scene/factors.ts';

const wayName: Record<Way, string> = {
  quick: 'quick sum',
  multiplied: 'multiplied',
  added: 'forces add',
  toLimit: 'to a limit',
};

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

const left = 96;

/** The names of the knives and of the ways, at the left of their lines. */
const labels = (lines: readonly Line[], { narrow }: Size) => [
  valueText(
    lines.filter(({ way }) => way === null),
    {
      y: 'line',
      text: ({ label, knife }: Line) =>
        `${shortName(label, narrow ? 24 : 48)}${knife.isBaseline ? ', the baseline: ×1' : ''}`,
      frameAnchor: 'left',
      dx: -left + 2,
    },
  ),
  Plot.text(
    lines.filter(({ way }) => way !== null),
    { y: 'line', text: 'label', frameAnchor: 'left', dx: -8, textAnchor: 'end', className: 'kf-faint' },
  ),
];

/** The column of a family: a factor may bear its name alone. */
const familyColumn = (family: Family, factors: readonly TermId[]): string => {
  const { name } = familyName[family];
  return factors.some((id) => factorName(id).name === name) ? `${name}, all` : name;
};

/** The factors of the chain, in its order. */
const factorsOf = ({ row }: Scene): TermId[] => row.careful.terms.map(({ id }) => id);

/** Every factor of each knife by the quick sum and by the careful estimate. */
const factorsTable: Figure['table'] = (scene) => ({
  columns: [
    'Knife',
    'Reading',
    ...factorsOf(scene).map((id) => factorName(id).name),
    ...families.map((family) => familyColumn(family, factorsOf(scene))),
    'All multiplied',
    'Forces added',
    'To a limit',
  ],
  rows: stackOf(scene).flatMap(({ name, rows }) =>
    (['quick', 'careful'] as const).map((reading) => {
      const row = rows[reading];
      return [
        name,
        readingName[reading],
        ...factorsOf(scene).map((id) => times(factorIn(row, id))),
        ...families.map((family) => times(row.families[family])),
        times(row.multiplied),
        times(row.added),
        times(row.toLimit),
      ];
    }),
  ),
});

interface Twin {
  id: string;
  title(baseline: string): string;
  scale: string;
  /** The axis of ratios and what stands on it, for the lines that have a ratio. */
  drawn(marks: readonly Line[], size: Size): Pick<Drawing, 'x' | 'marks'>;
  table: Figure['table'];
  caption: Figure['caption'];
}

const by = (way: Way, marks: readonly Line[]): Line[] => marks.filter((mark) => mark.way === way);

/** The knives below each other with a line for each way, by one axis or another. */
const stackFigure = ({ title, drawn, ...own }: Twin): Figure => ({
  ...own,
  title: ({ baseline }) => title(baseline.name),
  units: 'times as long as the baseline',
  reading: () => 'quick sum, and the careful estimate combined three ways',
  source: 'factor model',
  options(scene, size) {
    const lines = linesOf(scene);
    const drawing = drawn(
      lines.filter(({ way }) => way !== null),
      size,
    );
    return {
      height: lines.length * 19 + 54,
      marginLeft: left,
      // Room for the value beside the longest line.
      marginRight: 50,
      marginTop: 4,
      marginBottom: 42,
      ...drawing,
      y: { domain: lines.map(({ line }) => line), axis: null },
      marks: [...drawing.marks, ...labels(lines, size)],
    };
  },
});

function byRatio(marks: readonly Line[], { narrow }: Size): Pick<Drawing, 'x' | 'marks'> {
  const ratios = [1, ...marks.map(({ ratio }) => ratio)];
  const [low, high] = [Math.min(...ratios) / 1.3, Math.max(...ratios) * 1.3];
  const place = { x: 'ratio', y: 'line', r: 4.5 } as const;
  return {
    x: ratioAxisX(low, high, narrow, 'times as long as the baseline'),
    marks: [
      gridX(tickValues(low, high, narrow)),
      baselineX(1),
      Plot.ruleY(marks, { y: 'line', x1: 1, x2: 'ratio', className: 'kf-stem' }),
      Plot.dot(by('quick', marks), { ...place, className: 'kf-stem kf-open' }),
      Plot.dot(by('multiplied', marks), { ...place, className: 'kf-answer' }),
      Plot.dot(by('added', marks), { ...place, symbol: 'diamond', className: 'kf-answer' }),
      Plot.dot(by('toLimit', marks), { ...place, symbol: 'square', className: 'kf-answer' }),
      valueText(marks, {
        // Right of the stem on either side of 1.
        x: ({ ratio }: Line) => Math.max(1, ratio),
        y: 'line',
        text: ({ ratio }: Line) => times(ratio),
        dx: 9,
      }),
    ],
  };
}

function inProportion(marks: readonly Line[]): Pick<Drawing, 'x' | 'marks'> {
  const high = Math.max(1, ...marks.map(({ ratio }) => ratio));
  return {
    x: { domain: [0, high], ...centredLabel('times as long as the baseline'), ticks: 5 },
    marks: [
      gridX(5),
      ...ways.map((way) =>
        Plot.barX(by(way, marks), {
          y: 'line',
          x: 'ratio',
          className: `kf-total-${way}`,
          insetTop: 3,
          insetBottom: 3,
        }),
      ),
      baselineX(1),
      valueText(marks, { x: 'ratio', y: 'line', text: ({ ratio }: Line) => times(ratio), dx: 6 }),
    ],
  };
}

/** Every knife of the comparison against the baseline, by the quick sum and three structures, on one ruler of ratios. */
export const stack: Figure = stackFigure({
  id: 'stack',
  title: (baseline) => `Every knife against ${baseline}`,
  scale: 'logarithmic axis',
  drawn: byRatio,
  table: factorsTable,
  caption(scene) {
    const { first, last } = ends(scene, 'multiplied');
    const ratios = (['multiplied', 'added', 'toLimit'] as const).map((way) => first[way] / last[way]);
    return `At the two ends, ${first.name} cuts ${rangeSaid(Math.min(...ratios), Math.max(...ratios))} times as long as ${last.name}, by how the effects combine.`;
  },
});

/** The same ratios again, each as long as it is. */
export const stackLinear: Figure = stackFigure({
  id: 'stack-linear',
  title: (baseline) => `The same knives, drawn in proportion to ${baseline}`,
  scale: 'linear axis from 0',
  drawn: inProportion,
  table: (scene) => ({
    columns: ['Knife', ...ways.map((way) => wayName[way])],
    rows: stackOf(scene).map((knife) => [knife.name, ...ways.map((way) => times(knife[way]))]),
  }),
  caption(scene) {
    const { baseline } = scene;
    const { first, last } = ends(scene, 'multiplied');
    const others = [first, last].filter(
      ({ isBaseline, id }, index) => !isBaseline && (index === 0 || id !== first.id),
    );
    const said = others.map(
      ({ name, multiplied, quick }) =>
        `${name} cuts ${short(multiplied, 2)} lengths if all factors multiply and ${short(quick, 2)} by the quick sum`,
    );
    return `For one length of rope that ${baseline.name} cuts before it is blunt, ${list(said)}. The upright line is ${baseline.name}.`;
  },
});
