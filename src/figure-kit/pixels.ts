/** Where a place of the drawing lies in the values of an axis: so many px from the end that comes first. */
type AtPx = (px: number) => number;

/** On a linear axis from one value to another, so many px long. */
export const linearAt =
  (from: number, to: number, lengthPx: number): AtPx =>
  (px) =>
    from + ((to - from) * px) / lengthPx;

/** The same on a logarithmic axis. */
export const logAt =
  (from: number, to: number, lengthPx: number): AtPx =>
  (px) =>
    from * (to / from) ** (px / lengthPx);
