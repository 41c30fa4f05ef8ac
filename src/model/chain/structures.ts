/** How the factors combine to a life: three ways, each against one ordinary blade. */

import { refuse, within } from '../check.ts';
import type { Assumptions, Structure } from '../types.ts';
import { ordinaryOf, type Calculation } from './calculation.ts';
import { factors, type Factor } from './factors.ts';
import { at, differences, roomFor, weightedSum, type Values } from './values.ts';

/** The three structures, in the order of `structureWeights`. */
export const structures = ['multiplied', 'added', 'toLimit'] as const satisfies readonly Structure[];

/** A share of the force at the limit above which wedging alone is nearly the end point. */
export const nearlyAll = 0.95;

/**
 * The width the blunt edge may grow to, where wedging takes the share x of the force at the limit: 1 − x up to 0.7,
 * 0.09/(x − 0.4) beyond, which has the same value and slope there (assumed). 1 is an edge that needs no wedging.
 *
 * @param x 0 or more
 * @throws RangeError below 0
 * @example widthAt(0.35) // → 0.65
 * @example widthAt(1) // → 0.15
 */
export function widthAt(x: number): number {
  return Math.exp(lnWidth(within('share of wedging', x, 0, 1e6)));
}

/**
 * ln of the width the blunt edge may grow to where wedging takes the share x of the force: 1 − x up to 0.7, 0.09/(x − 0.4)
 * beyond, which has the same value and slope there (assumed).
 */
export const lnWidth = (x: number): number => Math.log(x <= 0.7 ? 1 - x : 0.09 / (x - 0.4));

/** How likely each structure is, adding up to 1. */
export function weightsOf({ structureWeights }: Assumptions = {}): readonly [number, number, number] {
  const [multiplied, added, toLimit] = structureWeights ?? [1, 1, 1];
  structures.forEach((structure, i) => within(`weight of ${structure}`, structureWeights?.[i] ?? 1, 0, 1e6));
  const sum = multiplied + added + toLimit;
  if (sum <= 0)
    refuse(`structure weights ${multiplied}, ${added}, ${toLimit} add up to 0, not to a number above 0`);
  return [multiplied / sum, added / sum, toLimit / sum];
}

/** What the totals of a knife are made of. */
interface Sums {
  /** ln of what multiplies in every structure. */
  always: Values;
  /** ln of what multiplies unless the force reaches a limit, and of what takes its place there. */
  usual: Values;
  limit: Values;
  /** ln of each force over the ordinary blade's. */
  forces: Values[];
}

function sumsOf(k: Calculation, table: readonly Factor[]): Sums {
  const ordinary = ordinaryOf(k);
  const multiplying = table.filter(({ combines }) => combines === 'multiplies');
  const sum = (name: string, parts: readonly Values[]): Values =>
    k.part(name, parts, (old) =>
      weightedSum(
        parts.map((part) => [1, part] as const),
        old,
      ),
    );
  const replaced = multiplying.filter(({ atLimit }) => atLimit !== undefined);
  return {
    always: sum(
      'always',
      multiplying.filter(({ atLimit }) => atLimit === undefined).map(({ careful }) => careful(k)),
    ),
    usual: sum(
      'usual',
      replaced.map(({ careful }) => careful(k)),
    ),
    limit: sum(
      'limit',
      replaced.map(({ atLimit }) => atLimit?.(k) ?? 0),
    ),
    forces: table
      .filter(({ combines }) => combines === 'resists')
      .map(({ id, careful }) => {
        const [own, other] = [careful(k), careful(ordinary)];
        return k.part(`${id} over ordinary`, [own, other], (old) => differences(own, other, old));
      }),
  };
}

/**
 * ln of how long a knife cuts, against the ordinary blade.
 *
 * @param structure the place of the structure in `structures`: one for all samples, or one a sample
 * @param table the factors, where others than the model's own are held
 */
export function lnLifeOf(k: Calculation, structure: Values, table: readonly Factor[] = factors): Values {
  const sums = sumsOf(k, table);
  const [share, power] = [k.shared('wedgingShare'), k.shared('limitPower')];
  const of = [structure, sums.always, sums.usual, sums.limit, ...sums.forces, share, power];
  return k.part('life', of, (old) => lives(structure, sums, share, power, old));
}

function lives(structure: Values, sums: Sums, share: Values, power: Values, old?: Values): Values {
  const { always, usual, limit, forces } = sums;
  const varying = [structure, always, usual, limit, share, power, ...forces].find(
    (values) => typeof values !== 'number',
  );
  const out = roomFor(varying?.length ?? 1, old);
  for (let i = 0; i < out.length; i += 1) {
    const which = at(structure, i);
    let force = 0;
    for (const values of forces) force += which === 0 ? at(values, i) : Math.exp(at(values, i));
    if (which === 0) out[i] = at(always, i) + at(usual, i) - force;
    else if (which === 1) out[i] = at(always, i) + at(usual, i) - Math.log(force / forces.length);
    else
      out[i] = at(always, i) + at(limit, i) + at(power, i) * lnWidth((at(share, i) * force) / forces.length);
  }
  return varying === undefined ? (out[0] ?? Number.NaN) : out;
}

/** The three lives of a knife at its middle values, in the logarithm. */
export function lnTotals(k: Calculation, table: readonly Factor[] = factors): Record<Structure, number> {
  const of = (place: number): number => {
    const life = lnLifeOf(k, place, table);
    return typeof life === 'number' ? life : Number.NaN;
  };
  return { multiplied: of(0), added: of(1), toLimit: of(2) };
}

/** Each force of a knife over the ordinary blade's, at the middle values. */
export function forcesOf(k: Calculation): Record<string, number> {
  const resisting = factors.filter(({ combines }) => combines === 'resists');
  const { forces } = sumsOf(k, factors);
  return Object.fromEntries(resisting.map(({ id }, i) => [id, Math.exp(at(forces[i] ?? 0, 0))]));
}

/** Wedging of a knife over the ordinary blade's, R: the mean of its forces. */
export function wedgingOf(forces: Readonly<Record<string, number>>): number {
  const all = Object.values(forces);
  return all.reduce((sum, force) => sum + force, 0) / all.length;
}
