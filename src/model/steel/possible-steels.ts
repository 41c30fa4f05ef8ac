/** Every steel a composition may be, where some of its contents are not exactly known. */

import type { Steel } from './balance.ts';
import { within } from '../check.ts';
import { checkQuantity, isUnknown, nominal, rangeOf } from '../quantities.ts';
import { chromiumRange, hardeningRange } from './saturation.ts';
import { hottest, isTungstenSteel } from './tungsten.ts';
import type { Quantity } from '../types.ts';

/** What of a steel takes part in the balance, weight %; of what is left out it has none. */
export interface Contents<Of = number> {
  /** 0–3%. */
  carbon: Of;
  /** 0–18%. */
  chromium?: Of;
  /** 0–10%. */
  vanadium?: Of;
  /** 0–10%. */
  molybdenum?: Of;
  /** 0–20%. */
  tungsten?: Of;
}

/** A steel, each content known or not, and the temperature it was hardened from. */
export interface Composition extends Contents<Quantity> {
  /** Hardening temperature, °C; left out, anything usual for the chromium content. */
  austenitizingC?: Quantity;
}

/** The contents the balance takes, weight %. */
const limits: Record<keyof Contents, { low: number; high: number }> = {
  carbon: { low: 0, high: 3 },
  chromium: chromiumRange,
  vanadium: { low: 0, high: 10 },
  molybdenum: { low: 0, high: 10 },
  tungsten: { low: 0, high: 20 },
};
const elements = Object.keys(limits) as (keyof Contents)[];

/** Contents that are not known beyond a stated range. */
export const notKnownOf = (composition: Composition): (keyof Contents)[] =>
  elements.filter((element) => isUnknown(composition[element] ?? 0));

/**
 * The steel in the middle of what is not known, and every steel it may be: each value of a content with each of the
 * others'.
 */
export function steelsOf(composition: Composition): { middle: Steel; all: Steel[] } {
  const none: Steel = { carbon: 0, chromium: 0, vanadium: 0, molybdenum: 0, tungsten: 0 };
  // The more are open the fewer places each is looked at, so that all together stay below a thousand.
  const open = elements.filter((element) => typeof (composition[element] ?? 0) !== 'number').length;
  const [few, many] = open > 2 ? [3, 9] : [9, 35];
  let [middle, all] = [none, [none]];
  for (const element of elements) {
    const given = checkContent(element, composition[element] ?? 0);
    const values = valuesOf(element, given, element === 'chromium' ? many : few);
    const possible = element === 'chromium' ? reached(values, composition) : values;
    // The middle of what the temperature leaves, where it leaves out some of what is not known.
    const centre =
      isUnknown(given) && possible.length < values.length
        ? (Math.min(...possible) + Math.max(...possible)) / 2
        : nominal(given);
    middle = { ...middle, [element]: nearest(possible, centre) };
    all = all.flatMap((steel) => possible.map((value) => ({ ...steel, [element]: value })));
  }
  return { middle, all };
}

const checkContent = (element: keyof Contents, given: Quantity): Quantity => {
  const { low, high } = limits[element];
  return typeof given === 'number'
    ? within(element, given, low, high, '%')
    : checkQuantity(element, given, { low, high, unit: '%' });
};

/** The values a content is looked at: its middle, and what lies evenly from end to end of what may be. */
function valuesOf(element: keyof Contents, given: Quantity, places: number): number[] {
  const { low, high } = limits[element];
  const ends = rangeOf(given);
  const [from, to] = [Math.max(low, ends.low), Math.min(high, ends.high)];
  const even = Array.from({ length: places }, (_, place) => from + ((to - from) * place) / (places - 1));
  return [...new Set([nominal(given), ...even])];
}

const nearest = (values: readonly number[], to: number): number =>
  values.reduce((best, value) => (Math.abs(value - to) < Math.abs(best - to) ? value : best));

/** The chromium contents for which the table reaches the temperature; refused where it does for none. */
function reached(chromium: readonly number[], composition: Composition): number[] {
  const { austenitizingC: given, molybdenum = 0, tungsten = 0 } = composition;
  if (given === undefined) return [...chromium];
  // Steels of much tungsten or molybdenum are hardened hotter than the table reaches, which is not asked for them.
  const hot = isTungstenSteel({ molybdenum: nominal(molybdenum), tungsten: nominal(tungsten) });
  const ranges = chromium.map((content) => {
    const { low, high } = hardeningRange(content);
    return { content, low, high: hot ? hottest : high };
  });
  const low = Math.min(...ranges.map((range) => range.low));
  const high = Math.max(...ranges.map((range) => range.high));
  const name = `hardening temperature at ${[...new Set([Math.min(...chromium), Math.max(...chromium)])].join('–')}% chromium`;
  const celsius = nominal(checkQuantity(name, given, { low, high, unit: ' °C' }));
  // All contents share 950 to 1050 °C, so that no temperature between the ends is out of reach of all of them.
  return ranges
    .filter((range) => range.low <= celsius && celsius <= range.high)
    .map(({ content }) => content);
}
