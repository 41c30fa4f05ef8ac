import { bringCurves } from '../../runs/bring-curves.ts';
import { ratioByEndPoint } from '../../runs/equal-sharpness.ts';
import type { EndPointRatio } from '../../runs/equal-sharpness.ts';
import { inventedSeries } from '../../runs/invented-series.ts';
import { notRecorded } from '../../runs/log.ts';
import type { Run, SeriesReading } from '../../runs/log.ts';
import { seriesOf } from '../../runs/log-series.ts';
import type { LogSeries } from '../../runs/log-series.ts';
import type { Scene } from '../../scene/scene.ts';
import { hasSeries } from '../../scene/has-series.ts';
import { runsOf } from '../../scene/runs.ts';
import { inFigures } from '../../scene/show.ts';

/** What the readings along the edges of the two knives come to. */
export interface EndPoints {
  /** The log has readings of both knives; else they are imagined, after the careful estimate. */
  origin: 'own' | 'imagined';
  /** What was read: sharpness, which falls, or forces, which rise; null where some are the one and some the other. */
  read: 'sharpness' | 'force' | null;
  subject: LogSeries;
  baseline: LogSeries;
  /** Cuts of an imagined series are those of its curve times this. */
  stretch: { subject: number; baseline: number };
  /**
   * The ratio at equal sharpness, from sharp to blunt, with a band that holds at all end points at once; empty where the two
   * have none in common, or no batch.
   */
  bySharpness: readonly EndPointRatio[];
  /** The ratio at equal relative loss: stops are shares of each edge's own start. */
  byLoss: readonly EndPointRatio[];
  /** At the end point chosen before looking, as the log is judged; of imagined readings halfway down. */
  chosen: EndPointRatio | null;
  /** Where every edge has lost half of its own start. */
  half: EndPointRatio | null;
}

// What shows curves has them at hand for the verdict as well.
bringCurves();

const known = new WeakMap<readonly Run[], Map<string, EndPoints>>();
/** Imagined readings are fitted once: the careful estimate only stretches them. */
const imagined = new Map<number | undefined, EndPoints>();

/** The ratio by stop, computed once for a log, its two knives and the end point chosen. */
export function endPointsOf(scene: Scene): EndPoints {
  const { entry, row } = scene;
  const endPoint = entry.plan?.endPoint;
  if (!hasSeries(scene)) return stretched(imaginedAt(endPoint), row.careful.multiplied);
  const { runs = [] } = entry;
  const names = [entry.subject, entry.baseline] as const;
  const numbersRestart = entry.plan?.numbersRestart;
  const key = JSON.stringify([...names, scene.subject.name, scene.baseline.name, endPoint, numbersRestart]);
  const ofLog = known.get(runs) ?? new Map<string, EndPoints>();
  known.set(runs, ofLog);
  const endPoints =
    ofLog.get(key) ??
    read(
      seriesOf(runs, names[0], scene.subject.name, numbersRestart),
      seriesOf(runs, names[1], scene.baseline.name, numbersRestart),
      endPoint,
      'own',
    );
  ofLog.set(key, endPoints);
  // What is said at the end point chosen is what the log is judged by.
  const { log } = runsOf(scene);
  const { ratio, low, high, by } = log;
  if (by !== 'readings' || endPoint === undefined) return endPoints;
  const curveFree = endPoints.chosen?.curveFree ?? null;
  return { ...endPoints, chosen: ratio === null ? null : { endPoint, ratio, low, high, curveFree } };
}

function imaginedAt(endPoint: number | undefined): EndPoints {
  const before = imagined.get(endPoint);
  if (before) return before;
  const runs = (['x', 'y'] as const).flatMap((knife) =>
    inventedSeries(knife).map((series, index) => runOf(knife, String(index + 1), series)),
  );
  const made = read(seriesOf(runs, 'x', 'x'), seriesOf(runs, 'y', 'y'), endPoint, 'imagined');
  imagined.set(endPoint, made);
  return made;
}

const runOf = (knife: string, sharpening: string, series: SeriesReading[]): Run => ({
  knife,
  sharpening,
  series,
  batch: notRecorded,
  endPoint: notRecorded,
  checkedEvery: notRecorded,
  startSharpness: notRecorded,
  angleDeg: notRecorded,
  burrChecked: notRecorded,
  judge: notRecorded,
});

/** The same edges, of which one goes so many times as far: every ratio is so many times as large. */
function stretched(endPoints: EndPoints, factor: number): EndPoints {
  const times = ({ endPoint, ratio, low, high, curveFree }: EndPointRatio): EndPointRatio => ({
    endPoint,
    ratio: ratio * factor,
    low: low && low * factor,
    high: high && high * factor,
    curveFree: curveFree && curveFree * factor,
  });
  return {
    ...endPoints,
    stretch: { subject: Math.max(1, factor), baseline: Math.max(1, 1 / factor) },
    bySharpness: endPoints.bySharpness.map(times),
    byLoss: endPoints.byLoss.map(times),
    chosen: endPoints.chosen && times(endPoints.chosen),
    half: endPoints.half && times(endPoints.half),
  };
}

function read(
  subject: LogSeries,
  baseline: LogSeries,
  endPoint: number | undefined,
  origin: EndPoints['origin'],
): EndPoints {
  const [x, y] = [subject.series, baseline.series];
  const none = x.length === 0 || y.length === 0;
  const bySharpness = none ? [] : ratioByEndPoint(x, y);
  const middle = bySharpness[Math.floor(bySharpness.length / 2)]?.endPoint;
  // An end point of one's own is chosen before looking, and none is chosen for anybody.
  const at = endPoint ?? (origin === 'own' || middle === undefined ? undefined : rounded(middle));
  const kinds = new Set([...subject.series, ...baseline.series].map(({ curve }) => curve.kind));
  return {
    origin,
    read: kinds.size > 1 ? null : kinds.has('rising') ? 'force' : 'sharpness',
    subject,
    baseline,
    stretch: { subject: 1, baseline: 1 },
    bySharpness,
    byLoss: none ? [] : ratioByEndPoint(x, y, { relative: true }),
    chosen: none || at === undefined ? null : (ratioByEndPoint(x, y, { endPoints: [at] })[0] ?? null),
    half: none ? null : (ratioByEndPoint(x, y, { endPoints: [0.5], relative: true })[0] ?? null),
  };
}

/** An end point a reader can say: two figures. */
const rounded = (endPoint: number): number => inFigures(endPoint, 2);
