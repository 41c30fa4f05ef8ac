/** What would it take: the value of one attribute at which a knife reaches a target against another. */

import { compare } from './compare.ts';
import { finishUm } from './finish.ts';
import { vickersFromRockwellC } from './hardness.ts';
import { angleFloorDeg } from './limits.ts';
import { measures, nominal } from './quantities.ts';
import type { Knife, LineUp } from './types.ts';

/** An attribute that can be solved for. */
export type SolvableAttribute = 'angleDeg' | 'microbevelAngleDeg' | 'edgeMm' | 'finish' | 'hrc';

export interface Question {
  /** Id of the knife that changes. */
  knife: string;
  /** Id of the knife it is held against, which stays as it is. */
  against: string;
  /** The one attribute that changes; `finish` is solved as a particle size in µm. */
  attribute: SolvableAttribute;
  /** How many times as long as the other it should cut, above 0; 1, the default, draws level. */
  target?: number;
}

export interface Answer {
  /** Degrees per side, mm, µm or HRC; null where no value does it. */
  value: number | null;
  /** `below the floor`: the value exists, but the edge would break away; `not in reach`: there is none. */
  note?: 'not in reach' | 'below the floor';
}

/** Where values are looked for, and whether equal steps or equal ratios are natural. */
const SEARCH: Record<SolvableAttribute, { low: number; high: number; ratio: boolean }> = {
  angleDeg: { ...measures.angleDeg, ratio: true },
  microbevelAngleDeg: { ...measures.microbevelAngleDeg, ratio: true },
  edgeMm: { ...measures.edgeMm, ratio: true },
  finish: { ...measures.finishUm, ratio: true },
  hrc: { ...measures.hrc, ratio: false },
};

/** Steps of the search grid; between two neighbours the ratio is taken to run one way. */
const STEPS = 240;

/**
 * The value of one attribute at which `knife` cuts `target` times as long as `against` by the close reading, everything
 * else as it is and uncertain inputs at their middle. Put back into the line-up it gives the target to 1e-9. Where more
 * than one value does, the one nearest the present is given.
 *
 * @param lineUp as for `compare`
 * @returns degrees per side, mm, µm or HRC
 * @throws RangeError for what `compare` refuses, a knife not in the line-up, the same knife twice, a microbevel angle
 * asked of a knife without one, or a target not above 0
 * @example whatItTakes({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { knife: 'plover', against: 'dunlin', attribute: 'angleDeg' }).value // → 15.000000
 */
export function whatItTakes(lineUp: LineUp, question: Question): Answer {
  const { knife, against, attribute, target = 1 } = question;
  if (!(target > 0 && Number.isFinite(target)))
    throw new RangeError(`target ${target} is not a number above 0`);
  const changing = lineUp.knives.find((k) => k.id === knife);
  if (changing === undefined) throw new RangeError(`knife ${knife} is not one of the line-up's`);
  if (!lineUp.knives.some((k) => k.id === against))
    throw new RangeError(`against ${against} is not one of the line-up's knives`);
  if (knife === against) throw new RangeError(`against ${against} is the knife itself, another is needed`);
  if (!Object.hasOwn(SEARCH, attribute)) {
    throw new RangeError(`attribute ${attribute} is not one of ${Object.keys(SEARCH).join(', ')}`);
  }
  const present = valueOf(changing, attribute);

  const rows = (candidate: LineUp) => {
    const all = compare(candidate).rows;
    const find = (id: string) => all.find((row) => row.knife === id);
    const [a, b] = [find(knife), find(against)];
    if (a === undefined || b === undefined) throw new Error('compare left a knife out');
    return { a, b };
  };
  const now = rows(lineUp);
  /** ln of ratio over target; NaN where the model refuses, or where other terms stand than do now. */
  const short = (value: number): number => {
    try {
      const { a, b } = rows(withValue(lineUp, knife, attribute, value));
      if (a.complete !== now.a.complete || b.complete !== now.b.complete) return Number.NaN;
      return Math.log(a.product / b.product / target);
    } catch (error) {
      if (error instanceof RangeError) return Number.NaN;
      throw error;
    }
  };

  const value = short(present) === 0 ? present : nearestRoot(short, present, SEARCH[attribute]);
  if (value === null) return { value, note: 'not in reach' };
  const isEdge =
    attribute === 'microbevelAngleDeg' ||
    (attribute === 'angleDeg' && changing.microbevelAngleDeg === undefined);
  if (isEdge && value < angleFloorDeg(vickersFromRockwellC(nominal(changing.hrc))))
    return { value, note: 'below the floor' };
  return { value };
}

/** The present value of an attribute. */
function valueOf(knife: Knife, attribute: SolvableAttribute): number {
  if (attribute === 'finish') return finishUm(knife.finish);
  const quantity = knife[attribute];
  if (quantity === undefined)
    throw new RangeError(
      `microbevelAngleDeg of ${knife.id} is not given, the knife has no microbevel to change`,
    );
  return nominal(quantity);
}

/** The line-up with one attribute of one knife at an exact value. */
function withValue(lineUp: LineUp, id: string, attribute: SolvableAttribute, value: number): LineUp {
  const change = attribute === 'finish' ? { finish: { um: value } } : { [attribute]: value };
  return {
    ...lineUp,
    knives: lineUp.knives.map((knife) => (knife.id === id ? { ...knife, ...change } : knife)),
  };
}

/** The root nearest to `from`, by sign changes on a grid and then halving; null where there is none. */
function nearestRoot(
  f: (value: number) => number,
  from: number,
  search: { low: number; high: number; ratio: boolean },
): number | null {
  const to = (v: number): number => (search.ratio ? Math.log(v) : v);
  const back = (s: number): number => (search.ratio ? Math.exp(s) : s);
  const [low, high] = [to(search.low), to(search.high)];
  const grid = Array.from({ length: STEPS + 1 }, (_, i) =>
    i === 0 ? search.low : i === STEPS ? search.high : back(low + ((high - low) * i) / STEPS),
  );
  let best: number | null = null;
  let previous = Number.NaN;
  grid.forEach((value, i) => {
    const here = f(value);
    const before = grid[i - 1];
    if (before !== undefined && previous * here <= 0) {
      const root = halve(f, before, previous, value);
      // A jump of the model from one side of the target to the other is no root.
      if (
        Math.abs(f(root)) < 1e-9 &&
        (best === null || Math.abs(to(root) - to(from)) < Math.abs(to(best) - to(from)))
      )
        best = root;
    }
    previous = here;
  });
  return best;
}

function halve(f: (value: number) => number, start: number, atStart: number, end: number): number {
  let [low, high] = [start, end];
  if (atStart === 0) return low;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) return Math.abs(f(low)) < Math.abs(f(high)) ? low : high;
    const here = f(middle);
    if (here === 0) return middle;
    if (Math.sign(here) === Math.sign(atStart)) low = middle;
    else high = middle;
  }
}
