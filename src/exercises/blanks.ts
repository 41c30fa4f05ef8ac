import { toleranceInWords } from './tolerance-in-words.ts';
import { inWords } from './answer-in-words.ts';
import type { Asks } from './asks.ts';
import type { Judgement } from './missteps.ts';
import type { Problem } from './problem.ts';
import { readAnswer } from './reader/index.ts';

/** A place in the working that a reader fills in. */
export interface Blank {
  /** Index of the step, and of the result in it. */
  step: number;
  field: number;
  text: string;
  /** The formula of the step, its results left open. */
  tex: string;
  asks: Asks;
  expected: number;
  tolerance: Problem['tolerance'];
  options?: string[];
}

/** A result in a formula: `= 1.4`, `\approx 1.553`, `= \text{B}`. */
const RESULT = /(=|\\approx) (?:-?[\d.]+|\\text\{[A-Z]\})(?=\^\\circ$| \\qquad |$)/g;

/**
 * The places to fill in of a worked problem, in order: each result of each step.
 *
 * @example blanksOf(workedExample('forward-chain')).map(({ expected }) => expected) // → [1.4, 1.4, 1.96]
 */
export const blanksOf = ({ steps, tolerance, options }: Problem): Blank[] =>
  steps.flatMap(({ text, tex, values, asks = 'times' }, step) =>
    values.map((expected, field) => ({
      step,
      field,
      text,
      tex: tex.replace(RESULT, '$1 \\square'),
      asks,
      expected,
      tolerance,
      ...(options ? { options } : {}),
    })),
  );

/**
 * Judges what was typed into a blank. A number carried over from an earlier blank is not judged here.
 *
 * @example judgeBlank(blanksOf(workedExample('forward-chain'))[2], '1.96').verdict // → 'right'
 */
export function judgeBlank(blank: Blank, typed: string): Judgement {
  const { asks, expected, options, step, tolerance } = blank;
  const read = readAnswer(typed, asks, options);
  if (!read.ok) return { verdict: 'not readable', message: read.message };
  return Math.abs(read.value / expected - 1) <= tolerance.relative
    ? { verdict: 'right', message: `Yes: ${inWords(expected, asks, options)}.`, step }
    : {
        verdict: 'not right',
        message: `You wrote ${inWords(read.value, asks, options)}. ${toleranceInWords(blank.options ? { tolerance, unit: asks, options: blank.options } : { tolerance, unit: asks })}`,
        step,
      };
}
