import * as Plot from '@observablehq/plot';
import type { BatchLife } from '../../model/index.ts';
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

/** More batches than these are drawn together as one. */
const mostBatches = 8;

type Role = 'x' | 'y';

interface Mark {
  role: Role;
  y: number;
  life: BatchLife;
}

interface Lane {
  batch: string;
  y: number;
  marks: Mark[];
  means: { y: number; mean: number }[];
}

const [headPx, rowPx, gapPx, keyPx] = [18, 17, 8, 24];
const lanePx = headPx + 2 * rowPx + gapPx;

const batchName = (batch: string | undefined): string => batch ?? 'lot not recorded';

/** One lane a batch, a row a knife in it. */
function lanesOf(trial: Trial): Lane[] {
  const batches = batchesOf(trial);
  const groups =
    batches.length <= mostBatches
      ? batches.map((batch) => ({ name: batchName(batch), batches: [batch] }))
      : [
          ...batches.slice(0, mostBatches - 1).map((batch) => ({ name: batchName(batch), batches: [batch] })),
          { name: `${batches.length - mostBatches + 1} more lots`, batches: batches.slice(mostBatches - 1) },
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

const unitLabel = ({ unit }: Trial): string => (unit === 'cuts' ? 'cuts to the stop' : 'mm cut to the stop');

/** Every run as a dot, by lot: what scatters from sharpening to sharpening, and what the stock does. */
export const runsByBatch: Figure = {
  id: 'runs-by-lot',
  title: ({ subject, baseline }) => `Every run of ${subject.name} and ${baseline.name}, by lot`,
  units: 'cuts or mm to the stop; one dot a sharpening',
  scale: 'logarithmic axis',
  reading: () => 'none: runs',
  source: 'the log; invented where none is',
  options(scene, { width, narrow }) {
    const trial = trialOf(scene);
    const lanes = lanesOf(trial);
    const marks = lanes.flatMap((lane) => lane.marks);
    const means = lanes.flatMap((lane) => lane.means);
    const both = extent([...trial.x, ...trial.y]);
    const [low, high] = [both.least / 1.2, both.most * 1.25];
    const total = keyPx + lanes.length * lanePx;
    const [marginLeft, marginRight] = [16, 16];
    const inner = width - marginLeft - marginRight;
    const atX = (px: number): number => low * (high / low) ** (px / inner);
    const key = [
      { x: atX(6), text: shortName(scene.subject.name, narrow ? 15 : 34), filled: true },
      { x: atX(inner / 2), text: shortName(scene.baseline.name, narrow ? 15 : 34), filled: false },
    ];
    const fill = (filled: boolean): string => (filled ? 'currentColor' : 'var(--sheet)');
    return {
      height: total + 8 + 42,
      marginTop: 8,
      marginBottom: 42,
      marginLeft,
      marginRight,
      x: ratioAxisX(low, high, narrow, unitLabel(trial)),
      y: { domain: [total, 0], axis: null },
      marks: [
        Plot.link(
          tickValues(low, high, narrow).map((x) => ({ x })),
          { x1: 'x', x2: 'x', y1: keyPx, y2: total, className: 'kf-grid' },
        ),
        Plot.link(lanes, {
          x1: low,
          x2: high,
          y1: ({ y }: Lane) => y - 12,
          y2: ({ y }: Lane) => y - 12,
          className: 'kf-grid',
        }),
        Plot.link(means, {
          x1: 'mean',
          x2: 'mean',
          y1: ({ y }: { y: number }) => y - 8,
          y2: ({ y }: { y: number }) => y + 8,
          className: 'kf-stem',
        }),
        // A life known to lie within limits, or only from below.
        Plot.link(
          marks.filter(({ life }) => life.low !== life.high),
          {
            x1: ({ life }: Mark) => Math.max(low, life.low),
            x2: ({ life }: Mark) => Math.min(high, life.high),
            y1: 'y',
            y2: 'y',
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
        valueText(lanes, {
          x: low,
          y: 'y',
          text: ({ batch }: Lane) => shortName(batch, narrow ? 34 : 70),
        }),
        Plot.dot(key, {
          x: 'x',
          y: 8,
          r: 5,
          className: 'kf-chance',
          stroke: 'currentColor',
          fill: ({ filled }: { filled: boolean }) => fill(filled),
        }),
        Plot.text(key, { x: 'x', y: 8, text: 'text', textAnchor: 'start', dx: 10 }),
      ],
    };
  },
  table(scene) {
    const trial = trialOf(scene);
    return {
      columns: ['Knife', 'Lot', trial.unit === 'cuts' ? 'Cuts' : 'Millimetres', 'Ended'],
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
          life.high === Infinity ? 'early, before its stop' : 'at its stop',
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
