import * as Plot from '@observablehq/plot';
import type { Row, Term, TermId } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, ratioInWords, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { hatch, ink } from '../../figure-kit/inks.ts';
import { readingName } from '../../phrases/reading-name.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { familyName } from '../../phrases/family-names.ts';

interface Link extends Term {
  factor: number;
  from: number;
  to: number;
}

/** The terms that stand, laid end to end: each begins where the one before it ended. */
function links(terms: readonly Term[]): Link[] {
  let reached = 1;
  return terms.flatMap((term) => {
    if (term.factor === null) return [];
    const from = reached;
    reached *= term.factor;
    return [{ ...term, factor: term.factor, from, to: reached }];
  });
}

const sliders: Partial<Record<TermId, string>> = {
  wedge: 'subject.angle',
  apex: 'subject.angle',
  thickness: 'subject.edge',
};

const label = (term: Term) => `${factorName(term.id).name} ${familyName[term.family].letter}`;

/** The links with their factors, and a word where a term has none. */
const linkMarks = (steps: readonly Link[], terms: readonly Term[]): Plot.RenderableMark[] => {
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
    Plot.text(
      terms.filter(({ factor }) => factor === null),
      { ...beside, x: 1, text: () => 'left out', className: 'kf-faint' },
    ),
  ];
};

/** What the links make together, and by the rival; a line comes down to it from the first of them. */
function totalMarks({ product, rival }: Row, first: string | undefined): Plot.RenderableMark[] {
  const totals = [
    { y: 'Together', x: product },
    { y: 'Rival', x: rival },
  ];
  const at = { x: 'x', y: 'y' } as const;
  return [
    Plot.ruleX([product], { className: 'kf-dimension', y1: first, y2: 'Together' } as never),
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
  reading: ({ entry }) => `${readingName[entry.reading]} reading`,
  source: 'factor model',
  options(scene, { narrow }) {
    const row = scene.row[scene.entry.reading];
    const steps = links(row.terms);
    const reach = [1, row.product, row.rival, ...steps.map(({ to }) => to)];
    const low = Math.min(...reach) / 1.25;
    const high = Math.max(...reach) * 1.25;
    const order = [...row.terms.map(label), 'Together', 'Rival'];
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
        ...linkMarks(steps, row.terms),
        ...totalMarks(row, order[0]),
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
      ? { control, stands: (other) => endIn(other) ?? 1 }
      : undefined;
  },
  table(scene) {
    const row = scene.row[scene.entry.reading];
    return {
      columns: ['Term', 'Family', 'Factor', 'Low', 'High', 'Share of the log'],
      rows: [
        ...row.terms.map((term) => [
          factorName(term.id).name,
          term.family,
          term.factor === null ? 'left out' : times(term.factor),
          term.low === null ? '' : times(term.low),
          term.high === null ? '' : times(term.high),
          row.logShares ? `${plain((row.logShares[term.id] ?? 0) * 100, 2)} %` : 'they cancel',
        ]),
        ['Together', '', times(row.product), '', '', ''],
        ['Rival: forces added', '', times(row.rival), '', '', ''],
      ],
    };
  },
  caption({ entry, row, subject, baseline }) {
    const { product, rival, complete } = row[entry.reading];
    return `By the ${readingName[entry.reading]} reading ${subject.name} should cut ${ratioInWords(product)} as ${baseline.name} (${times(product)})${complete ? '' : ', as far as the terms that stand go'}; with the forces added instead, ${times(rival)}.`;
  },
};
