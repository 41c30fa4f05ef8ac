import { contextIds } from './contexts/index.ts';
import { makers } from './makers.ts';
import type { Kind, NumbersOf } from './numbers.ts';
import type { ContextId, Problem } from './problem.ts';
import type { Maker } from './maker.ts';
import { exampleBy, problemBy } from './set-problem.ts';
import type { Setting } from './set-problem.ts';

export { levels } from './set-problem.ts';
export type { Setting } from './set-problem.ts';

export const kinds = Object.keys(makers) as Kind[];

/** The contexts a kind of problem can be set in. */
export const contextsFor = (kind: Kind): readonly ContextId[] => makerOf(kind).contexts;

/**
 * The kinds of problem a context has words for.
 *
 * @throws RangeError for a context there is not
 * @example kindsFor('tides').includes('two-routes') // → false
 */
export function kindsFor(context: ContextId): Kind[] {
  if (!contextIds.includes(context))
    throw new RangeError(`context "${context}" is not one of ${contextIds.join(', ')}`);
  return kinds.filter((kind) => contextsFor(kind).includes(context));
}

/**
 * Whether the effects in problems of this kind add, so that a product is wrong.
 *
 * @example isAdditive('multiply-or-add') // → true
 */
export const isAdditive = (kind: Kind): boolean => makerOf(kind).adds ?? false;

/**
 * The problem of that kind, seed, context and level; the same four make the same problem, to the byte, always.
 *
 * @param kind one of `kinds`
 * @param seed a whole number from 0 to 4294967295
 * @param setting a context, one of `contextsFor(kind)`, and a level, 1 to 3
 * @throws RangeError for anything else
 * @example makeProblem('forward-chain', 7).unit // → 'times as long'
 */
export function makeProblem<K extends Kind>(kind: K, seed: number, setting: Setting = {}): Problem {
  const maker: Maker<NumbersOf[K]> = makerOf(kind);
  return problemBy(maker, kind, seed, setting);
}

/**
 * The problem with numbers of one's own, or with those of the lesson's worked example.
 *
 * @throws RangeError where the numbers are outside the kind's range, or make two answers too alike to tell apart
 * @example workedExample('forward-chain').answer // → 1.96
 * @example workedExample('forward-chain', { percents: [25, 25] }).answer // → 1.5625
 */
export function workedExample<K extends Kind>(
  kind: K,
  numbers?: NumbersOf[K],
  setting: Setting = {},
): Problem {
  const maker: Maker<NumbersOf[K]> = makerOf(kind);
  return exampleBy(maker, kind, numbers ?? maker.example, setting);
}

function makerOf<K extends Kind>(kind: K): (typeof makers)[K] {
  if (!Object.hasOwn(makers, kind))
    throw new RangeError(`kind of problem "${kind}" is not one of ${kinds.join(', ')}`);
  return makers[kind];
}
