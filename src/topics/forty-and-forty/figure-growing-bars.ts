import * as Plot from '@observablehq/plot';
import { additiveGuess, compound } from '../../model/index.ts';
import { percentagesOf } from '../../scene/percentages.ts';
import { plain, roundedPercent, signedPercent, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';

interface Step {
  label: string;
  by: 'product' | 'sum';
  height: number;
}

/** Bars grown in steps: after each effect, what the product reaches and what the sum would say. */
function stepsOf(percentages: readonly number[]): Step[] {
  return ['start', ...percentages].flatMap((effect, index) => {
    const sofar = percentages.slice(0, index);
    const label = index === 0 ? 'start' : `${index}: ${roundedPercent(effect as number)}`;
    return [
      { label, by: 'product' as const, height: compound(sofar) },
      { label, by: 'sum' as const, height: additiveGuess(sofar) },
    ];
  });
}

/** The product of several percentages beside their sum, step by step, on a linear axis. */
export const growingBars: Figure = {
  id: 'growing-bars',
  title: (scene) => `${percentagesOf(scene).length} effects one after another: multiplied and added`,
  units: 'times the start',
  scale: 'linear axis from 0',
  reading: () => 'face values',
  source: 'derived',
  options(scene, { narrow }) {
    const percentages = percentagesOf(scene);
    const steps = stepsOf(percentages);
    const product = steps.filter(({ by }) => by === 'product');
    const sum = steps.filter(({ by }) => by === 'sum');
    const top = Math.max(1, ...steps.map(({ height }) => height));
    const labels = product.map(({ label }) => label);
    const crowded = labels.length > (narrow ? 4 : 8);
    return {
      height: narrow ? 300 : 320,
      marginLeft: 34,
      marginRight: 8,
      marginTop: 26,
      marginBottom: crowded ? 66 : 40,
      x: {
        type: 'band',
        domain: labels,
        label: null,
        padding: 0.25,
        tickSize: 0,
        tickRotate: crowded ? -40 : 0,
      },
      y: {
        domain: [Math.min(0, ...sum.map(({ height }) => height)), top * 1.08],
        label: 'times the start',
        ticks: 5,
      },
      marks: [
        gridY(5),
        baselineY(1),
        Plot.barY(product, { x: 'label', y: 'height', className: 'kf-product' }),
        Plot.tickY(sum, { x: 'label', y: 'height', className: 'kf-sum' }),
        Plot.text(crowded ? product.slice(-1) : product, {
          x: 'label',
          y: 'height',
          text: ({ height }: Step) => times(height),
          dy: -8,
          className: 'kf-value',
        }),
        Plot.text(sum.slice(-1), {
          x: 'label',
          y: 'height',
          text: ({ height }: Step) => `sum ${times(height)}`,
          dy: 11,
          className: 'kf-value kf-on-bar',
        }),
      ],
    };
  },
  /** A bar by its height, which its effect makes of the bar before. */
  drag({ entry }, _size, { x: bar }) {
    const effects = entry.faceValues ?? [];
    const before = compound(effects.slice(0, bar - 1));
    return bar < 1 || bar > effects.length
      ? undefined
      : { control: `percentage.${bar}`, value: ({ y }) => 100 * (y / before - 1) };
  },
  table(scene) {
    const percentages = percentagesOf(scene);
    return {
      columns: ['After', 'Effect', 'Multiplied', 'Added'],
      rows: [
        ['start', '', times(1), times(1)],
        ...percentages.map((effect, index) => [
          `effect ${index + 1}`,
          roundedPercent(effect),
          times(compound(percentages.slice(0, index + 1))),
          times(additiveGuess(percentages.slice(0, index + 1))),
        ]),
      ],
    };
  },
  caption(scene) {
    const percentages = percentagesOf(scene);
    // What was typed stays as it was typed; what the factors give is rounded.
    const list = percentages
      .map((one) => (scene.entry.faceValues ? roundedPercent(one) : signedPercent(one / 100)))
      .join(', ');
    return percentages.length === 0
      ? 'No effect: the bar stays at its start.'
      : `Multiplied, ${list} make ${plain(compound(percentages), 2)}; added, they would make ${plain(additiveGuess(percentages), 2)}. Bars show the product, and lines across them the sum.`;
  },
};
