import { positive } from '../check.ts';
import { edgeAngle } from '../geometry/geometry.ts';
import { vickersFromRockwellC } from '../steel/hardness.ts';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/**
 * The lowest edge angle per side that stands in clean slicing of card, moving with strength: tan θf = tan 5°·√(697/HV).
 * The 5° at 60 HRC is common practice, no source (between 4 and 6°); the law follows from rolling.
 *
 * @param vickers HV, above 0
 * @returns degrees per side
 * @throws RangeError where the hardness is not above 0
 * @example angleFloorDeg(720) // → 4.92
 */
export function angleFloorDeg(vickers: number): number {
  return (Math.atan(tan(5) * Math.sqrt(697 / positive('hardness', vickers, ' HV'))) * 180) / Math.PI;
}

/**
 * Side load to bend the apex (rolling), a against the baseline: it goes as HV·tan² θ, from σ = 1.5 F/(w x tan² θ)
 * at equal depth x.
 *
 * @param p angles per side, degrees; hardness, 20–68 HRC
 * @throws RangeError outside 4–45° or 20–68 HRC
 * @example rollingRatio({ angleDeg: 10, hrc: 60, baselineAngleDeg: 15, baselineHrc: 60 }) // → 0.433
 */
export function rollingRatio(p: {
  angleDeg: number;
  hrc: number;
  baselineAngleDeg: number;
  baselineHrc: number;
}): number {
  return (
    (vickersFromRockwellC(p.hrc) * tan(edgeAngle('edge angle', p.angleDeg)) ** 2) /
    (vickersFromRockwellC(p.baselineHrc) * tan(edgeAngle('baseline edge angle', p.baselineAngleDeg)) ** 2)
  );
}

/**
 * Side load to break pieces out of the edge (chipping), a against the baseline: it goes as K·tan² θ.
 *
 * @param p.toughness K, MPa√m or one relative index for both
 * @throws RangeError outside 4–45°, or where a toughness is not above 0
 * @example chippingRatio({ angleDeg: 20, toughness: 20, baselineAngleDeg: 20, baselineToughness: 10 }) // → 2
 */
export function chippingRatio(p: {
  angleDeg: number;
  toughness: number;
  baselineAngleDeg: number;
  baselineToughness: number;
}): number {
  return (
    (positive('toughness', p.toughness) * tan(edgeAngle('edge angle', p.angleDeg)) ** 2) /
    (positive('toughness of the baseline', p.baselineToughness) *
      tan(edgeAngle('baseline edge angle', p.baselineAngleDeg)) ** 2)
  );
}

/**
 * The flaw at which an edge breaks under a stress: a_c = (K/1.12σ)²/π.
 *
 * @param p.toughness K, MPa√m
 * @param p.stressMpa σ, MPa
 * @returns µm
 * @throws RangeError where either is not above 0
 * @example criticalFlawUm({ toughness: 20, stressMpa: 2000 }) // → 25.38
 */
export function criticalFlawUm(p: { toughness: number; stressMpa: number }): number {
  return (
    ((positive('toughness', p.toughness, ' MPa√m') / (1.12 * positive('stress', p.stressMpa, ' MPa'))) ** 2 /
      Math.PI) *
    1e6
  );
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
    reason: 'twisting in the cut bends the apex over before it wears, so slicing life does not tell',
    contactDepthMm: 6,
    slicePush: 0.5,
  },
  {
    id: 'boards',
    name: 'on a board, through bone or frozen food',
    endsBy: 'chipping',
    slicingChain: false,
    reason: 'knocks break pieces out of the edge before it wears, so slicing life does not tell',
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
