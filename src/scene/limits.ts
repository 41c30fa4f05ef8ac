import {
  angleFloorDeg,
  edgeAngleRange,
  nominal,
  sideLoadRatios,
  vickersFromRockwellC,
} from '../model/index.ts';
import type { Ends, Knife, Row } from '../model/index.ts';
import { anglesOf, drivable, routesAt, routesOf } from './routes.ts';
import { memoizeByScene } from './guessed.ts';
import type { Scene } from './scene.ts';

/** What may end an edge, and so what one edge can be better in than another. */
export type Trial = 'slicing' | 'rolling' | 'chipping';

export const trials: readonly Trial[] = ['slicing', 'rolling', 'chipping'];

/** The subject against the baseline in all three, if its edge angle were so many degrees per side. */
export interface Limits {
  angleDeg: number;
  /** How many times as long it cuts, careful estimate. */
  slicing: number;
  /** How many times the side load it bears before it rolls: the middle of its range. */
  rolling: number;
  /** How many times the side load it bears before it chips; null where a toughness is not given. */
  chipping: number | null;
  /** Both ends of the side loads. */
  sideLoad: Row['sideLoad'];
}

/** The angle at the very apex when the bevel has so many degrees: a microbevel keeps its own until the bevel is as steep. */
const apexDeg = ({ microbevelAngleDeg }: Knife, angleDeg: number): number =>
  microbevelAngleDeg === undefined ? angleDeg : Math.max(angleDeg, nominal(microbevelAngleDeg));

/**
 * The three ratios at another edge angle of the subject, all else as it is.
 *
 * @throws RangeError outside 4–45° or where such a wedge cannot be driven
 */
export function limitsAt(scene: Scene, angleDeg: number): Limits {
  const { subjectKnife: a, baselineKnife: b, row } = scene;
  const sideLoad = sideLoadRatios(
    { apexAngleDeg: apexDeg(a, angleDeg), hrc: nominal(a.hrc), toughness: a.toughness },
    { apexAngleDeg: anglesOf(scene).baseline.apex, hrc: nominal(b.hrc), toughness: b.toughness },
  );
  return {
    angleDeg,
    // All but wedge and apex stay as they are.
    slicing: (row.careful.multiplied / routesOf(scene).careful) * routesAt(scene, angleDeg).careful,
    rolling: middleOf(sideLoad.rolling),
    chipping: sideLoad.chipping && middleOf(sideLoad.chipping),
    sideLoad,
  };
}

/** The middle of a range of ratios: as far from one end as from the other, in the logarithm. */
export const middleOf = ({ low, high }: Ends): number => Math.sqrt(low * high);

/** The three ratios at the angle the subject has. */
export const limitsOf = memoizeByScene((scene: Scene): Limits =>
  limitsAt(scene, anglesOf(scene).subject.bevel),
);

/** The lowest angle per side at which an edge of this hardness stands in clean slicing, as a range, degrees. */
export const floorDeg = ({ hrc }: Knife): Ends => angleFloorDeg(vickersFromRockwellC(nominal(hrc)));

/** The angles, degrees per side, at which the subject is no worse than the baseline. */
export interface Stretch {
  lowDeg: number;
  highDeg: number;
}

/** Where a ratio that rises or falls with the angle passes 1, to 1e-9 of a degree. */
function crossing(ratio: (angleDeg: number) => number, lowDeg: number, highDeg: number): number {
  const rising = ratio(highDeg) > ratio(lowDeg);
  let [low, high] = [lowDeg, highDeg];
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (ratio(middle) > 1 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** The steepest angle the model takes that can still be driven. */
function steepestDeg(scene: Scene): number {
  const { low, high } = edgeAngleRange;
  if (drivable(scene, high)) return high;
  return crossing((angleDeg) => (drivable(scene, angleDeg) ? 0.5 : 2), low, high) - 1e-6;
}

/** Where the subject is no worse than the baseline in one trial; null where nowhere, or where it cannot be said. */
export function stretchOf(scene: Scene, trial: Trial): Stretch | null {
  const [lowDeg, highDeg] = [edgeAngleRange.low, steepestDeg(scene)];
  const ratio = (angleDeg: number): number => limitsAt(scene, angleDeg)[trial] ?? 0;
  // Equal knives meet at their own angle: a hair's breadth must not part them.
  const [atLow, atHigh] = [ratio(lowDeg) >= 1 - 1e-9, ratio(highDeg) >= 1 - 1e-9];
  if (atLow && atHigh) return { lowDeg, highDeg };
  if (!atLow && !atHigh) return null;
  const meets = crossing(ratio, lowDeg, highDeg);
  return atLow ? { lowDeg, highDeg: meets } : { lowDeg: meets, highDeg };
}

/** The angles at which the subject is no worse than the baseline in all that can be said of it; null where there are none. */
export const sharedStretch = memoizeByScene((scene: Scene): Stretch | null => {
  const known = trials.filter((trial) => limitsOf(scene)[trial] !== null);
  const stretches = known.map((trial) => stretchOf(scene, trial));
  return stretches.reduce<Stretch | null>(
    (shared, next) => {
      if (!shared || !next) return null;
      const both = {
        lowDeg: Math.max(shared.lowDeg, next.lowDeg),
        highDeg: Math.min(shared.highDeg, next.highDeg),
      };
      return both.lowDeg <= both.highDeg + 1e-6 ? both : null;
    },
    { lowDeg: edgeAngleRange.low, highDeg: edgeAngleRange.high },
  );
});
