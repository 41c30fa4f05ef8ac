import * as Plot from '@observablehq/plot';
import { segmentEnds } from './segments.ts';
import type { Segment } from './segments.ts';

/**
 * Arrows with small filled heads at the second end of each segment.
 *
 * @param pxPerUnit px to one unit of the axes, both alike
 */
export function arrows(segments: readonly Segment[], pxPerUnit: number): Plot.RenderableMark[] {
  const [long, half] = [8 / pxPerUnit, 3 / pxPerUnit];
  const heads = segments.map(({ x1, y1, x2, y2 }) => {
    const length = Math.hypot(x2 - x1, y2 - y1) || 1;
    const [right, up] = [(x2 - x1) / length, (y2 - y1) / length];
    const [baseX, baseY] = [x2 - right * long, y2 - up * long];
    return [
      [x2, y2],
      [baseX - up * half, baseY + right * half],
      [baseX + up * half, baseY - right * half],
      [x2, y2],
    ];
  });
  return [
    Plot.link(segments, { ...segmentEnds, className: 'kf-thin' }),
    ...heads.map((head) => Plot.line(head as [number, number][], { className: 'kf-arrowhead' })),
  ];
}
