import * as Plot from '@observablehq/plot';
import { runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { predictionCheckWords } from './words.ts';
import { predictionCheckOf } from '../../scene/check-prediction.ts';
import { sureOf } from '../../scene/sure.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { valueText } from '../../figure-kit/value-text.ts';
import { span } from '../../figure-kit/span.ts';

interface Band {
  what: string;
  /** Which band: `90%`. */
  share: string;
  ratio: number;
  low: number;
  high: number;
  className: string;
}

function bandsOf(scene: Scene): Band[] {
  const sure = sureOf(scene);
  const { measured, log } = runsOf(scene);
  const predictionCheck = predictionCheckOf(scene);
  return [
    {
      what: 'Predicted',
      share: '90%',
      ratio: sure.median,
      low: sure.low,
      high: sure.high,
      className: 'kf-dimension',
    },
    ...(measured
      ? [
          {
            what: 'Measured',
            share: log.family === 1 ? '95%' : `95% for all ${log.family} pairs`,
            ...measured,
            className: 'kf-window',
          },
        ]
      : []),
    ...(predictionCheck
      ? [
          {
            what: 'Measured over predicted',
            share: '90%',
            ...predictionCheck.leftover,
            className: 'kf-stem',
          },
        ]
      : []),
  ];
}

const rowPx = 46;

/** Prediction, measurement and the one over the other, on one axis of ratios. */
export const predictionCheckFigure: Figure = {
  id: 'squared',
  title: ({ subject, baseline }) => `Predicted and measured: ${subject.name} against ${baseline.name}`,
  units: 'times as long',
  scale: 'logarithmic axis',
  reading: () => 'predicted: careful estimate',
  source: 'factor model; the log',
  options(scene, { narrow }) {
    const bands = bandsOf(scene);
    const ends = [1, ...bands.flatMap(({ low, high }) => [low, high])];
    const [low, high] = [Math.min(...ends) / 1.25, Math.max(...ends) * 1.25];
    const rows = bands.map((band, index) => ({ ...band, y: index * rowPx + 32 }));
    const total = bands.length * rowPx;
    return {
      height: total + 54,
      marginLeft: 14,
      marginRight: 14,
      marginTop: 6,
      marginBottom: 40,
      x: ratioAxisX(low, high, narrow, 'times as long'),
      y: { domain: [total, 0], axis: null },
      marks: [
        gridX(tickValues(low, high, narrow)),
        baselineX(1),
        ...rows.map((row) => span([row], { low: 'low', high: 'high', y: 'y', className: row.className })),
        Plot.dot(rows, { x: 'ratio', y: 'y', r: 5, className: 'kf-answer' }),
        // Under the left end of its band where there is room to the right, else before the right end.
        valueText(rows, {
          x: ({ low: from, high: to }) => (to > Math.sqrt(low * high) * 1.6 && from > low * 3 ? to : from),
          y: 'y',
          text: ({ what, ratio }) => `${what} ${times(ratio)}`,
          dy: -14,
          filter: ({ low: from }) => from <= Math.sqrt(low * high),
        }),
        Plot.text(rows, {
          x: 'high',
          y: 'y',
          text: ({ what, ratio }) => `${what} ${times(ratio)}`,
          textAnchor: 'end',
          dy: -14,
          className: 'kf-value kf-on-paper',
          filter: ({ low: from }) => from > Math.sqrt(low * high),
        }),
      ],
    };
  },
  table: (scene) => ({
    columns: ['What', 'Times as long', 'Band', 'From', 'To'],
    rows: bandsOf(scene).map(({ what, share, ratio, low, high }) => [
      what,
      times(ratio),
      share,
      times(low),
      times(high),
    ]),
  }),
  /** The sentence that says most of what is there: how far the runs are off, what they say, or what was expected. */
  caption(scene) {
    const said = (predictionCheckWords['runs-square']?.(scene) ?? []).filter(Boolean);
    const begins = (words: string) => said.find((sentence) => sentence.startsWith(words));
    return begins('Measured over') ?? begins('The runs say') ?? begins('Without a single cut') ?? '';
  },
};
