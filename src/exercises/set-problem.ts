import { contexts } from './contexts/index.ts';
import { settled } from './figures.ts';
import type { Maker, Scene } from './maker.ts';
import type { Kind } from './numbers.ts';
import type { ContextId, Draft, Level, Problem } from './problem.ts';
import { diceFor } from './random.ts';

/** Where a problem is set, and how hard it is. Left out, it is the rigging loft and level 1. */
export interface Setting {
  context?: ContextId;
  level?: Level;
}

export const levels: readonly Level[] = [1, 2, 3];

/** An answer within one part in a hundred of the key is right: room for rounding to three figures. */
const TOLERANCE = 0.01;

/** Answers nearer to each other than this would be taken for one another. */
const APART = Math.log1p(3 * TOLERANCE);

/** Wrong ideas a drawn problem can tell apart, at least. */
const FEWEST = 3;

/**
 * The problem of that seed, context and level by a maker at hand. A page that fetches its makers when they are
 * wanted calls this; all others call `makeProblem`.
 *
 * @param maker the maker of the kind
 * @param kind the kind's name, which goes into the draws
 * @param seed a whole number from 0 to 4294967295
 * @throws RangeError for a context the maker has no words for, and a level that is not 1, 2 or 3
 */
export function problemBy<Numbers>(
  maker: Maker<Numbers>,
  kind: Kind,
  seed: number,
  { context = 'rigging-loft', level = 1 }: Setting = {},
): Problem {
  refuse(maker, kind, context, level);
  const dice = diceFor(`${kind}/${level}`, seed);
  // Numbers whose wrong answers fall together teach nothing, and are drawn anew.
  for (let draws = 0; draws < 500; draws += 1) {
    const numbers = maker.draw(dice, level);
    const scene = sceneOf(context, level, dice.several(contexts[context].names, 3));
    const problem = finish(maker.set(numbers, scene), { kind, seed, level, context });
    if (problem.missteps.length >= FEWEST && !alike(problem)) return problem;
  }
  throw new Error(`no ${kind} problem was found for seed ${seed}`);
}

/**
 * The problem with chosen numbers by a maker at hand.
 *
 * @throws RangeError where the numbers make two answers too alike to tell apart
 */
export function exampleBy<Numbers>(
  maker: Maker<Numbers>,
  kind: Kind,
  numbers: Numbers,
  { context = 'rigging-loft', level = 1 }: Setting = {},
): Problem {
  refuse(maker, kind, context, level);
  const scene = sceneOf(context, level, contexts[context].names);
  const problem = finish(maker.set(numbers, scene), { kind, seed: null, level, context });
  const pair = alike(problem);
  if (pair) throw new RangeError(`these numbers make "${pair[0]}" and "${pair[1]}" too alike to tell apart`);
  return problem;
}

const sceneOf = (
  context: ContextId,
  level: Level,
  [subject = '', baseline = '', third = '']: readonly string[],
): Scene => ({ context: contexts[context], level, subject, baseline, third });

function refuse<Numbers>(maker: Maker<Numbers>, kind: Kind, context: ContextId, level: Level): void {
  if (!maker.contexts.includes(context)) {
    throw new RangeError(`context "${context}" is not one of ${maker.contexts.join(', ')} for ${kind}`);
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
