import * as Plot from '@observablehq/plot';
import type { Markish } from '@observablehq/plot';

/** Where a grid has its lines: at these values, or at about so many round ones. */
type Lines = readonly number[] | number;

export const gridX = (at: Lines): Markish =>
  typeof at === 'number'
    ? Plot.gridX({ ticks: at, className: 'kf-grid' })
    : Plot.gridX(at, { className: 'kf-grid' });

export const gridY = (at: Lines): Markish =>
  typeof at === 'number'
    ? Plot.gridY({ ticks: at, className: 'kf-grid' })
    : Plot.gridY(at, { className: 'kf-grid' });

/** The vertical line at the value that all others are compared with. */
export const baselineX = (x: number): Markish => Plot.ruleX([x], { className: 'kf-baseline' });

/** The horizontal line at the value that all others are compared with. */
export const baselineY = (y: number): Markish => Plot.ruleY([y], { className: 'kf-baseline' });

/** Vertical lines of a grid between two heights, for a drawing whose rows have words above or below them. */
export const gridXBetween = (at: readonly number[], y1: number, y2: number): Markish =>
  Plot.link(
    at.map((x) => ({ x })),
    { x1: 'x', x2: 'x', y1, y2, className: 'kf-grid' },
  );
