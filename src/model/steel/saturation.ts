/** How much carbon austenite holds at the hardening temperature, by chromium content and carbide: all from memory. */

import { within } from '../check.ts';
import { cementiteBelow } from './carbide-kinds.ts';
import type { LeverCarbide } from './carbide-kinds.ts';
import { austeniteCarbonPercent } from './phases.ts';

type Point = readonly [celsius: number, carbon: number];

/** One row of a chromium steel: carbon at saturation, weight %, by temperature. */
interface Row {
  chromium: number;
  points: readonly [Point, ...Point[]];
  /** Carbon per 100 °C where the row is carried on past its points. */
  per100C: number;
}

interface Carbon {
  value: number;
  plusMinus: number;
}

/** What 14 to 17% chromium hold; 0.32 and 0.52 are also those of a published calculation for 17Cr-1.075C-0.8Mo. */
const stainless = {
  points: [
    [1000, 0.32],
    [1030, 0.38],
    [1050, 0.42],
    [1100, 0.52],
  ],
  per100C: 0.2,
} as const;

/** Carbon beside one chromium carbide. Steels of 12% chromium with much carbon hold more than those with little. */
const rows: Record<'Cr7C3' | 'Cr23C6', readonly [Row, ...Row[]]> = {
  Cr7C3: [
    {
      chromium: 5,
      points: [
        [960, 0.65],
        [1000, 0.8],
      ],
      per100C: 0.375,
    },
    // One point: how it rises with the temperature is assumed, between the rows about it.
    { chromium: 12, points: [[1020, 0.5]], per100C: 0.3 },
    { chromium: 14, ...stainless },
  ],
  Cr23C6: [
    {
      chromium: 13,
      points: [
        [1000, 0.3],
        [1050, 0.42],
      ],
      per100C: 0.24,
    },
    { chromium: 14, ...stainless },
  ],
};

/** How far the carbon of a row may be off, weight %. */
const rowPlusMinus = 0.15;

/** Plain and low-alloy steels after a short soak: below the Acm line by so much, and by so much for each % of chromium. */
const lowAlloy = { below: 0.1, perChromium: 0.15, plusMinus: 0.12 } as const;

/** Hardening temperatures the table is used for, °C: the Acm line, and the rows with 50 °C or so beyond them. */
const reach = [
  { chromium: 0, low: 727, high: 1100 },
  { chromium: cementiteBelow, low: 727, high: 1100 },
  { chromium: 5, low: 910, high: 1050 },
  { chromium: 12, low: 950, high: 1100 },
  { chromium: 14, low: 950, high: 1150 },
] as const;

/** Chromium the table is used for, weight %; above 14 as at 14. */
export const chromiumRange = { low: 0, high: 18 } as const;

const mix = (a: number, b: number, part: number): number => a + (b - a) * part;

/** The neighbours of a chromium content in a table, and the share of the upper one; beyond the ends the end alone. */
function about<Entry extends { chromium: number }>(
  table: readonly Entry[],
  chromium: number,
): { below: Entry; above: Entry; part: number } {
  const place = table.findIndex((entry) => entry.chromium >= chromium);
  const above = (place < 0 ? table.at(-1) : table[place]) as Entry;
  const below = table[place - 1] ?? above;
  const span = above.chromium - below.chromium;
  return { below, above, part: span === 0 ? 0 : (chromium - below.chromium) / span };
}

function atRow({ points, per100C }: Row, celsius: number): Carbon {
  const [first] = points;
  // Carried on past the points, a tenth more for every 50 °C.
  const beyond = (from: Point): Carbon => ({
    value: from[1] + (per100C * (celsius - from[0])) / 100,
    plusMinus: rowPlusMinus + (0.1 * Math.abs(celsius - from[0])) / 50,
  });
  if (celsius <= first[0]) return beyond(first);
  const above = points.findIndex(([row]) => row >= celsius);
  if (above < 0) return beyond(points.at(-1) ?? first);
  const [a, b] = [points[above - 1] ?? first, points[above] ?? first];
  return { value: mix(a[1], b[1], (celsius - a[0]) / (b[0] - a[0])), plusMinus: rowPlusMinus };
}

const atLowAlloy = (chromium: number, celsius: number): Carbon => ({
  value: Math.max(
    0,
    austeniteCarbonPercent(celsius).value - lowAlloy.below - lowAlloy.perChromium * chromium,
  ),
  plusMinus: lowAlloy.plusMinus,
});

/** Straight between two saturations. */
const between = (a: Carbon, b: Carbon, part: number): Carbon => ({
  value: mix(a.value, b.value, part),
  plusMinus: mix(a.plusMinus, b.plusMinus, part),
});

/**
 * Hardening temperatures the table reaches at a chromium content, °C.
 *
 * @param chromium weight %, 0–18
 * @throws RangeError outside that
 * @example hardeningRange(12) // → { low: 950, high: 1100 }
 */
export function hardeningRange(chromium: number): { low: number; high: number } {
  within('chromium', chromium, chromiumRange.low, chromiumRange.high, '%');
  const { below, above, part } = about(reach, chromium);
  return { low: mix(below.low, above.low, part), high: mix(below.high, above.high, part) };
}

/**
 * Carbon that austenite holds at the hardening temperature, weight %, from memory. Beside cementite the Acm line less 0.10
 * and less 0.15 for each per cent of chromium, ±0.12, which allows for a short soak. Beside a chromium carbide straight
 * between rows of the table, ±0.15, and a tenth more for every 50 °C past the points of a row.
 *
 * @param p.chromium weight %, 0–18
 * @param p.celsius hardening temperature within `hardeningRange`
 * @param p.carbide what it is in balance with
 * @throws RangeError outside these ranges
 * @source memory
 * @example saturationCarbon({ chromium: 13, celsius: 1050, carbide: 'Cr23C6' }) // → { value: 0.42, plusMinus: 0.15 }
 */
export function saturationCarbon(p: { chromium: number; celsius: number; carbide: LeverCarbide }): Carbon {
  const { chromium, celsius, carbide } = p;
  const { low, high } = hardeningRange(chromium);
  within(`hardening temperature at ${chromium}% chromium`, celsius, low, high, ' °C');
  if (carbide === 'Fe3C' || (carbide === 'Cr7C3' && chromium <= cementiteBelow))
    return atLowAlloy(chromium, celsius);
  const [first] = rows[carbide];
  if (carbide === 'Cr7C3' && chromium < first.chromium)
    return between(
      atLowAlloy(cementiteBelow, celsius),
      atRow(first, celsius),
      (chromium - cementiteBelow) / (first.chromium - cementiteBelow),
    );
  const { below, above, part } = about(rows[carbide], chromium);
  return between(atRow(below, celsius), atRow(above, celsius), part);
}
