/** How far a knife is from its target, as a function of one attribute: the terms of `compare` without the rest of it. */

import { refuse } from '../check.ts';
import { contactDepthMmOf } from '../quantities.ts';
import { changedKnife, type SolvableAttribute } from './attributes.ts';
import { pointOf, terms, workOf, type Point, type Work } from '../chain/factors.ts';
import type { Comparison } from '../types.ts';

/** Where a knife stands at one value of the attribute. */
export interface Gap {
  /** ln of (ratio over target). */
  short: number;
  /** Whether the published regression covers the comparison then: the ratio may jump where this changes. */
  regression: boolean;
}

/** ln of the product of the terms that stand, and whether all do. */
function logProduct(a: Point, b: Point, work: Work): { log: number; complete: boolean } {
  let [log, complete] = [0, true];
  if (a === b) return { log, complete };
  for (const { careful } of terms) {
    const { factor } = careful(a, b, work);
    if (factor === null) complete = false;
    else log += Math.log(factor);
  }
  return { log, complete };
}

const picked = <T>(all: readonly T[], place: number): T =>
  all[place] ?? refuse('a knife of the question is not one of the line-up');

/**
 * The gap by the careful estimate, as `compare` gives it: both knives against the comparison's baseline, the regression
 * decided for the comparison as a whole. The comparison must be one `compare` takes, both ids among its knives.
 *
 * @returns null for a value the model refuses, or where other terms would stand than do now
 */
export function gapOf(
  comparison: Comparison,
  question: { knife: string; against: string; attribute: SolvableAttribute; target: number },
): (value: number) => Gap | null {
  const { knives } = comparison;
  const { attribute } = question;
  const depthMm = contactDepthMmOf(comparison);
  const place = (id: string): number => knives.findIndex((knife) => knife.id === id);
  const [changing, against, base] = [
    place(question.knife),
    place(question.against),
    place(comparison.baseline),
  ];
  const knife = picked(knives, changing);
  const at = (points: readonly Point[], work: Work) => {
    const baseline = picked(points, base);
    return {
      a: logProduct(picked(points, changing), baseline, work),
      b: logProduct(picked(points, against), baseline, work),
    };
  };
  const now = knives.map((present) => pointOf(present, depthMm));
  const workNow = workOf(comparison, now);
  const standing = at(now, workNow);
  const steel = attribute === 'hrc' || attribute === 'carbide';
  const logTarget = Math.log(question.target);

  const gap = (value: number): Gap | null => {
    const changed = pointOf(changedKnife(knife, attribute, value), depthMm);
    if (changed.apexAngleDeg < changed.angleDeg) return null;
    const points = now.with(changing, changed);
    const work = steel ? workOf(comparison, points) : workNow;
    const here = at(points, work);
    if (here.a.complete !== standing.a.complete || here.b.complete !== standing.b.complete) return null;
    return { short: here.a.log - here.b.log - logTarget, regression: work.regressionRefused === null };
  };
  return (value) => {
    try {
      return gap(value);
    } catch (error) {
      // Unreachable: anything else is a fault in the model itself, and goes on as it is.
      if (error instanceof RangeError) return null;
      throw error;
    }
  };
}
