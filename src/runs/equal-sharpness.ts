/** How many times as much is cut until the edge is equally sharp: the ratio as a function of the stop. */
import { judgeRuns } from '../model/index.ts';
import { crossing } from './crossing.ts';
import { curveKindOf } from './curve-kind.ts';
import { ownCurve } from './curves.ts';
import type { SeriesReading } from './log.ts';

export interface EndPointRatio {
  /**
   * In the unit of the readings, or as a share: of each run's own fitted start that is left of its sharpness, or that its
   * starting force is of the force.
   */
  endPoint: number;
  /** How many times as much the first knife has cut as the second by the fitted curves, within the batches they share. */
  ratio: number;
  /** An interval as the judge of logs gives it: 95% for all end points at once; null where edges are too few. */
  low: number | null;
  high: number | null;
  /** The same ratio from the readings joined by straight lines; null where one does not cross the stop. */
  curveFree: number | null;
}

/** The readings along one edge in one batch. */
export interface EdgeReadings {
  readings: readonly SeriesReading[];
  batch?: string | undefined;
  /** Readings of one knife under the same name here are of the same edge. */
  edge: string;
}

export interface EndPointOptions {
  /** Stops to look at; 25 spread over where they may lie, if left out. */
  endPoints?: readonly number[];
  /** Stops are shares: equal relative loss in place of equal sharpness. */
  relative?: boolean;
}

/**
 * The ratio at every stop that lies below the fitted starts of all runs and not below their last readings; at others
 * there is none. Readings that rise are forces, and a stop then
 * lies above the starts and not above the last readings. A force and a sharpness have no stop in common.
 *
 * @returns Stops from sharp to blunt; empty where the runs have no stop in common.
 * @throws RangeError for a knife without a series, or as `bluntingCurve`
 */
export function ratioByEndPoint(
  x: readonly EdgeReadings[],
  y: readonly EdgeReadings[],
  { endPoints, relative = false }: EndPointOptions = {},
): EndPointRatio[] {
  for (const [name, series] of [['x', x] as const, ['y', y] as const])
    if (series.length === 0) throw new RangeError(`${name} has no series, at least 1 is needed`);
  const kinds = [...x, ...y].map(({ readings }) => curveKindOf(readings));
  const rising = kinds[0] === 'rising';
  if (kinds.some((kind) => kind !== kinds[0])) return [];
  /** How keen an edge is at a stop, higher being keener; and back again. */
  const keen = (endPoint: number): number => (rising && !relative ? -endPoint : endPoint);
  const curved = ({ readings: series, batch, edge }: EdgeReadings) => {
    const curve = ownCurve(series);
    const start = curve.start.value;
    const readingAt = (endPoint: number): number =>
      !relative ? endPoint : rising ? start / endPoint : endPoint * start;
    const endPointAt = (reading: number): number =>
      !relative ? reading : rising ? start / reading : reading / start;
    return {
      batch,
      edge,
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
  const places = looked
    .filter((endPoint) => keen(endPoint) < highest && keen(endPoint) >= lowest)
    .sort((one, other) => keen(other) - keen(one));
  return places.flatMap((endPoint) => {
    const found = judged(a, b, (curve) => curve.cutsTo(endPoint), places.length);
    if (found === null) return [];
    const curveFree = judged(a, b, (curve) => curve.crosses(endPoint), 1)?.ratio ?? null;
    return [{ endPoint, ...found, curveFree }];
  });
}

/** The ratio with an interval that holds at all the end points; null where an edge does not come to this one. */
function judged<Curve extends { batch: string | undefined; edge: string }>(
  a: readonly Curve[],
  b: readonly Curve[],
  cutsOf: (curve: Curve) => number | null,
  endPoints: number,
): Pick<EndPointRatio, 'ratio' | 'low' | 'high'> | null {
  const runs = [a, b].flatMap((curves, knife) =>
    curves.map((curve) => ({
      knife: knife === 0 ? 'x' : 'y',
      batch: curve.batch,
      edge: curve.edge,
      cuts: cutsOf(curve),
    })),
  );
  const lives = runs.flatMap(({ cuts, ...run }) =>
    cuts !== null && cuts > 0 ? [{ ...run, life: { cuts } }] : [],
  );
  if (lives.length < runs.length) return null;
  const { ratio, low, high } = judgeRuns(lives, { knife: 'x', against: 'y', family: endPoints });
  return ratio === null ? null : { ratio, low, high };
}
