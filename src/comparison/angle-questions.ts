import type { ComparisonEntry } from './entry.ts';
import type { Placed } from './knife-values.ts';

/** An angle that could be an included angle by mistake: what to ask before using it. */
export interface AngleQuestion {
  /** The id of the knife. */
  knife: string;
  /** What was given as the angle per side, degrees. */
  deg: number;
  /** What the angle per side is if an included angle was given. */
  perSideIfIncluded: number;
}

const likelyIncludedAboveDeg = 30;

const largest = (value: Placed): number => {
  if (typeof value === 'number') return value;
  if ('heel' in value) return Math.max(value.heel, value.middle, value.tip);
  return 'unknown' in value ? (value.low + value.high) / 2 : value.value;
};

/**
 * Knives whose typed angle per side is over 30° and not confirmed. Angles from caliper readings are not asked about:
 * nobody typed them.
 */
export function angleQuestions(entry: ComparisonEntry): AngleQuestion[] {
  return entry.knives.flatMap(({ id, angle }) => {
    if (!('deg' in angle) || angle.perSide) return [];
    const deg = largest(angle.deg);
    return deg > likelyIncludedAboveDeg ? [{ knife: id, deg, perSideIfIncluded: deg / 2 }] : [];
  });
}
