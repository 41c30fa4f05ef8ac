/**
 * What the factors of the careful estimate are made of, for one value or over a whole run of samples. Every loop is written
 * out: a function handed to one loop for all would be called, and its number boxed, once a sample, which takes several
 * times as long.
 */

import { apexExponentAt } from '../geometry/apex.ts';
import { flattestGrindDeg, grindHalfAngleDeg } from '../geometry/geometry.ts';
import { cardForChain } from '../steel/card-for-chain.ts';
import type { Ends, GrindForm } from '../types.ts';
import { at, lanes, roomFor, settled, type Values } from './values.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

const effective = (friction: number, slicePush: number, tangent: number): number =>
  slicePush === 0 ? friction : friction / Math.sqrt(1 + (slicePush * slicePush) / (1 + tangent * tangent));

/** ln tan(θ + φ) from tan θ and µ₀: `wedgeResistance` without its trip to degrees; not a number where it refuses. */
function lnForce(tangent: number, friction: number, slicePush: number): number {
  const µ = effective(friction, slicePush, tangent);
  const below = 1 - µ * tangent;
  return below > 0 ? Math.log((tangent + µ) / below) : Number.NaN;
}

/** The sine of an angle, degrees. */
export function sines(angle: Values, old?: Values): Values {
  const { a, out } = lanes(angle, 0, old);
  for (let i = 0; i < out.length; i += 1) out[i] = Math.sin(radians(a.data[i * a.step] ?? 0));
  return settled(out);
}

/** ln of the wedge's resistance from the sine of its angle, which is below 90° per side. */
export function wedges(sine: Values, friction: Values, slicePush: number, old?: Values): Values {
  const { a, b, out } = lanes(sine, friction, old);
  for (let i = 0; i < out.length; i += 1) {
    const s = a.data[i * a.step] ?? 0;
    out[i] = lnForce(s / Math.sqrt(1 - s * s), b.data[i * b.step] ?? 0, slicePush);
  }
  return settled(out);
}

/** ln of the grind's resistance from the tangent of its half angle. */
export function grinds(tangent: Values, friction: Values, slicePush: number, old?: Values): Values {
  const { a, b, out } = lanes(tangent, friction, old);
  for (let i = 0; i < out.length; i += 1)
    out[i] = lnForce(a.data[i * a.step] ?? 0, b.data[i * b.step] ?? 0, slicePush);
  return settled(out);
}

/** The sine of a microbevel's angle; not a number where that is below the bevel's. */
export function microbevelSines(angle: Values, apexAngle: Values, old?: Values): Values {
  const { a, b, out } = lanes(angle, apexAngle, old);
  for (let i = 0; i < out.length; i += 1) {
    const deg = b.data[i * b.step] ?? 0;
    out[i] = deg < (a.data[i * a.step] ?? 0) ? Number.NaN : Math.sin(radians(deg));
  }
  return settled(out);
}

/** ln of the tangent of an angle from its sine. */
export function logTangents(sine: Values, old?: Values): Values {
  const { a, out } = lanes(sine, 0, old);
  for (let i = 0; i < out.length; i += 1) {
    const s = a.data[i * a.step] ?? 0;
    out[i] = Math.log(s / Math.sqrt(1 - s * s));
  }
  return settled(out);
}

/** The exponent of the apex, as `apexExponent` gives it. */
export function apexExponents(total: Values, old?: Values): Values {
  const { a, out } = lanes(total, 0, old);
  for (let i = 0; i < out.length; i += 1) out[i] = apexExponentAt(a.data[i * a.step] ?? 0);
  return settled(out);
}

export function products(left: Values, right: Values, old?: Values): Values {
  const { a, b, out } = lanes(left, right, old);
  for (let i = 0; i < out.length; i += 1) out[i] = (a.data[i * a.step] ?? 0) * (b.data[i * b.step] ?? 0);
  return settled(out);
}

/** The values, where another does not pass its limit; not a number where it does. */
export function limited(values: Values, other: Values, limit: number, old?: Values): Values {
  const { a, b, out } = lanes(values, other, old);
  for (let i = 0; i < out.length; i += 1)
    out[i] = (b.data[i * b.step] ?? 0) <= limit ? (a.data[i * a.step] ?? 0) : Number.NaN;
  return settled(out);
}

export function logs(values: Values, old?: Values): Values {
  const { a, out } = lanes(values, 0, old);
  for (let i = 0; i < out.length; i += 1) out[i] = Math.log(a.data[i * a.step] ?? 0);
  return settled(out);
}

/** Readings with the bias of their gauge; not a number outside the limits. */
export function biased(reading: Values, bias: Values, { low, high }: Ends, old?: Values): Values {
  const { a, b, out } = lanes(reading, bias, old);
  for (let i = 0; i < out.length; i += 1) {
    const value = (a.data[i * a.step] ?? 0) + (b.data[i * b.step] ?? 0);
    out[i] = value >= low && value <= high ? value : Number.NaN;
  }
  return settled(out);
}

/** The tangent of the flattest grind the model takes. */
const FLATTEST = Math.tan(radians(flattestGrindDeg));

/** tan of the grind's wedge half angle, at least that of 0.5°; not a number where there is no such section. */
export function grindTangents(grind: GrindValues, old?: Values): Values {
  const { form, edge, spine, height, radius, depth } = grind;
  const varying = [edge, spine, height, radius ?? 0, depth].find((values) => typeof values !== 'number');
  const out = roomFor(varying?.length ?? 1, old);
  // One section for all samples: a new one for each would take longer than the sum itself.
  const section: Section = { form, edgeMm: 0, spineMm: 0, heightMm: 0, contactDepthMm: 0 };
  for (let i = 0; i < out.length; i += 1) {
    section.edgeMm = at(edge, i);
    section.spineMm = at(spine, i);
    section.heightMm = at(height, i);
    section.contactDepthMm = at(depth, i);
    if (radius !== null) section.radiusMm = at(radius, i);
    out[i] = Math.max(FLATTEST, form === 'flat' ? flatTangent(section) : curvedTangent(section));
  }
  return settled(out);
}

type Section = Parameters<typeof grindHalfAngleDeg>[0];

function flatTangent({ edgeMm, spineMm, heightMm, contactDepthMm }: Section): number {
  return edgeMm > 0 && edgeMm <= spineMm
    ? (spineMm - edgeMm) * (Math.min(1, contactDepthMm / heightMm) / (2 * contactDepthMm))
    : Number.NaN;
}

/** A primary grind over a run, mm; no radius where none was given. */
export interface GrindValues {
  form: GrindForm;
  edge: Values;
  spine: Values;
  height: Values;
  radius: Values | null;
  depth: Values;
}

function curvedTangent(section: Section): number {
  try {
    return Math.tan(radians(grindHalfAngleDeg(section)));
  } catch (error) {
    // Unreachable: anything else is a fault in the model itself, and goes on as it is.
    if (error instanceof RangeError) return Number.NaN;
    throw error;
  }
}

/** ln of the card of the published test, as the chain takes it: bent and continued. */
export function logCards(hrc: Values, carbideMm: Values, hardnessExponent: Values, old?: Values): Values {
  const varying = [hrc, carbideMm, hardnessExponent].find((values) => typeof values !== 'number');
  const out = roomFor(varying?.length ?? 1, old);
  for (let i = 0; i < out.length; i += 1)
    out[i] = Math.log(cardForChain(at(hrc, i), at(carbideMm, i), at(hardnessExponent, i)));
  return varying === undefined ? (out[0] ?? Number.NaN) : out;
}
