import * as Plot from '@observablehq/plot';
import type { SharpenedLife } from '../../runs/lives.ts';
import { differentWords } from './words.ts';
import { amount, extent, batchesOf, meanIn, reached } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { trialOf } from './trial.ts';
import type { Trial } from './trial.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import { frameOf } from '../../figure-kit/frame.ts';
import { gridXBetween } from '../../figure-kit/grid.ts';
import { logAt } from '../../figure-kit/pixels.ts';
import { span } from '../../figure-kit/span.ts';
import { batchName } from '../../phrases/batch-name.ts';

/** More batches than these are drawn together as one. */
const mostBatches = 8;

type Role = 'x' | 'y';

interface Mark {
  role: Role;
  y: number;
  life: SharpenedLife;
}

interface Lane {
  batch: string;
  y: number;
  marks: Mark[];
  means: { y: number; mean: number }[];
}

const [headPx, rowPx, gapPx, keyPx] = [18, 17, 8, 24];
const lanePx = headPx + 2 * rowPx + gapPx;

/** One lane a batch, a row a knife in it. */
function lanesOf(trial: Trial): Lane[] {
  const batches = batchesOf(trial);
  const groups =
    batches.length <= mostBatches
      ? batches.map((batch) => ({ name: batchName(batch), batches: [batch] }))
      : [
          ...batches.slice(0, mostBatches - 1).map((batch) => ({ name: batchName(batch), batches: [batch] })),
          {
            name: `${batches.length - mostBatches + 1} more batches`,
            batches: batches.slice(mostBatches - 1),
          },
        ];
  return groups.map(({ name, batches: own }, index) => {
    const top = keyPx + index * lanePx;
    const rows = (['x', 'y'] as const).map((role, place) => {
      const y = top + headPx + rowPx * (place + 0.5);
      const lives = trial[role].filter(({ batch }) => own.includes(batch));
      const mean = own.length === 1 ? meanIn(lives, own[0]) : null;
      return {
        marks: lives.map((life) => ({ role, y, life })),
        means: mean ? [{ y, mean: mean.mean }] : [],
      };
    });
    return {
      batch: name,
      y: top + headPx - 6,
      marks: rows.flatMap(({ marks }) => marks),
      means: rows.flatMap(({ means }) => means),
    };
  });
}

const unitLabel = ({ unit }: Trial): string =>
  unit === 'cuts' ? 'cuts to the end point' : 'mm cut to the end point';

const fill = (filled: boolean): string => (filled ? 'currentColor' : 'var(--sheet)');

/** Every run of the lanes, and the geometric mean of each row. */
function runMarks(lanes: readonly Lane[], low: number, high: number): Plot.RenderableMark[] {
  const marks = lanes.flatMap((lane) => lane.marks);
  return [
    Plot.link(
      lanes.flatMap(({ means }) => means),
      {
        x1: 'mean',
        x2: 'mean',
        y1: ({ y }: { y: number }) => y - 8,
        y2: ({ y }: { y: number }) => y + 8,
        className: 'kf-stem',
      },
    ),
    // A life known to lie within limits, or only from below.
    span(
      marks.filter(({ life }) => life.low !== life.high),
      {
        low: ({ life }: Mark) => Math.max(low, life.low),
        high: ({ life }: Mark) => Math.min(high, life.high),
        y: 'y',
        className: 'kf-stem',
      },
    ),
    Plot.dot(marks, {
      x: ({ life }: Mark) => reached(life),
      y: 'y',
      r: 5,
      className: 'kf-chance',
      // A filled dot keeps a rim, so that two at one place are seen as two.
      stroke: ({ role }: Mark) => (role === 'x' ? 'var(--sheet)' : 'currentColor'),
      fill: ({ role }: Mark) => fill(role === 'x'),
    }),
  ];
}

/** Which knife has the filled dots and which the open ones, above the lanes. */
function knifeKey(
  { subject, baseline }: Scene,
  atX: (px: number) => number,
  innerWidth: number,
  narrow: boolean,
): Plot.RenderableMark[] {
  const key = [
    { x: atX(6), text: shortName(subject.name, narrow ? 15 : 34), filled: true },
    { x: atX(innerWidth / 2), text: shortName(baseline.name, narrow ? 15 : 34), filled: false },
  ];
  return [
    Plot.dot(key, {
      x: 'x',
      y: 8,
      r: 5,
      className: 'kf-chance',
      stroke: 'currentColor',
      fill: ({ filled }: { filled: boolean }) => fill(filled),
    }),
    Plot.text(key, { x: 'x', y: 8, text: 'text', textAnchor: 'start', dx: 10 }),
  ];
}

/** Every run as a dot, by batch: what scatters from sharpening to sharpening, and what the stock does. */
export const runsByBatch: Figure = {
  id: 'runs-by-lot',
  title: ({ subject, baseline }) => `Every run of ${subject.name} and ${baseline.name}, by batch`,
  units: 'cuts or mm to the end point; one dot a sharpening',
  scale: 'logarithmic axis',
  reading: () => 'none: runs',
  source: 'the log; invented where none is',
  options(scene, { width, narrow }) {
    const trial = trialOf(scene);
    const lanes = lanesOf(trial);
    const both = extent([...trial.x, ...trial.y]);
    const [low, high] = [both.least / 1.2, both.most * 1.25];
    const total = keyPx + lanes.length * lanePx;
    const { frame, inner } = frameOf(width, total + 8 + 42, { top: 8, right: 16, bottom: 42, left: 16 });
    return {
      ...frame,
      x: ratioAxisX(low, high, narrow, unitLabel(trial)),
      y: { domain: [total, 0], axis: null },
      marks: [
        gridXBetween(tickValues(low, high, narrow), keyPx, total),
        span(lanes, { low, high, y: ({ y }: Lane) => y - 12, className: 'kf-grid' }),
        ...runMarks(lanes, low, high),
        valueText(lanes, {
          x: low,
          y: 'y',
          text: ({ batch }: Lane) => shortName(batch, narrow ? 34 : 70),
        }),
        ...knifeKey(scene, logAt(low, high, inner.width), inner.width, narrow),
      ],
    };
  },
  table(scene) {
    const trial = trialOf(scene);
    return {
      columns: ['Knife', 'Batch', trial.unit === 'cuts' ? 'Cuts' : 'Millimetres', 'Ended'],
      rows: (
        [
          [trial.x, scene.subject.name],
          [trial.y, scene.baseline.name],
        ] as const
      ).flatMap(([lives, name]) =>
        lives.map((life) => [
          name,
          batchName(life.batch),
          life.high === Infinity || life.low === life.high
            ? amount(reached(life), trial)
            : `${amount(life.low, trial)}–${amount(life.high, trial)}`,
          life.high === Infinity ? 'early, before its end point' : 'at its end point',
        ]),
      ),
    };
  },
  caption: (scene) => `${captionStart(scene)} ${(differentWords['runs-lots']?.(scene) ?? []).join(' ')}`,
};

function captionStart(scene: Scene): string {
  const trial = trialOf(scene);
  const { subject, baseline } = scene;
  const [x, y] = [extent(trial.x), extent(trial.y)];
  const unit = trial.unit === 'cuts' ? 'cuts' : 'mm';
  return `${subject.name} made ${amount(x.least, trial)} to ${amount(x.most, trial)} ${unit}, ${times(x.most / x.least)} from least to most; ${baseline.name} ${amount(y.least, trial)} to ${amount(y.most, trial)} ${unit}. The stroke in a row is the geometric mean.`;
}
