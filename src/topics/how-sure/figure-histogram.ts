import * as Plot from '@observablehq/plot';
import { samples } from '../../comparison/predicted.ts';
import { isExact, ratiosAt, sureOf } from '../../scene/sure.ts';
import { percent, plain, readsAsOne, thousands, times, wholePercent } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX, gridY } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';

interface Bin {
  x1: number;
  x2: number;
  share: number;
}

const bars = 36;

/** The share of the samples in bins of equal ratio. */
function binned(logs: Float64Array, low: number, high: number): Bin[] {
  const step = Math.log(high / low) / bars;
  const bins = Array.from({ length: bars }, (_, index) => ({
    x1: low * Math.exp(index * step),
    x2: low * Math.exp((index + 1) * step),
    share: 0,
  }));
  const first = Math.log(low);
  for (const log of logs) {
    const bin = bins[Math.min(bars - 1, Math.max(0, Math.floor((log - first) / step)))];
    if (bin) bin.share += 1 / logs.length;
  }
  return bins;
}

/** The same samples as bars: how many fall where. */
export const histogram: Figure = {
  id: 'band-histogram',
  title: ({ subject, baseline }) => `All samples: ${subject.name} against ${baseline.name}`,
  units: 'times as long; share of the samples',
  scale: 'logarithmic axis',
  reading: () => 'careful estimate',
  source: 'factor model, sampled; assumptions stated',
  options(scene, { narrow }) {
    const sure = sureOf(scene);
    const { logs } = sure;
    const [first = 1, last = 1] = ratiosAt(logs, [0, 1]);
    const low = Math.min(0.95, first / 1.05);
    const high = Math.max(1.05, last * 1.05);
    const bins = binned(logs, low, high);
    return {
      height: narrow ? 230 : 260,
      marginLeft: 44,
      marginRight: 14,
      marginTop: 22,
      marginBottom: 40,
      x: ratioAxisX(low, high, narrow, 'times as long'),
      y: {
        label: 'share of the samples',
        labelArrow: 'none',
        ticks: 4,
        tickFormat: wholePercent,
      },
      marks: [
        gridY(4),
        Plot.rectY(bins, {
          x1: 'x1',
          x2: 'x2',
          y: 'share',
          className: 'kf-samples',
          insetLeft: 0.5,
          insetRight: 0.5,
        }),
        baselineX(1),
        Plot.ruleX(isExact(sure) ? [sure.median] : [sure.low, sure.median, sure.high], {
          className: 'kf-dimension',
        }),
        gridX(tickValues(low, high, narrow)),
      ],
    };
  },
  table(scene) {
    const shares = [0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99];
    const ratios = ratiosAt(sureOf(scene).logs, shares);
    return {
      columns: ['Share of the samples below', 'Times as long'],
      rows: shares.map((share, i) => [percent(share), times(ratios[i] ?? 1)]),
    };
  },
  caption(scene) {
    const { low, high } = sureOf(scene);
    const { subject, baseline } = scene;
    const ends = [...new Set([plain(low, 2), plain(high, 2)])].join(' to ');
    if (isExact(sureOf(scene)) && readsAsOne(low))
      return `In all ${thousands(samples)} samples ${subject.name} cuts as long as ${baseline.name}.`;
    return `In 90% of ${thousands(samples)} samples ${subject.name} cuts ${ends} times as long as ${baseline.name}.`;
  },
};
