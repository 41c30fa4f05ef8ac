/** How much carbon austenite holds at the hardening temperature, by chromium content. */

import { acm } from './phases.ts';
import { within } from '../check.ts';

/** One row: carbon at saturation, weight %, by temperature. */
interface Saturation {
  chromium: number;
  points: typeof acm;
  /** How far the carbon may be off, weight %. */
  plusMinus: number;
  /** Carbon per 100 °C where the row is carried on past its points. */
  per100C: number;
  /** The temperatures the row is used for: its points, and for chromium steels 50 °C beyond. */
  low: number;
  high: number;
}

/**
 * All from memory but the last row, which is a published calculation for 17Cr-1.075C-0.8Mo. Between 2 and 10 % Cr there
 * is one row of one point, and the carbon found there may be well off.
 */
const rows: readonly [Saturation, ...Saturation[]] = [
  {
    chromium: 0,
    points: acm,
    plusMinus: 0.1,
    per100C: 0.35,
    low: 727,
    high: 1100,
  },
  {
    chromium: 1.5,
    points: [
      [850, 0.7],
      [950, 1.05],
    ],
    plusMinus: 0.15,
    per100C: 0.35,
    low: 800,
    high: 1000,
  },
  { chromium: 5, points: [[1000, 1.05]], plusMinus: 0.3, per100C: 0.35, low: 950, high: 1050 },
  {
    chromium: 10,
    points: [
      [1000, 0.45],
      [1100, 0.75],
    ],
    plusMinus: 0.1,
    per100C: 0.3,
    low: 950,
    high: 1150,
  },
  {
    chromium: 12,
    points: [
      [1000, 0.3],
      [1050, 0.42],
      [1100, 0.575],
    ],
    plusMinus: 0.1,
    per100C: 0.25,
    low: 950,
    high: 1150,
  },
  {
    chromium: 17,
    points: [
      [1000, 0.32],
      [1100, 0.52],
    ],
    plusMinus: 0.1,
    per100C: 0.2,
    low: 950,
    high: 1150,
  },
];

/** Chromium the rows are used for, weight %; above 17 as at 17. */
export const chromiumRange = { low: 0, high: 18 } as const;

function atRow(
  { points, per100C, plusMinus }: Saturation,
  celsius: number,
): { value: number; plusMinus: number } {
  const [first] = points;
  // Carried on past the points, a tenth more for every 50 °C.
  const beyond = (from: readonly [number, number]) => ({
    value: from[1] + (per100C * (celsius - from[0])) / 100,
    plusMinus: plusMinus + (0.1 * Math.abs(celsius - from[0])) / 50,
  });
  if (celsius <= first[0]) return beyond(first);
  const above = points.findIndex(([row]) => row >= celsius);
  if (above < 0) return beyond(points[points.length - 1] ?? first);
  const [a, b] = [points[above - 1] ?? first, points[above] ?? first];
  return { value: a[1] + ((b[1] - a[1]) * (celsius - a[0])) / (b[0] - a[0]), plusMinus };
}

/** The rows about a chromium content, and the share of the upper one. */
function about(chromium: number): { below: Saturation; above: Saturation; part: number } {
  within('chromium', chromium, chromiumRange.low, chromiumRange.high, ' %');
  const place = rows.findIndex((row) => row.chromium >= chromium);
  // Above the last row that row, both times; at the first row that one.
  const above = rows[place < 0 ? rows.length - 1 : place] ?? rows[0];
  const below = rows[place - 1] ?? above;
  const span = above.chromium - below.chromium;
  return { below, above, part: span === 0 ? 0 : (chromium - below.chromium) / span };
}

const mix = (a: number, b: number, part: number): number => a + (b - a) * part;

/**
 * Hardening temperatures the table reaches at a chromium content.
 *
 * @param chromium weight %, 0–18
 * @throws RangeError outside that
 * @example hardeningRange(12) // → { low: 950, high: 1150 }
 */
export function hardeningRange(chromium: number): { low: number; high: number } {
  const { below, above, part } = about(chromium);
  return { low: mix(below.low, above.low, part), high: mix(below.high, above.high, part) };
}

/**
 * Carbon that austenite holds at saturation, weight %, straight between the rows of the table.
 *
 * @param p.chromium weight %, 0–18
 * @param p.celsius hardening temperature within `hardeningRange`
 * @throws RangeError outside these ranges
 * @example saturationCarbon({ chromium: 12, celsius: 1050 }) // → { value: 0.42, plusMinus: 0.1 }
 */
export function saturationCarbon(p: { chromium: number; celsius: number }): {
  value: number;
  plusMinus: number;
} {
  const { below, above, part } = about(p.chromium);
  const { low, high } = hardeningRange(p.chromium);
  within(`hardening temperature at ${p.chromium} % chromium`, p.celsius, low, high, ' °C');
  const [a, b] = [atRow(below, p.celsius), atRow(above, p.celsius)];
  return { value: mix(a.value, b.value, part), plusMinus: mix(a.plusMinus, b.plusMinus, part) };
}
