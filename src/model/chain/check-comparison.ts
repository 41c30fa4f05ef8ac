/** Refuses a comparison that cannot be computed, naming the knife, the parameter, the value and the allowed range. */

import { carbideKinds } from '../steel/carbide.ts';
import { refuse } from '../check.ts';
import { edgeAngle, edgeAngleRange } from '../geometry/geometry.ts';
import {
  checkQuantity,
  contactDepthMmOf,
  measures,
  nominal,
  parameters,
  type MeasureId,
  type ParameterId,
} from '../quantities.ts';
import type { Comparison, Knife, Quantity } from '../types.ts';
import { assumedIds } from './calculation.ts';
import { nameOf, pointOf, type Point } from './point.ts';
import { weightsOf } from './structures.ts';

/**
 * The knives of a comparison that can be computed, each with its middle values.
 *
 * @throws RangeError for anything the model does not take
 */
export function checkedPoints(comparison: Comparison): Point[] {
  const ids = comparison.knives.map(({ id }) => id);
  const twice = ids.length === new Set(ids).size ? undefined : ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined) refuse(`knife id ${twice} stands twice in the comparison: every id is used once`);
  const { outcome = 'end-point' } = comparison;
  if (!['end-point', 'fixed-strokes'].includes(outcome))
    refuse(`outcome ${String(outcome)} is not one of end-point, fixed-strokes`);
  checkParameter('contactDepthMm', comparison.contactDepthMm, ' mm');
  checkParameter('slicePush', comparison.slicePush);
  checkParameter('friction', comparison.friction);
  for (const id of assumedIds) checkParameter(id, comparison.assumptions?.[id]);
  weightsOf(comparison.assumptions);
  const contactDepthMm = contactDepthMmOf(comparison);
  const points = comparison.knives.map((knife) =>
    naming(nameOf(knife), () => checkedPoint(knife, contactDepthMm)),
  );
  if (!ids.includes(comparison.baseline))
    refuse(`baseline ${comparison.baseline} is not among the knives: ${ids.join(', ')}`);
  return points;
}

/** Runs a computation for a knife and says in a refusal which knife it was. */
export function naming<T>(name: string, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    // Unreachable: anything else is a fault in the model itself, and goes on as it is.
    if (error instanceof RangeError) throw new RangeError(`${name}: ${error.message}`, { cause: error });
    throw error;
  }
}

function checkParameter(id: ParameterId, value: Quantity | undefined, unit = ''): void {
  const { name, accepts } = parameters[id];
  if (value !== undefined) checkQuantity(name, value, { ...accepts, unit });
}

function checkMeasure(id: MeasureId, value: Quantity | undefined): void {
  if (value !== undefined) checkQuantity(measures[id].name, value, measures[id]);
}

function checkedPoint(knife: Knife, contactDepthMm: number): Point {
  // The angle's own refusal says "per side", which its range alone would not.
  const angles = [
    ['angleDeg', knife.angleDeg],
    ['microbevelAngleDeg', knife.microbevelAngleDeg],
  ] as const;
  for (const [id, value] of angles) {
    if (value === undefined) continue;
    edgeAngle(measures[id].name, nominal(checkQuantity(measures[id].name, value)));
    checkMeasure(id, value);
  }
  checkMeasure('edgeMm', knife.edgeMm);
  checkMeasure('hrc', knife.hrc);
  if ('um' in knife.finish) checkMeasure('finishUm', knife.finish.um);
  checkMeasure('spineMm', knife.grind.spineMm);
  checkMeasure('heightMm', knife.grind.heightMm);
  if (knife.grind.form !== 'flat') checkMeasure('radiusMm', knife.grind.radiusMm);
  checkCarbide(knife);
  checkMeasure('toughness', knife.toughness);
  const point = pointOf(knife, contactDepthMm);
  if (point.apexAngleDeg < point.angleDeg)
    refuse(
      `microbevel angle ${point.apexAngleDeg}° is not between the bevel's ${point.angleDeg}° and ${edgeAngleRange.high}° per side`,
    );
  return point;
}

function checkCarbide({ carbideVolPercent }: Knife): void {
  const { low, high } = measures.carbideVolPercent;
  let total = 0;
  for (const [kind, volume] of Object.entries(carbideVolPercent)) {
    if (!(carbideKinds as readonly string[]).includes(kind))
      refuse(`carbide kind ${kind} is not one of ${carbideKinds.join(', ')}`);
    checkQuantity(`${kind} volume`, volume, measures.carbideVolPercent);
    total += nominal(volume);
  }
  if (total > high)
    refuse(
      `carbide volume of all kinds together ${Number(total.toPrecision(6))}% is not between ${low}% and ${high}%`,
    );
}
