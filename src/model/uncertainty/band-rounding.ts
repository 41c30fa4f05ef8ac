import { refuse } from '../check.ts';

/** More figures than this no band is taken to support: a ratio of lives is never known so well. */
const MOST_FIGURES = 6;

/**
 * How many significant figures a band supports: the middle is rounded to the decimal place of the first figure of the
 * band's half width (after JCGM 100, 7.2.6: a result is written no finer than its uncertainty), but to no less than
 * one figure.
 *
 * @param band the ends of the central 90 % and the middle of a ratio, 0 < low ≤ median ≤ high
 * @returns figures, whole, 1 to 6, and the median rounded to them
 * @throws RangeError where the band is not in that order
 * @example bandRounding({ low: 2.1, median: 3.04, high: 4.3 }) // → { figures: 1, median: 3 }
 * @example bandRounding({ low: 2.92, median: 3.04, high: 3.15 }) // → { figures: 2, median: 3 }
 * @example bandRounding({ low: 14.2, median: 23.4, high: 36 }) // → { figures: 1, median: 20 }
 */
export function bandRounding(band: { low: number; median: number; high: number }): {
  figures: number;
  median: number;
} {
  const { low, median, high } = band;
  if (!(low > 0 && low <= median && median <= high && high < Infinity))
    refuse(`band ${low}, ${median}, ${high} is not rising from above 0`);
  const half = (high - low) / 2;
  const finest = exponentOf(median) - MOST_FIGURES + 1;
  // A band of no width has its first figure nowhere, and takes the finest place.
  const place = Math.max(finest, exponentOf(Number(half.toPrecision(1))));
  const figuresAt = (value: number): number => Math.max(1, exponentOf(value) - place + 1);
  const rounded = Number(median.toPrecision(figuresAt(median)));
  // Rounding may move the middle up to a place more, 9.97 to 10.0.
  return { figures: Math.min(MOST_FIGURES, figuresAt(rounded)), median: rounded };
}

/** The power of ten of a number's first figure. */
const exponentOf = (value: number): number => Math.floor(Math.log10(value) + 1e-12);
