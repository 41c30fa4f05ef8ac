import { within } from '../check.ts';

/** Ra ∝ d^1.3–1.4, read off two published charts of ground and lapped steel. */
const exponent = { low: 1.3, middle: 1.35, high: 1.4 } as const;

/** Where the line is hung up: about 0.5 µm from a 58.5 µm grain, FEPA P240 (memory), good to a factor 2. */
const anchor = { um: 58.5, raUm: 0.5, factor: 2 } as const;

/**
 * Arithmetic mean roughness Ra a grain leaves on steel: ∝ d^1.3–1.4, hung up at one value from memory. The band is a
 * factor 2 to either side there and widens away from it with the exponent's range. Pressure, wear of the grain and
 * direction of measuring move Ra as much; for ratios of two finishes only the exponent counts.
 *
 * @param um median particle size, 1–250 µm
 * @returns µm
 * @throws RangeError outside that
 * @example roughnessRaUm(58.5) // → { value: 0.5, low: 0.25, high: 1 }
 */
export function roughnessRaUm(um: number): { value: number; low: number; high: number } {
  const size = within('grain size', um, 1, 250, ' µm') / anchor.um;
  const ends = [size ** exponent.low, size ** exponent.high];
  return {
    value: anchor.raUm * size ** exponent.middle,
    low: (anchor.raUm * Math.min(...ends)) / anchor.factor,
    high: anchor.raUm * Math.max(...ends) * anchor.factor,
  };
}
