import * as Plot from '@observablehq/plot';

interface Ends {
  low: Plot.ChannelValueSpec;
  high: Plot.ChannelValueSpec;
  y: Plot.ChannelValueSpec;
  className: string;
}

/** Level lines, each from a low to a high value: intervals, and lives known only to lie within limits. */
export const span = (
  data: Plot.Data,
  { low, high, y, className }: Ends,
  more: Plot.LinkOptions = {},
): Plot.RenderableMark => Plot.link(data, { x1: low, x2: high, y1: y, y2: y, className, ...more });
