import * as Plot from '@observablehq/plot';
import type { Points } from '../../figure-kit/plane.ts';

type Point = readonly [x: number, y: number];

/** Points of a Bézier curve with three or four control points. */
function bezier(controls: readonly Point[], steps = 12): [number, number][] {
  const between = (a: Point, b: Point, part: number): Point => [
    a[0] + part * (b[0] - a[0]),
    a[1] + part * (b[1] - a[1]),
  ];
  const at = (points: readonly Point[], part: number): Point => {
    const [first = [0, 0] as const] = points;
    if (points.length < 2) return first;
    return at(
      points.slice(1).map((point, index) => between(points[index] ?? point, point, part)),
      part,
    );
  };
  return Array.from({ length: steps + 1 }, (_, step) => [...at(controls, step / steps)]);
}

/** How a strand runs down through the rope from a place on its surface, px: as far right, and down, as it does. */
const lay = ([x, y]: Point, wide: number): [number, number][] =>
  bezier([
    [x, y],
    [x + 0.19 * wide, y + 0.67 * wide],
    [x + 1.07 * wide, y + 1.01 * wide],
    [x + 1.26 * wide, y + 1.68 * wide],
  ]);

/** Where the fibres of a strand begin, in parts of its width. */
const fibresAt = [0.3, 0.55, 0.8] as const;

/**
 * A laid rope in side view, strand by strand, cut off by the frame of the drawing.
 *
 * @param width of the drawing, px
 * @param topPx where the strands meet at the surface, px from the top
 * @param strandPx width of a strand along the rope, px
 */
export function ropeMarks(width: number, topPx: number, strandPx: number): Plot.RenderableMark[] {
  const count = Math.ceil(width / strandPx) + 3;
  const starts = Array.from({ length: count }, (_, index) => (index - 2.45) * strandPx);
  const strand = (x: number): Points => [
    ...bezier([
      [x, topPx],
      [x + strandPx / 2, topPx - 0.16 * strandPx],
      [x + strandPx, topPx],
    ]),
    ...lay([x + strandPx, topPx], strandPx),
    ...lay([x, topPx], strandPx).reverse(),
  ];
  return starts.flatMap((x) => [
    Plot.line(strand(x) as [number, number][], { className: 'kf-strand', clip: true }),
    ...fibresAt.map((part) =>
      Plot.line(lay([x + part * strandPx, topPx + 4], strandPx), { className: 'kf-fibre', clip: true }),
    ),
  ]);
}
