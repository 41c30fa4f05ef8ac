import * as Plot from '@observablehq/plot';

interface Whisker {
  y: Plot.ChannelValue;
  low: Plot.ChannelValue;
  high: Plot.ChannelValue;
  /** How far below the middle of its band it lies, px. */
  dy: number;
  /** What is left free above and below the ticks in their band, px. */
  insetTop: number;
  insetBottom?: number;
}

/** A line in a band from a low to a high value, with a tick at each end. */
export function whisker(data: Plot.Data, { y, low, high, dy, ...insets }: Whisker): Plot.RenderableMark[] {
  const className = 'kf-stem';
  return [
    Plot.ruleY(data, { y, x1: low, x2: high, dy, className }),
    Plot.tickX(data, { y: y as string, x: low, ...insets, className }),
    Plot.tickX(data, { y: y as string, x: high, ...insets, className }),
  ];
}
