import * as Plot from '@observablehq/plot';

/** Values at the right of their places, on a ground of paper so that no line runs through them. */
export const valueText = (data: Plot.Data, options: Plot.TextOptions): Plot.Text =>
  Plot.text(data, { textAnchor: 'start', className: 'kf-value kf-on-paper', ...options });
