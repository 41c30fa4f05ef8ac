/** How far a knife is from its target, as a function of one attribute: the terms of `compare` without the rest of it. */

import { refuse } from './check.ts';
import { parameters } from './quantities.ts';
import { changedKnife, type SolvableAttribute } from './solve-attributes.ts';
import { pointOf, terms, workOf, type Point, type Work } from './terms.ts';
import type { LineUp } from './types.ts';

/** Where a knife stands at one value of the attribute. */
export interface Gap {
  /** ln of (ratio over target). */
  short: number;
  /** Whether the published regression speaks of the line-up then: the ratio may jump where this changes. */
  regression: boolean;
}

/** ln of the product of the terms that stand, and whether all do. */
function logProduct(a: Point, b: Point, work: Work): { log: number; complete: boolean } {
  let [log, complete] = [0, true];
  if (a === b) return { log, complete };
  for (const { close } of terms) {
    const { factor } = close(a, b, work);
    if (factor === null) complete = false;
    else log += Math.log(factor);
  }
  return { log, complete };
}

/**
 * The gap by the close reading, as `compare` gives it: both knives against the line-up's baseline, the regression
 * decided for the line-up as a whole. The line-up must be one `compare` takes, both ids among its knives.
 *
 * @returns null for a value the model refuses, or where other terms would stand than do now
 */
export function gapOf(
  lineUp: LineUp,
  question: { knife: string; against: string; attribute: SolvableAttribute; target: number },
): (value: number) => Gap | null {
  const { knives } = lineUp;
  const depthMm = lineUp.contactDepthMm ?? parameters.contactDepthMm.default;
  const now = knives.map((knife) => pointOf(knife, depthMm));
  const place = (id: string): number => knives.findIndex((knife) => knife.id === id);
  const [changing, a, b, base] = [question.knife, question.knife, question.against, lineUp.baseline].map(
    place,
  );
  const steel = question.attribute === 'hrc' || question.attribute === 'carbide';
  const workNow = workOf(lineUp, now);
  const at = (points: readonly Point[], work: Work) => {
    const pick = (index: number | undefined): Point =>
      points[index ?? -1] ?? refuse('a knife of the question is not one of the line-up');
    const baseline = pick(base);
    return { a: logProduct(pick(a), baseline, work), b: logProduct(pick(b), baseline, work) };
  };
  const standing = at(now, workNow);
  const logTarget = Math.log(question.target);

  const gap = (value: number): Gap | null => {
    const points = knives.map((knife, index) => {
      const present = now[index];
      return index === changing || present === undefined
        ? pointOf(changedKnife(knife, question.attribute, value), depthMm)
        : present;
    });
    const changed = points[changing ?? -1];
    if (changed === undefined || changed.apexAngleDeg < changed.angleDeg) return null;
    const work = steel ? workOf(lineUp, points) : workNow;
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
