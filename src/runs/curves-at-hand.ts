/** Curves through readings take a large library: a page fetches it once a log asks for one. */
import type { SeriesReading } from './log.ts';

/** Cuts to an end point along the curve through the readings of an edge; null where it does not come to it. */
export type CutsTo = (readings: readonly SeriesReading[], endPoint: number) => number | null;

let atHand: CutsTo | null = null;
let fetchThem = (): void => undefined;

/** The curves; null where they are not here yet, and are then sent for. */
export function curvesAtHand(): CutsTo | null {
  if (atHand === null) fetchThem();
  return atHand;
}

export function putCurvesAtHand(cutsTo: CutsTo): void {
  atHand = cutsTo;
}

/** @param how sends for the curves; called once */
export function fetchCurvesBy(how: () => void): void {
  fetchThem = () => {
    fetchThem = () => undefined;
    how();
  };
}
