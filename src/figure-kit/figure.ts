import type { Markish, PlotOptions } from '@observablehq/plot';
import type { Scene } from '../scene/scene.ts';

/** What a figure hands to Plot: its options, with the marks in the order they are drawn in. */
export type Drawing = PlotOptions & { marks: Markish[] };

/** A table of the very numbers a figure draws. */
export interface Table {
  columns: readonly string[];
  rows: readonly (readonly string[])[];
}

export interface Size {
  /** Width of the drawing in CSS px; the height is the figure's own affair. */
  width: number;
  /** True on a sheet too narrow for labels beside the marks. */
  narrow: boolean;
  /** How finely it is drawn, where the reader may choose: the number of its dots. */
  detail?: number;
}

/** The two sizes every figure is drawn at; a page shows the one its column has room for. */
export const sizes = { wide: { width: 640, narrow: false }, narrow: { width: 330, narrow: true } } as const;

/** A place in a drawing, in the values of its axes; on an axis of bands the band, counted from 0. */
export interface Place {
  x: number;
  y: number;
}

/**
 * What a reader takes hold of in a drawing: a control of the page, with its value where the pointer is. Where that is no
 * plain sum, a measure that goes one way with the control says it instead.
 */
export type Handle = {
  control: string;
  /** It can also be taken where its number is typed into a field of the page, without a slider. */
  typed?: true;
  /** How far it goes, where that is further than the slider does. */
  within?: { low: number; high: number };
} & (
  | { value(at: Place): number }
  | {
      /** The measure where the pointer is; without it, its place along x. */
      aim?(at: Place): number;
      /** The measure as a scene has it. */
      stands(scene: Scene, at: Place): number;
    }
);

/**
 * A figure: values in, Plot options out. Drawn by the same code at build and in the browser.
 * `title`, `units`, `scale`, `reading` and `source` fill the title block of its sheet.
 */
export interface Figure {
  id: string;
  title(scene: Scene): string;
  units: string;
  /** "to scale", "not to scale", "logarithmic axis" … */
  scale: string;
  /** Which reading the numbers belong to. */
  reading(scene: Scene): string;
  /** Where the numbers come from: source ids or "assumed", "derived", "invented". */
  source: string;
  options(scene: Scene, size: Size): Drawing;
  /** What can be dragged at a place. It is always a control that has its slider too. */
  drag?(scene: Scene, size: Size, at: Place): Handle | undefined;
  table(scene: Scene): Table;
  /** One sentence with the computed result: the caption and the drawing's name for those who do not see it. */
  caption(scene: Scene): string;
}
