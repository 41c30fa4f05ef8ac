/** What the reader should know about a knife beside its numbers. */

import { checkSection, effectiveFriction, frictionAngleDeg } from '../geometry/geometry.ts';
import { contactDepthMmOf, exactGrind } from '../quantities.ts';
import type { Comparison, Knife, Reading } from '../types.ts';
import { middleCalculation, middleShared, type Calculation } from './calculation.ts';
import { angleFloorDeg } from './limits.ts';
import type { Point } from './point.ts';
import { forcesOf, lnTotals, nearlyAll, structures, wedgingOf } from './structures.ts';
import { unknownMeasures } from './unknown-measures.ts';

const short = (value: number): string => String(Number(value.toPrecision(3)));
const two = (value: number): string => String(Number(value.toPrecision(2)));

interface Noted {
  comparison: Comparison;
  knife: Knife;
  point: Point;
  calculation: Calculation;
  reading: Reading;
}

/** All notes on one knife, in the order in which they are read. */
export const notesOf = (noted: Noted): string[] => [
  ...angleNotes(noted),
  ...sectionNotes(noted),
  ...unknownNotes(noted),
];

function angleNotes({ comparison, knife, point, reading }: Noted): string[] {
  const { name, angleDeg, apexAngleDeg } = point;
  const notes: string[] = [];
  const floor = angleFloorDeg(point.vickers);
  if (apexAngleDeg <= Math.max(6, floor.high))
    notes.push(
      `${name} is at the floor: at ${short(apexAngleDeg)}° per side the bevel itself may break away. In clean slicing of card that happens somewhere between 4° and 6°. For its hardness it would be about ${two(floor.low)}° to ${two(floor.high)}°.`,
    );
  if (angleDeg > 30)
    notes.push(
      `${name} has ${short(angleDeg)}° per side, which looks like an included angle: half of it would be ${short(angleDeg / 2)}°.`,
    );
  const { friction } = middleShared(comparison);
  const frictionAngle = frictionAngleDeg(
    effectiveFriction({ friction, slicePush: comparison.slicePush ?? 0, angleDeg }),
  );
  if (reading === 'careful' && angleDeg <= frictionAngle)
    notes.push(
      `At ${short(angleDeg)}° per side ${name} is no wider than the friction angle of ${short(frictionAngle)}°. So it sticks in the cut when you let go, which changes nothing in the ratio.`,
    );
  if (knife.microbevelAngleDeg !== undefined)
    notes.push(
      `${name} has a microbevel at ${short(apexAngleDeg)}°. The apex and the side load take that angle; the wedge takes the bevel’s ${short(angleDeg)}° (assumed).`,
    );
  return notes;
}

function sectionNotes({ comparison, knife, point, calculation, reading }: Noted): string[] {
  const { name, edgeMm } = point;
  const notes: string[] = [];
  const grind = exactGrind(knife.grind);
  const contactDepthMm = contactDepthMmOf(comparison);
  const least = checkSection({ ...grind, edgeMm });
  if (least < edgeMm)
    notes.push(
      `${name} has a waist: its hollow grind thins to ${short(least)} mm above a shoulder of ${short(edgeMm)} mm.`,
    );
  if (point.flatter)
    notes.push(
      `The primary grind of ${name} is flatter than 0.5° a side over the depth of the cut, and counts as 0.5°.`,
    );
  if (grind.heightMm < contactDepthMm)
    notes.push(
      `The cut reaches ${short(contactDepthMm)} mm above the shoulder of ${name}, past the top of its grind at ${short(grind.heightMm)} mm. Above that the blade counts as ${short(grind.spineMm)} mm thick.`,
    );
  if (reading === 'careful') notes.push(...wedgingNotes(comparison, knife, name, calculation));
  return notes;
}

/** Where a structure is near the end of what it can say. */
function wedgingNotes(
  comparison: Comparison,
  knife: Knife,
  name: string,
  calculation: Calculation,
): string[] {
  const notes: string[] = [];
  const edgeMm = calculation.measured('edgeMm') as number;
  const { spineMm } = exactGrind(knife.grind);
  const thicker = edgeMm * 1.001;
  if (thicker <= spineMm) {
    const now = lnTotals(calculation);
    const then = lnTotals(middleCalculation(comparison, { ...knife, edgeMm: thicker }));
    if (structures.some((structure) => then[structure] > now[structure]))
      notes.push(
        `${name} is so thick behind the edge that in the model more thickness cuts longer. The grind above gets flatter as the edge gets thicker. Don’t rely on its thickness there.`,
      );
  }
  const x = middleShared(comparison).wedgingShare * wedgingOf(forcesOf(calculation));
  if (x >= nearlyAll)
    notes.push(
      `If the force has a limit, wedging alone is nearly the end point for ${name}. Little is left for its edge to get blunt in.`,
    );
  return notes;
}

function unknownNotes({ comparison, knife, point: { name } }: Noted): string[] {
  const unknown = unknownMeasures(knife);
  const names = [...new Set(unknown.map(({ what }) => what))];
  const notes =
    unknown.length > 1
      ? [
          `Not known of ${name}: ${[names.slice(0, -1).join(', '), ...names.slice(-1)].filter(Boolean).join(' and ')}. The middles of their ranges stand in, and the true ratio may be well off.`,
        ]
      : unknown.map(
          ({ what, low, high, unit }) =>
            `The ${what} of ${name} isn’t known. The middle of ${short(low)}–${short(high)}${unit} stands in, and the true ratio may be well off.`,
        );
  if (knife.id !== comparison.baseline && knife.toughness === undefined)
    notes.push(`The toughness of ${name} isn’t known, so nothing is said about how it resists chipping.`);
  return notes;
}
