import { contextsFor, kindsFor, levels, makeProblem } from '../make.ts';
import type { Kind } from '../numbers.ts';
import type { ContextId, Level, Problem } from '../problem.ts';
import { diceFor } from '../random.ts';
import type { Dice } from '../random.ts';
import { keyOf, markingGuidance } from './key.ts';
import type { Key } from './key.ts';
import { planned } from './plan.ts';
import type { Place } from './plan.ts';

/** Versions have the same kinds and levels in the same order, and other numbers. */
export type Version = 'A' | 'B' | 'C';

export interface SetRequest {
  /** All that the context has words for, if left out. */
  kinds?: readonly Kind[];
  /** The same throughout, or rising from 1 to 3 in the course of the set. 1 if left out. */
  level?: Level | 'rising';
  /** The rigging loft if left out. */
  context?: ContextId;
  /** 1 to 40; 8 if left out. */
  count?: number;
  /** A whole number from 0 to 4294967295. */
  seed: number;
  /** A if left out. */
  version?: Version;
}

/** A set for a class with its key, as plain data. */
export interface ProblemSet extends Required<SetRequest> {
  items: { number: number; problem: Problem; key: Key }[];
  /** The sum of all marks. */
  marks: number;
  guidance: readonly string[];
}

export const versions: readonly Version[] = ['A', 'B', 'C'];
const MOST = 40;

/**
 * A mixed set of problems with its key; the same request makes the same set on every machine.
 *
 * @throws RangeError for a count, level, version or seed there is not, no kind at all, or a kind the context lacks
 * @example makeSet({ seed: 7 }).items.length // → 8
 * @example makeSet({ seed: 7, kinds: ['undo'], count: 2 }).items[0].problem.kind // → 'undo'
 */
export function makeSet(request: SetRequest): ProblemSet {
  const { level = 1, context = 'rigging-loft', count = 8, seed, version = 'A' } = request;
  const kinds = request.kinds ?? kindsFor(context);
  check(kinds, level, context, count, version);
  const words = `set/${context}/${level}/${kinds.join('/')}/${count}`;
  const places = planned(diceFor(words, seed), kinds, count, level);

  const made: Problem[][] = [];
  let latest: Problem[] = [];
  for (const each of versions.slice(0, versions.indexOf(version) + 1)) {
    latest = filled(places, context, diceFor(`${words}/${each}`, seed), made);
    made.push(latest);
  }
  const items = latest.map((problem, index) => ({
    number: index + 1,
    problem,
    key: keyOf(problem),
  }));
  return {
    kinds: [...kinds],
    level,
    context,
    count,
    seed,
    version,
    items,
    marks: items.reduce((sum, { key }) => sum + key.marks.total, 0),
    guidance: markingGuidance,
  };
}

/** What is asked, anyone who it is about. */
const numbersOf = ({ kind, givens, options }: Problem): string =>
  JSON.stringify([kind, givens.map(({ value }) => value), options]);

/** Draws before numbers that were used elsewhere in the set are let in. */
const PATIENCE = 100;

/** A problem for each place, with numbers no other has; where a kind has too few, with other ones than in that place. */
function filled(
  places: readonly Place[],
  context: ContextId,
  dice: Dice,
  earlier: readonly Problem[][],
): Problem[] {
  const used = new Set(earlier.flat().map(numbersOf));
  return places.map(({ kind, level }, index) => {
    const here = earlier.flatMap((version) => version.slice(index, index + 1)).map(numbersOf);
    for (let draws = 0; draws < 2 * PATIENCE; draws += 1) {
      const problem = makeProblem(kind, dice.whole(0, 0xffffffff), { context, level });
      const numbers = numbersOf(problem);
      if (draws < PATIENCE ? used.has(numbers) : here.includes(numbers)) continue;
      used.add(numbers);
      return problem;
    }
    throw new Error(`no ${kind} problem with other numbers was found`);
  });
}

function check(
  kinds: readonly Kind[],
  level: Level | 'rising',
  context: ContextId,
  count: number,
  version: Version,
): void {
  const allowed = kindsFor(context);
  if (kinds.length === 0) throw new RangeError(`kinds are none, allowed are ${allowed.join(', ')}`);
  const odd = kinds.find((kind) => !contextsFor(kind).includes(context));
  if (odd !== undefined)
    throw new RangeError(`kind "${odd}" is not one of ${allowed.join(', ')} for the context ${context}`);
  if (!Number.isInteger(count) || count < 1 || count > MOST)
    throw new RangeError(`count ${count} is not a whole number from 1 to ${MOST}`);
  if (level !== 'rising' && !levels.includes(level))
    throw new RangeError(`level ${String(level)} is not between 1 and 3, nor rising`);
  if (!versions.includes(version))
    throw new RangeError(`version "${version}" is not one of ${versions.join(', ')}`);
}
