/** How far a knife is from its target, as a function of one attribute: the lives of `compare` without the rest of it. */

import { middleCalculation, middleShared } from '../chain/calculation.ts';
import { pointOf } from '../chain/point.ts';
import { lnTotals } from '../chain/structures.ts';
import { contactDepthMmOf } from '../quantities.ts';
import { refuse } from '../check.ts';
import type { Comparison, Structure } from '../types.ts';
import { changedKnife, type SolvableAttribute } from './attributes.ts';

/**
 * ln of (ratio over target) at a value of the attribute, by the careful estimate; null for a value the model refuses. The
 * comparison must be one `compare` takes, both ids among its knives.
 */
export function gapOf(
  comparison: Comparison,
  question: {
    knife: string;
    against: string;
    attribute: SolvableAttribute;
    target: number;
    structure?: Structure | undefined;
  },
): (value: number) => number | null {
  const { attribute, structure = 'multiplied' } = question;
  const shared = middleShared(comparison);
  const depthMm = contactDepthMmOf(comparison);
  const find = (id: string) =>
    comparison.knives.find((knife) => knife.id === id) ??
    refuse(`knife ${id} is not one of the comparison's`);
  const changing = find(question.knife);
  const other = lnTotals(middleCalculation(comparison, find(question.against), shared))[structure];
  const logTarget = Math.log(question.target);

  return (value) => {
    const changed = changedKnife(changing, attribute, value);
    try {
      const point = pointOf(changed, depthMm);
      if (point.apexAngleDeg < point.angleDeg) return null;
    } catch (error) {
      // Unreachable: anything else is a fault in the model itself, and goes on as it is.
      if (error instanceof RangeError) return null;
      throw error;
    }
    const short = lnTotals(middleCalculation(comparison, changed, shared))[structure] - other - logTarget;
    return Number.isFinite(short) ? short : null;
  };
}
