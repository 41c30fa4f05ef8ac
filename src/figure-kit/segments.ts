/** A straight line of a drawing, in its own units. */
export interface Segment {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}

/** The names of a segment's ends, for Plot's links. */
export const segmentEnds = { x1: 'x1', y1: 'y1', x2: 'x2', y2: 'y2' } as const;

/** A dimension line with an oblique stroke at each end. */
export function dimensionLine({ x1, y1, x2, y2 }: Segment, strokeLength: number): Segment[] {
  const stroke = (x: number, y: number): Segment => ({
    x1: x - strokeLength,
    y1: y - strokeLength,
    x2: x + strokeLength,
    y2: y + strokeLength,
  });
  return [{ x1, y1, x2, y2 }, stroke(x1, y1), stroke(x2, y2)];
}
