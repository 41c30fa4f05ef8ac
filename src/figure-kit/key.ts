import * as Plot from '@observablehq/plot';

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
 * @param words how the words are written: as values, if nothing else is said
 */
export const strokeKey = (
  lines: readonly KeyLine[],
  [from, to]: readonly [from: number, to: number],
  words: Plot.TextOptions = { dx: 6, className: 'kf-value kf-on-paper' },
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
  Plot.text(lines, { x: to, y: 'y', text: 'text', textAnchor: 'start', ...words }),
];
