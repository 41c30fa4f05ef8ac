import * as Plot from '@observablehq/plot';
import { times } from '../../scene/show.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { gridX } from '../../figure-kit/grid.ts';
import type { Drawing } from '../../figure-kit/figure.ts';
import { valueText } from '../../figure-kit/value-text.ts';

export interface Bar {
  /** What stands at its left. */
  line: string;
  factor: number;
}

interface Frame {
  rowPx: number;
  marginLeft: number;
  marginRight: number;
  /** Where the axis ends. */
  end: number;
  label: string;
  ticks: number;
  /** The line of what all is compared with. */
  atOne: Drawing['marks'][number];
}

/** Bars in proportion, each with its factor beside its end. */
export const barsInProportion = (
  bars: readonly Bar[],
  { rowPx, marginLeft, marginRight, end, label, ticks, atOne }: Frame,
): Drawing => ({
  height: bars.length * rowPx + 50,
  marginLeft,
  marginRight,
  marginTop: 6,
  marginBottom: 42,
  x: { domain: [0, end], ...centredLabel(label), ticks },
  y: { domain: bars.map(({ line }) => line), label: null, tickSize: 0 },
  marks: [
    gridX(ticks),
    Plot.barX(bars, { y: 'line', x: 'factor', insetTop: 7, insetBottom: 7, className: 'kf-product' }),
    atOne,
    valueText(bars, { y: 'line', x: 'factor', text: ({ factor }: Bar) => times(factor), dx: 7 }),
  ],
});
