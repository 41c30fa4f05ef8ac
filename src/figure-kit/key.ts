import * as Plot from '@observablehq/plot';
import { valueText } from './value-text.ts';

/** One curve in a key: its words, the height they stand at, and the class that gives the curve its stroke. */
export interface KeyLine {
  text: string;
  y: number;
  className: string;
}

/**
 * A key among the curves: for each a piece of its own stroke, and its words beside it.
 *
 * @param stroke where the strokes begin and end along x, in the values of the axis
 * @param words how the words are written, where not as values
 */
export const strokeKey = (
  lines: readonly KeyLine[],
  [from, to]: readonly [from: number, to: number],
  words: Plot.TextOptions = {},
): Plot.RenderableMark[] => [
  ...lines.map(({ y, className }) =>
    Plot.line(
      [
        [from, y],
        [to, y],
      ],
      { className },
    ),
  ),
  valueText(lines, { x: to, y: 'y', text: 'text', dx: 6, ...words }),
];
