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
