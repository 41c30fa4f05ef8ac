import * as Plot from '@observablehq/plot';
import type { Measured } from '../../runs/judge-log.ts';
import { verdictName } from '../../phrases/judged-runs.ts';
import { differentWords } from './words.ts';
import { alikeWithin } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { trialOf } from './trial.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import { gridXBetween } from '../../figure-kit/grid.ts';
import { span } from '../../figure-kit/span.ts';

interface Row {
  name: string;
  y: number;
  found: Measured;
  /** The interval of 90%: inside the bounds, the knives are as good as equal. */
  thick: { low: number; high: number };
  said: string;
}

const thickOf = ({ low90, high90 }: Measured) => ({ low: low90, high: high90 });

/** All runs together, which give no verdict where batches are on record, and the judgement itself. */
function rowsOf(scene: Scene): Row[] {
  const { across, measured, log } = trialOf(scene);
  const blocked = log.batches.length > 0;
  return [
    ...(blocked || measured === null
      ? [{ name: 'batches ignored', found: across, thick: thickOf(across), said: 'no verdict' }]
      : []),
    ...(measured === null
      ? []
      : [
          {
            name: blocked ? 'within batches' : 'no batch recorded',
            found: measured,
            thick: thickOf(measured),
            said: verdictName[log.verdict],
          },
        ]),
  ].map((row, index) => ({ ...row, y: index + 1 }));
}

const lane = 54;

/** How far down the interval of a row is drawn, px. */
const at = ({ y }: Row): number => 20 + lane * (y - 0.32);

/** Both intervals of every row, the ratio between them, and above them what they say. */
const intervalMarks = (rows: readonly Row[], left: number): Plot.RenderableMark[] => [
  span(rows, {
    low: ({ found }: Row) => found.low,
    high: ({ found }: Row) => found.high,
    y: at,
    className: 'kf-stem',
  }),
  span(rows, {
    low: ({ thick }: Row) => thick.low,
    high: ({ thick }: Row) => thick.high,
    y: at,
    className: 'kf-window',
  }),
  Plot.dot(rows, { x: ({ found }: Row) => found.ratio, y: at, r: 5, className: 'kf-open kf-stem' }),
  valueText(rows, {
    x: left,
    y: (row: Row) => at(row) - 20,
    text: ({ name, found, said }: Row) => `${name}: ${times(found.ratio)}, ${said}`,
  }),
];

/** The true ratio, where it is known, named on the side that has more room. */
const truthMarks = (truth: number, y: number, middle: number): Plot.RenderableMark[] => [
  Plot.dot([{ truth }], { x: 'truth', y, r: 5, symbol: 'diamond', className: 'kf-answer' }),
  Plot.text([{ truth }], {
    x: 'truth',
    y,
    text: () => `truth ${times(truth)}`,
    textAnchor: truth > middle ? 'end' : 'start',
    dx: truth > middle ? -10 : 10,
    className: 'kf-on-paper',
  }),
];

/** The interval, the stretch that counts as equal, and the line of no difference. */
export const differentOrEqual: Figure = {
  id: 'told-or-alike',
  title: ({ subject, baseline }) =>
    `${subject.name} over ${baseline.name}: a real difference, or as good as equal?`,
  units: 'times as long; thin 95%, thick 90% interval',
  scale: 'logarithmic axis',
  reading: (scene) => `none: runs; ${trialOf(scene).log.method}`,
  source: 'the log; two one-sided tests',
  options(scene, { narrow }) {
    const rows = rowsOf(scene);
    const { truth } = trialOf(scene);
    const ends = rows.flatMap(({ found }) => [found.low, found.high]);
    const low = Math.min(0.65, ...ends, truth ?? 1) / 1.08;
    const high = Math.max(1.55, ...ends, truth ?? 1) * 1.08;
    const total = 20 + rows.length * lane + (truth === null ? 0 : 22);
    return {
      height: total + 8 + 42,
      marginTop: 8,
      marginBottom: 42,
      marginLeft: 16,
      marginRight: 16,
      x: ratioAxisX(low, high, narrow, 'times as long'),
      y: { domain: [total, 0], axis: null },
      marks: [
        Plot.rect(rows, {
          x1: alikeWithin.low,
          x2: alikeWithin.high,
          y1: (row: Row) => at(row) - 9,
          y2: (row: Row) => at(row) + 9,
          className: 'kf-alike',
        }),
        gridXBetween(tickValues(low, high, narrow), 18, total),
        Plot.link([{}], { x1: 1, x2: 1, y1: 18, y2: total, className: 'kf-baseline' }),
        Plot.text([{}], { x: 1, y: 8, text: () => 'shaded: as good as equal', className: 'kf-faint' }),
        ...intervalMarks(rows, low),
        ...(truth === null ? [] : truthMarks(truth, total - 10, Math.sqrt(low * high))),
      ],
    };
  },
  table(scene) {
    const { truth } = trialOf(scene);
    return {
      columns: ['How compared', 'Times as long', '95% interval', '90% interval', 'Verdict'],
      rows: [
        ...rowsOf(scene).map(({ name, found, thick, said }) => [
          name,
          times(found.ratio),
          `${times(found.low)} to ${times(found.high)}`,
          `${times(thick.low)} to ${times(thick.high)}`,
          said,
        ]),
        ...(truth === null ? [] : [['truth', times(truth), '–', '–', 'as stated']]),
      ],
    };
  },
  caption: (scene) => (differentWords['runs-within']?.(scene) ?? []).filter(Boolean).join(' '),
};
