import type { Asks, Quantity } from './asks.ts';
import type { Kind } from './numbers.ts';

/**
 * What a problem is. It is plain data: it can be printed, kept and compared byte by byte.
 *
 * Every answer, of the key and of each misstep, is one number above 0: a ratio where the question compares
 * ("+96%" and "1.96 times as long" are one answer), an amount where it asks for one, and for a choice the place
 * of the option, counted from 1.
 */
export interface Problem {
  kind: Kind;
  /** null where the numbers were chosen and not drawn. */
  seed: number | null;
  level: Level;
  context: ContextId;
  question: string;
  givens: Given[];
  /** What is chosen from, A first. Only where a letter is asked for. */
  options?: string[];
  unit: Asks;
  answer: number;
  /** How far from the key an answer still counts as right, as a part of the key. */
  tolerance: { relative: number };
  steps: Step[];
  missteps: Misstep[];
}

export type ContextId = 'rigging-loft' | 'seed-trays' | 'bicycle-gears' | 'sourdough' | 'tides';

/** 1 is the easiest. */
export type Level = 1 | 2 | 3;

export interface Given {
  name: string;
  value: number;
  /** Nothing for a ratio. */
  unit: '%' | 'mm' | 'µm' | 'cm²' | 'km²' | 'teeth' | 'grit' | Quantity | '';
}

export interface Step {
  /** What to do, in words. It never holds the result, so that it can be shown before another try. */
  text: string;
  /** The same with the numbers put in; every result stands after `=` or `\approx`. */
  tex: string;
  /** The results in the order of the formula. The last of the last step is the key. */
  values: number[];
  /** How a result is written; a number of times if left out. */
  asks?: Asks;
}

/** A wrong answer together with the idea that leads to it. */
export interface Misstep {
  id: string;
  answer: number;
  idea: string;
  /** Index of the step where the ways part. */
  step: number;
}

/** What a maker adds to the kind, seed, level and context. */
export type Draft = Omit<Problem, 'kind' | 'seed' | 'level' | 'context' | 'tolerance'>;
