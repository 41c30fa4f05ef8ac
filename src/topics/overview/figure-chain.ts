import * as Plot from '@observablehq/plot';
import type { Reading, Row, Term, TermId } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { asLongAs } from '../../phrases/as-long-as.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { factorName } from '../../phrases/factor-names.ts';

interface Link extends Term {
  from: number;
  to: number;
}

/** The factors laid end to end: each begins where the one before it ended. */
function links(terms: readonly Term[]): Link[] {
  let reached = 1;
  return terms.map((term) => {
    const from = reached;
    reached *= term.factor;
    return { ...term, from, to: reached };
  });
}

const sliders: Partial<Record<TermId, string>> = {
  wedge: 'subject.angle',
  apex: 'subject.angle',
  thickness: 'subject.edge',
};

const label = (term: Term) => factorName(term.id).name;

/** The links with their factors. */
const linkMarks = (steps: readonly Link[]): Plot.RenderableMark[] => {
  const beside = { y: label, textAnchor: 'start', dx: 6 } as const;
  return [
    Plot.barX(steps, {
      y: label,
      x1: ({ from }: Link) => from,
      x2: ({ to }: Link) => to,
      fill: ({ family }: Link) => hatch(family),
      stroke: ({ family }: Link) => ink(family),
      insetTop: 5,
      insetBottom: 5,
    }),
    Plot.text(steps, {
      ...beside,
      x: ({ from, to }: Link) => Math.max(from, to),
      text: ({ factor }: Link) => times(factor),
      className: 'kf-value',
    }),
  ];
};

/** The lines of the totals: the quick sum is one, the careful estimate is combined three ways. */
const totalsOf = (row: Row, reading: Reading): { y: string; x: number }[] =>
  reading === 'quick'
    ? [{ y: 'Together', x: row.multiplied }]
    : [
        { y: 'Multiplied', x: row.multiplied },
        { y: 'Forces add', x: row.added },
        { y: 'To a limit', x: row.toLimit },
      ];

/** What the links make together; a line comes down to the product from the first of them. */
function totalMarks(row: Row, reading: Reading, first: string | undefined): Plot.RenderableMark[] {
  const totals = totalsOf(row, reading);
  const at = { x: 'x', y: 'y' } as const;
  return [
    Plot.ruleX([row.multiplied], { className: 'kf-dimension', y1: first, y2: totals[0]?.y } as never),
    Plot.dot(totals, { ...at, r: 5, className: 'kf-answer', symbol: 'diamond' }),
    Plot.text(totals, {
      ...at,
      text: ({ x }: { x: number }) => times(x),
      textAnchor: 'start',
      dx: 10,
      className: 'kf-value',
    }),
  ];
}

/** The chain of one knife against the baseline: seven factors end to end on a logarithmic axis. */
export const chain: Figure = {
  id: 'chain',
  title: ({ subject, baseline }) => `${subject.name} against ${baseline.name}, factor by factor`,
  units: 'times as long as the baseline',
  scale: 'logarithmic axis',
  reading: ({ entry }) => `${readingName[entry.reading]}`,
  source: 'factor model',
  options(scene, { narrow }) {
    const row = scene.row[scene.entry.reading];
    const steps = links(row.terms);
    const totals = totalsOf(row, scene.entry.reading);
    const reach = [1, ...totals.map(({ x }) => x), ...steps.map(({ to }) => to)];
    const low = Math.min(...reach) / 1.25;
    const high = Math.max(...reach) * 1.25;
    const order = [...row.terms.map(label), ...totals.map(({ y }) => y)];
    return {
      height: order.length * 34 + 48,
      marginLeft: narrow ? 84 : 104,
      // Room for the value beside the longest bar.
      marginRight: 56,
      marginTop: 6,
      marginBottom: 42,
      x: ratioAxisX(low, high, narrow, 'times as long as the baseline'),
      y: { domain: order, label: null, tickSize: 0 },
      marks: [
        gridX(tickValues(low, high, narrow)),
        baselineX(1),
        ...linkMarks(steps),
        ...totalMarks(row, scene.entry.reading, order[0]),
      ],
    };
  },
  /** A bar by its end, where one slider sets it. */
  drag(scene, _size, { y }) {
    const linksOf = ({ row, entry }: Scene): Link[] => links(row[entry.reading].terms);
    const id = scene.row[scene.entry.reading].terms[y]?.id;
    const control = id && sliders[id];
    const endIn = (other: Scene) => linksOf(other).find((link) => link.id === id)?.to;
    return control && endIn(scene) !== undefined
      ? { control, typed: true, stands: (other) => endIn(other) ?? 1 }
      : undefined;
  },
  table(scene) {
    const row = scene.row[scene.entry.reading];
    return {
      columns: ['Factor of', 'Family', 'Factor', 'Low', 'High', 'Share of the log'],
      rows: [
        ...row.terms.map((term) => [
          factorName(term.id).name,
          term.family,
          times(term.factor),
          times(term.low),
          times(term.high),
          row.logShares ? `${plain((row.logShares[term.id] ?? 0) * 100, 2)}%` : 'they cancel',
        ]),
        ...totalsOf(row, scene.entry.reading).map(({ y, x }) => [y, '', times(x), '', '', '']),
      ],
    };
  },
  caption({ entry, row, subject, baseline }) {
    const cuts = `${subject.name} cuts ${asLongAs(row[entry.reading].multiplied, baseline.name)}`;
    return entry.reading === 'quick'
      ? `By the quick sum, with all factors multiplied, ${cuts}.`
      : `At the middle settings, if all factors multiply, ${cuts}.`;
  },
};
