import { ownCurve } from './curves.ts';
import { putCurvesAtHand } from './curves-at-hand.ts';

/** Puts the curves at hand. Too few readings, and such as follow no curve, have none. */
export function bringCurves(): void {
  putCurvesAtHand((readings, endPoint) => {
    try {
      return ownCurve(readings).cutsTo(endPoint);
    } catch (error) {
      if (error instanceof RangeError) return null;
      throw error;
    }
  });
}
