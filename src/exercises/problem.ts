/**
 * What a problem is. It is plain data: it can be printed, kept and compared byte by byte.
 *
 * Every answer, of the key and of each misstep, is held as a ratio, whatever the question asks for: "+96 %"
 * and "1.96 times as long" are one answer.
 */

/** What the question asks for, and so how a bare number typed as its answer is meant. */
export type Asks = 'times as long' | 'times as many' | '% more';

export type ContextId = 'rigging-loft' | 'seed-trays';

/** 1 is the easiest. */
export type Level = 1 | 2 | 3;

/** The two ends of what a cause is worth, as ratios to an ordinary one. */
export interface Ends {
  low: number;
  high: number;
}

/** The numbers each kind of problem is made of. */
export interface NumbersOf {
  'forward-chain': { percents: readonly number[] };
  'two-routes': { angleDeg: number; baselineAngleDeg: number; friction: number };
  'range-product': { geometry: readonly Ends[]; steel: readonly Ends[] };
}

export type Kind = keyof NumbersOf;

export interface Given {
  name: string;
  value: number;
  /** `%`, `°`, or nothing for a ratio. */
  unit: '%' | '°' | '';
}

export interface Step {
  /** What to do, in words. It never holds the result, so that it can be shown before another try. */
  text: string;
  /** The same with the numbers put in and the result. */
  tex: string;
  value: number;
}

/** A wrong answer together with the idea that leads to it. */
export interface Misstep {
  id: string;
  answer: number;
  idea: string;
  /** Index of the step where the ways part. */
  step: number;
}

export interface Problem {
  kind: Kind;
  /** null where the numbers were chosen and not drawn. */
  seed: number | null;
  level: Level;
  context: ContextId;
  question: string;
  givens: Given[];
  unit: Asks;
  /** The key, as a ratio. */
  answer: number;
  /** How far from the key an answer still counts as right, as a part of the key. */
  tolerance: { relative: number };
  steps: Step[];
  missteps: Misstep[];
}

/** What a maker adds to the kind, seed, level and context. */
export type Draft = Omit<Problem, 'kind' | 'seed' | 'level' | 'context' | 'tolerance'>;
