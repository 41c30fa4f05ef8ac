import { contextIds, contexts } from './contexts/index.ts';
import { settled } from './figures.ts';
import type { Maker } from './maker.ts';
import { makers } from './makers.ts';
import type { Kind, NumbersOf } from './numbers.ts';
import type { ContextId, Draft, Level, Problem } from './problem.ts';
import { diceFor } from './random.ts';

/** Where a problem is set, and how hard it is. Left out, it is the rigging loft and level 1. */
export interface Setting {
  context?: ContextId;
  level?: Level;
}

export const kinds = Object.keys(makers) as Kind[];
export const levels: readonly Level[] = [1, 2, 3];

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

/** An answer within one part in a hundred of the key is right: room for rounding to three figures. */
const TOLERANCE = 0.01;

/** Answers nearer to each other than this would be taken for one another. */
const APART = Math.log1p(3 * TOLERANCE);

/** Wrong ideas a drawn problem can tell apart, at least. */
const FEWEST = 3;

/**
 * The problem of that kind, seed, context and level; the same four make the same problem, to the byte, always.
 *
 * @param kind one of `kinds`
 * @param seed a whole number from 0 to 4294967295
 * @param setting a context, one of `contextsFor(kind)`, and a level, 1 to 3
 * @throws RangeError for anything else
 * @example makeProblem('forward-chain', 7).unit // → 'times as long'
 */
export function makeProblem<K extends Kind>(
  kind: K,
  seed: number,
  { context = 'rigging-loft', level = 1 }: Setting = {},
): Problem {
  const maker: Maker<NumbersOf[K]> = makerOf(kind);
  refuse(kind, context, level);
  const dice = diceFor(`${kind}/${level}`, seed);
  const { names } = contexts[context];
  // Numbers whose wrong answers fall together teach nothing, and are drawn anew.
  for (let draws = 0; draws < 500; draws += 1) {
    const numbers = maker.draw(dice, level);
    const [subject = '', baseline = '', third = ''] = dice.several(names, 3);
    const scene = { context: contexts[context], level, subject, baseline, third };
    const problem = finish(maker.set(numbers, scene), { kind, seed, level, context });
    if (problem.missteps.length >= FEWEST && !alike(problem)) return problem;
  }
  throw new Error(`no ${kind} problem was found for seed ${seed}`);
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
  { context = 'rigging-loft', level = 1 }: Setting = {},
): Problem {
  const maker: Maker<NumbersOf[K]> = makerOf(kind);
  refuse(kind, context, level);
  const [subject = '', baseline = '', third = ''] = contexts[context].names;
  const scene = { context: contexts[context], level, subject, baseline, third };
  const problem = finish(maker.set(numbers ?? maker.example, scene), { kind, seed: null, level, context });
  const pair = alike(problem);
  if (pair) throw new RangeError(`these numbers make "${pair[0]}" and "${pair[1]}" too alike to tell apart`);
  return problem;
}

function makerOf<K extends Kind>(kind: K): (typeof makers)[K] {
  if (!Object.hasOwn(makers, kind))
    throw new RangeError(`kind of problem "${kind}" is not one of ${kinds.join(', ')}`);
  return makers[kind];
}

function refuse(kind: Kind, context: ContextId, level: Level): void {
  const allowed = contextsFor(kind);
  if (!allowed.includes(context)) {
    throw new RangeError(`context "${context}" is not one of ${allowed.join(', ')} for ${kind}`);
  }
  if (!levels.includes(level)) throw new RangeError(`level ${String(level)} is not between 1 and 3`);
}

/** Settles the numbers, and drops the missteps that no one could type: a ratio is above 0. */
function finish(draft: Draft, head: Pick<Problem, 'kind' | 'seed' | 'level' | 'context'>): Problem {
  return {
    ...head,
    ...draft,
    answer: settled(draft.answer),
    tolerance: { relative: TOLERANCE },
    givens: draft.givens.map((given) => ({ ...given, value: settled(given.value) })),
    steps: draft.steps.map((step) => ({ ...step, values: step.values.map(settled) })),
    missteps: draft.missteps
      .map((misstep) => ({ ...misstep, answer: settled(misstep.answer) }))
      .filter(({ answer }) => answer > 0 && Number.isFinite(answer)),
  };
}

/** The first two answers that would be taken for one another. */
function alike({ answer, missteps }: Problem): [string, string] | undefined {
  const answers = [{ id: 'the answer', answer }, ...missteps];
  for (const [index, one] of answers.entries()) {
    const other = answers
      .slice(index + 1)
      .find((later) => Math.abs(Math.log(one.answer / later.answer)) <= APART);
    if (other) return [one.id, other.id];
  }
  return undefined;
}
