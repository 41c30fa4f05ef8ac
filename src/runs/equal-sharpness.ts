/** How many times as much is cut until the edge is equally sharp: the ratio as a function of the stop. */
import { estimateRatio, studentQuantile } from '../model/index.ts';
import { crossing } from './crossing.ts';
import { curveKindOf, ownCurve } from './curves.ts';
import type { SeriesReading } from './log.ts';

export interface EndPointRatio {
  /**
   * In the unit of the readings, or as a share: of each run's own fitted start that is left of its sharpness, or that its
   * starting force is of the force.
   */
  endPoint: number;
  /** Geometric mean of the cuts of the first knife over that of the second, by the fitted curves. */
  ratio: number;
  /** 95 % by Welch on logarithms; null with a single run of a knife, which shows no scatter. */
  low: number | null;
  high: number | null;
  /** The same ratio from the readings joined by straight lines; null where one does not cross the stop. */
  curveFree: number | null;
}

export interface EndPointOptions {
  /** Stops to look at; 25 spread over where they may lie, if left out. */
  endPoints?: readonly number[];
  /** Stops are shares: equal relative loss in place of equal sharpness. */
  relative?: boolean;
}

/**
 * The ratio at every stop that lies below the fitted starts of all runs and not below their last readings; at others
 * there is none. It is one run a sharpening: `x` and `y` hold a series each. Readings that rise are forces, and a stop then
 * lies above the starts and not above the last readings. A force and a sharpness have no stop in common.
 *
 * @returns Stops from sharp to blunt; empty where the runs have no stop in common.
 * @throws RangeError for a knife without a series, or as `bluntingCurve`
 */
export function ratioByEndPoint(
  x: readonly (readonly SeriesReading[])[],
  y: readonly (readonly SeriesReading[])[],
  { endPoints, relative = false }: EndPointOptions = {},
): EndPointRatio[] {
  for (const [name, series] of [['x', x] as const, ['y', y] as const])
    if (series.length === 0) throw new RangeError(`${name} has no series, at least 1 is needed`);
  const kinds = [...x, ...y].map(curveKindOf);
  const rising = kinds[0] === 'rising';
  if (kinds.some((kind) => kind !== kinds[0])) return [];
  /** How keen an edge is at a stop, higher being keener; and back again. */
  const keen = (endPoint: number): number => (rising && !relative ? -endPoint : endPoint);
  const curved = (series: (typeof x)[number]) => {
    const curve = ownCurve(series);
    const start = curve.start.value;
    const readingAt = (endPoint: number): number =>
      !relative ? endPoint : rising ? start / endPoint : endPoint * start;
    const endPointAt = (reading: number): number =>
      !relative ? reading : rising ? start / reading : reading / start;
    return {
      highest: keen(endPointAt(start)),
      lowest: keen(endPointAt(curve.last.sharpness)),
      cutsTo: (endPoint: number) => curve.cutsTo(readingAt(endPoint)),
      crosses: (endPoint: number) => crossing(series, readingAt(endPoint)),
    };
  };
  const [a, b] = [x.map(curved), y.map(curved)];
  const all = [...a, ...b];
  const highest = Math.min(...all.map((curve) => curve.highest));
  const lowest = Math.max(...all.map((curve) => curve.lowest));
  const looked =
    endPoints ?? Array.from({ length: 25 }, (_, i) => keen(highest + ((lowest - highest) * (i + 1)) / 25));
  return looked
    .filter((endPoint) => keen(endPoint) < highest && keen(endPoint) >= lowest)
    .sort((one, other) => keen(other) - keen(one))
    .flatMap((endPoint) => {
      const [cutsA, cutsB] = [
        known(a.map((c) => c.cutsTo(endPoint))),
        known(b.map((c) => c.cutsTo(endPoint))),
      ];
      if (cutsA === null || cutsB === null) return [];
      const [freeA, freeB] = [
        known(a.map((c) => c.crosses(endPoint))),
        known(b.map((c) => c.crosses(endPoint))),
      ];
      const curveFree = freeA && freeB ? meanRatio(freeA, freeB) : null;
      return [{ endPoint, ratio: meanRatio(cutsA, cutsB), ...band(cutsA, cutsB), curveFree }];
    });
}

/** The values, if none is missing. */
function known(values: readonly (number | null)[]): number[] | null {
  const whole = values.filter((value) => value !== null && value > 0);
  return whole.length === values.length ? (whole as number[]) : null;
}

function meanRatio(x: readonly number[], y: readonly number[]): number {
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + Math.log(value), 0) / values.length;
  return Math.exp(mean(x) - mean(y));
}

function band(x: readonly number[], y: readonly number[]): Pick<EndPointRatio, 'low' | 'high'> {
  if (x.length < 2 || y.length < 2) return { low: null, high: null };
  const lives = (cuts: readonly number[]) => cuts.map((cut) => ({ low: cut, high: cut }));
  try {
    const { logRatio, error, df } = estimateRatio(lives(x), lives(y), false);
    const half = studentQuantile(0.975, df) * error;
    return { low: Math.exp(logRatio - half), high: Math.exp(logRatio + half) };
  } catch (error) {
    // Runs that do not scatter at all have no band.
    if (error instanceof RangeError) return { low: null, high: null };
    throw error;
  }
}
