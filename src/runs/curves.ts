/** Curves of blunting through the readings of one run. */
import { memoizeByObject, studentQuantile } from '../model/index.ts';
import { curveKindOf } from './curve-kind.ts';
import type { CurveKind } from './curve-kind.ts';
import { leastSquares } from './least-squares.ts';
import type { Law } from './least-squares.ts';
import type { SeriesReading } from './log.ts';

/** A fitted value with its 95% interval; null where there are as many readings as parameters. */
export interface FittedValue {
  value: number;
  low: number | null;
  high: number | null;
}

export interface BluntingCurve {
  kind: CurveKind;
  /** S₀ or y₀, in the unit of the readings. */
  start: FittedValue;
  /** Per cut to the power b; for a rising curve in the unit of the readings. */
  a: FittedValue;
  b: FittedValue;
  /** Reading less curve, in the order of the readings. */
  residuals: number[];
  rss: number;
  df: number;
  /** The last reading as read: beyond it the curve says nothing. */
  last: SeriesReading;
  /** The curve itself, at 0 cuts or more. */
  at: (cut: number) => number;
  /** Cuts to a stop; null where it does not lie beyond the start, or lies beyond the last reading. */
  cutsTo: (endPoint: number) => number | null;
}

// In x over the last cut and y over the largest reading; a and b as logarithms, so that both stay above 0.
const power = (x: number, b: number): number => (x === 0 ? 0 : x ** b);
const log = (x: number): number => (x === 0 ? 0 : Math.log(x));

const laws: Record<CurveKind, Law> = {
  falling: {
    value: ([start = 0, lnA = 0, lnB = 0], x) => start / (1 + Math.exp(lnA) * power(x, Math.exp(lnB))),
    slopes: ([start = 0, lnA = 0, lnB = 0], x) => {
      const b = Math.exp(lnB);
      const blunt = Math.exp(lnA) * power(x, b);
      const byBlunt = (-start * blunt) / (1 + blunt) ** 2;
      return [1 / (1 + blunt), byBlunt, byBlunt * b * log(x)];
    },
  },
  rising: {
    value: ([start = 0, lnA = 0, lnB = 0], x) => start + Math.exp(lnA) * power(x, Math.exp(lnB)),
    slopes: ([, lnA = 0, lnB = 0], x) => {
      const b = Math.exp(lnB);
      const blunt = Math.exp(lnA) * power(x, b);
      return [1, blunt, blunt * b * log(x)];
    },
  },
};

/**
 * Fits a curve of blunting by least squares. The readings of one run hang together, so its intervals are about the curve
 * of this run; how far runs differ only several runs show.
 *
 * @param readings At least three, cuts growing from 0 or more, above 0 in sharpness.
 * @throws RangeError for other readings, or where they follow no curve of the kind
 */
export function bluntingCurve(
  readings: readonly SeriesReading[],
  kind: CurveKind = 'falling',
): BluntingCurve {
  const last = check(readings, kind);
  const size = Math.max(...readings.map(({ sharpness }) => sharpness));
  const [xs, ys] = [
    readings.map(({ cut }) => cut / last.cut),
    readings.map(({ sharpness }) => sharpness / size),
  ];
  const [first = 1, end = 1] = [ys[0], ys.at(-1)];
  const rise = kind === 'falling' ? first / end - 1 : end - first;
  const lnA = Math.log(Math.max(rise, 0.01));
  const starts = [0.3, 0.6, 1, 2].map((b) => [kind === 'falling' ? 1 : first, lnA, Math.log(b)]);
  const fit = leastSquares(laws[kind], xs, ys, starts);
  const [scaledStart = Number.NaN, scaledA = Number.NaN, lnB = Number.NaN] = fit.parameters;
  const b = Math.exp(lnB);
  const unit = kind === 'falling' ? 1 : size;
  // a = a′·unit/last^b, so that ln a depends on both parameters.
  const lnLast = Math.log(last.cut);
  const lnRate = scaledA + Math.log(unit) - b * lnLast;
  const v = (i: number, j: number): number => fit.covariance?.[i]?.[j] ?? Number.NaN;
  const rateVariance = v(1, 1) - 2 * b * lnLast * v(1, 2) + (b * lnLast) ** 2 * v(2, 2);
  const t = fit.df > 0 ? studentQuantile(0.975, fit.df) : null;
  const around = (value: number, variance: number, of: (value: number) => number): FittedValue => {
    const half = t === null ? null : t * Math.sqrt(Math.max(0, variance));
    return {
      value: of(value),
      low: half === null ? null : of(value - half),
      high: half === null ? null : of(value + half),
    };
  };
  const start = around(scaledStart, v(0, 0), (value) => value * size);
  const a = around(lnRate, rateVariance, Math.exp);
  const blunted = (endPoint: number): number =>
    kind === 'falling' ? start.value / endPoint - 1 : endPoint - start.value;
  const within = (endPoint: number): boolean =>
    kind === 'falling' ? endPoint >= last.sharpness : endPoint <= last.sharpness;
  return {
    kind,
    start,
    a,
    b: around(lnB, v(2, 2), Math.exp),
    residuals: fit.residuals.map((residual) => residual * size),
    rss: fit.rss * size * size,
    df: fit.df,
    last,
    at: (cut) => size * laws[kind].value(fit.parameters, cut / last.cut),
    cutsTo: (endPoint) =>
      blunted(endPoint) > 0 && within(endPoint) ? (blunted(endPoint) / Math.exp(lnRate)) ** (1 / b) : null,
  };
}

function check(readings: readonly SeriesReading[], kind: CurveKind): SeriesReading {
  readings.forEach(({ cut, sharpness }, i) => {
    if (!(cut >= 0 && Number.isFinite(cut) && cut > (readings[i - 1]?.cut ?? -1)))
      throw new RangeError(`cut ${cut} of reading ${i} does not grow from 0 or more`);
    if (!(sharpness > 0 && Number.isFinite(sharpness)))
      throw new RangeError(`sharpness ${sharpness} of reading ${i} is not a finite number above 0`);
  });
  const last = readings.at(-1);
  if (last === undefined || readings.length < 3)
    throw new RangeError(`there are ${readings.length} readings, at least 3 are needed`);
  const first = readings[0]?.sharpness ?? last.sharpness;
  if (kind === 'falling' ? last.sharpness >= first : last.sharpness <= first) {
    throw new RangeError(`the readings are not ${kind}: ${first} at first, ${last.sharpness} at last`);
  }
  return last;
}

/** The curve of its own kind through the readings of a run, fitted once. @throws RangeError as `bluntingCurve` */
export const ownCurve = memoizeByObject((readings: readonly SeriesReading[]): BluntingCurve =>
  bluntingCurve(readings, curveKindOf(readings)),
);
