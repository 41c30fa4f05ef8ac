import * as Plot from '@observablehq/plot';
import { steady } from './steady.ts';
import type { Steady } from './steady.ts';

/** Where a grid has its lines: at these values, or at about so many round ones. */
type Lines = readonly number[] | number;

export const gridX = (at: Lines): Steady =>
  steady(['x'], at, () =>
    typeof at === 'number'
      ? Plot.gridX({ ticks: at, className: 'kf-grid' })
      : Plot.gridX(at, { className: 'kf-grid' }),
  );

export const gridY = (at: Lines): Steady =>
  steady(['y'], at, () =>
    typeof at === 'number'
      ? Plot.gridY({ ticks: at, className: 'kf-grid' })
      : Plot.gridY(at, { className: 'kf-grid' }),
  );

/** The upright line of what all is compared with. */
export const baselineX = (x: number): Steady =>
  steady(['x'], x, () => Plot.ruleX([x], { className: 'kf-baseline' }));

/** The level line of what all is compared with. */
export const baselineY = (y: number): Steady =>
  steady(['y'], y, () => Plot.ruleY([y], { className: 'kf-baseline' }));

/** Upright lines of a grid between two heights, for a drawing whose rows have words above or below them. */
export const gridXBetween = (at: readonly number[], y1: number, y2: number): Plot.RenderableMark =>
  Plot.link(
    at.map((x) => ({ x })),
    { x1: 'x', x2: 'x', y1, y2, className: 'kf-grid' },
  );
