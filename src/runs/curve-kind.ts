import type { SeriesReading } from './log.ts';

/**
 * `falling`: sharpness S = S₀/(1 + a·x^b), which never falls below 0. `rising`: a force or score y = y₀ + a·x^b that
 * grows as the edge blunts.
 */
export type CurveKind = 'falling' | 'rising';

/** Sharpness falls as an edge dulls, the force of a cut rises: the ends of the readings tell which was read. */
export const curveKindOf = (readings: readonly SeriesReading[]): CurveKind =>
  (readings.at(-1)?.sharpness ?? 0) > (readings[0]?.sharpness ?? 0) ? 'rising' : 'falling';
