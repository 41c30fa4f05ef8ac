import * as Plot from '@observablehq/plot';
import type { Points } from '../../figure-kit/plane.ts';

/** A picture of a reason: its marks, laid out in px within a box of this width. */
export interface Picture {
  height: number;
  marks: Plot.Markish[];
}
export const pictureWidth = 330;

/** The size its words are written in, px: it is shown smaller than it is drawn. */
export const fontPx = 17;

/** A line through points, filled as its class says. */
export const filled = (points: Points, className = 'kf-blade'): Plot.Markish =>
  Plot.line(points as [number, number][], { className });

/** A text at a place, px. */
export const written = (x: number, y: number, text: string, options: Plot.TextOptions = {}): Plot.Markish =>
  Plot.text([[x, y]], { text: [text], className: 'kf-reason', ...options });
