/** How hard the phases of steel are beside the quartz that wears them. */
import { positive, refuse } from '../check.ts';
import { vickersFromRockwellC } from './hardness.ts';

/** The two ends of what a value may be. */
interface Ends {
  low: number;
  high: number;
}

/** Hardness of quartz, HV: it depends on how a crystal lies and who measured (memory). */
export const quartzHv = { low: 900, high: 1280 } as const;

/** Hardness of the carbides, HV (memory). */
const carbideHv = {
  cementite: { low: 1000, high: 1000 },
  Cr7C3: { low: 1300, high: 1800 },
  VC: { low: 2800, high: 2800 },
} as const;

/**
 * Hardness of quartz over that of a phase, as a range: below 1 the phase stands up to it. Good to two figures at most.
 *
 * @param vickers hardness of the phase, HV above 0, or the ends of what it may be
 * @throws RangeError where an end is not above 0, or they are the wrong way round
 * @example quartzOver(1000) // → { low: 0.9, high: 1.28 }
 */
export function quartzOver(vickers: number | Ends): Ends {
  const { low, high } = typeof vickers === 'number' ? { low: vickers, high: vickers } : vickers;
  positive('hardness of the phase', low, ' HV');
  positive('hardness of the phase', high, ' HV');
  if (low > high) refuse(`hardness of the phase ${low}–${high} HV is not from a lower to a higher number`);
  return { low: quartzHv.low / high, high: quartzHv.high / low };
}

/** Hardness of quartz over that of a phase, as ranges (hardness of quartz and carbides from memory). */
export const abrasiveOverPhase = {
  steel60Hrc: quartzOver(vickersFromRockwellC(60)),
  cementite: quartzOver(carbideHv.cementite),
  Cr7C3: quartzOver(carbideHv.Cr7C3),
  VC: quartzOver(carbideHv.VC),
} as const;
