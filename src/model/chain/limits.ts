import { positive } from '../check.ts';
import { edgeAngle } from '../geometry/geometry.ts';
import { vickersFromRockwellC } from '../steel/hardness.ts';
import { nominal } from '../quantities.ts';
import type { Ends, Quantity, Row } from '../types.ts';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/**
 * The lowest edge angle per side that stands in clean slicing of card, moving with strength: tan θf = tan 5°·(697/HV)^k,
 * k ½ to 1. The 5° at 60 HRC is common practice, no source (between 4 and 6°); the law follows from rolling, at equal
 * depth or at equal width of the apex.
 *
 * @param vickers HV, above 0
 * @returns both ends, degrees per side
 * @throws RangeError where the hardness is not above 0
 * @example angleFloorDeg(636).low // → 5.23
 * @example angleFloorDeg(636).high // → 5.48
 */
export function angleFloorDeg(vickers: number): Ends {
  const ratio = 697 / positive('hardness', vickers, ' HV');
  return ends([0.5, 1].map((k) => (Math.atan(tan(5) * ratio ** k) * 180) / Math.PI));
}

const ends = (values: readonly number[]): Ends => ({ low: Math.min(...values), high: Math.max(...values) });

/** What side load meets: the apex's angle per side, its hardness, and its toughness where that is known. */
export interface Apex {
  apexAngleDeg: number;
  hrc: number;
  toughness?: Quantity | undefined;
}

/**
 * Side load to bend the apex (rolling) and to break pieces out of it (chipping), a against the baseline. At equal depth
 * from the apex the load goes as HV·tan² θ, from σ = 1.5 F/(w x tan² θ); at equal width of the apex, which is equal
 * sharpness, as HV·tan θ. Chipping goes likewise as K·tan² θ to K·tan θ. Both are ends of one range; carbide is not in it.
 *
 * @param a angle per side, degrees; hardness, 20–68 HRC; toughness as one index for both
 * @returns both ends; chipping null where a toughness is not known
 * @throws RangeError outside 4–45° or 20–68 HRC
 * @example sideLoadRatios({ apexAngleDeg: 10, hrc: 60 }, { apexAngleDeg: 15, hrc: 60 }).rolling.low // → 0.433
 */
export function sideLoadRatios(a: Apex, baseline: Apex): Row['sideLoad'] {
  const angle =
    tan(edgeAngle('edge angle', a.apexAngleDeg)) /
    tan(edgeAngle('baseline edge angle', baseline.apexAngleDeg));
  const between = (strength: number): Ends => ends([strength * angle, strength * angle * angle]);
  return {
    rolling: between(vickersFromRockwellC(a.hrc) / vickersFromRockwellC(baseline.hrc)),
    chipping:
      a.toughness === undefined || baseline.toughness === undefined
        ? null
        : between(nominal(a.toughness) / nominal(baseline.toughness)),
  };
}

export interface JobProfile {
  id: 'card' | 'rope' | 'wood' | 'boards' | 'prying';
  name: string;
  /** What ends the edge in this work. */
  endsBy: 'wear' | 'rolling' | 'chipping';
  /** Whether the slicing chain covers this work, and why or why not. */
  slicingChain: boolean;
  reason: string;
  contactDepthMm: number;
  slicePush: number;
}

/** What the knives cut, and what ends an edge there. Contact depth and slice/push ratio are assumed starting values. */
export const jobProfiles: readonly JobProfile[] = [
  {
    id: 'card',
    name: 'card and paper board',
    endsBy: 'wear',
    slicingChain: true,
    reason: 'filler in the card wears the apex away',
    contactDepthMm: 8,
    slicePush: 1,
  },
  {
    id: 'rope',
    name: 'natural-fibre rope',
    endsBy: 'wear',
    slicingChain: true,
    reason: 'grit and silica in the fibre wear the apex away',
    contactDepthMm: 8,
    slicePush: 3,
  },
  {
    id: 'wood',
    name: 'wood, carved',
    endsBy: 'rolling',
    slicingChain: false,
    reason: 'twisting in the cut bends the apex over before it wears',
    contactDepthMm: 6,
    slicePush: 0.5,
  },
  {
    id: 'boards',
    name: 'on a board, through bone or frozen food',
    endsBy: 'chipping',
    slicingChain: false,
    reason: 'knocks break pieces out of the edge before it wears',
    contactDepthMm: 10,
    slicePush: 0.5,
  },
  {
    id: 'prying',
    name: 'prying and scraping',
    endsBy: 'rolling',
    slicingChain: false,
    reason: 'side load bends or breaks the edge; cutting has little to do with it',
    contactDepthMm: 2,
    slicePush: 0,
  },
];
