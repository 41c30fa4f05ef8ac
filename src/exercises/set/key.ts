import { inWords } from '../answer-in-words.ts';
import { answerInWords } from '../missteps.ts';
import type { Problem } from '../problem.ts';
import { toleranceInWords } from '../tolerance-in-words.ts';

/** What a marker needs for one problem. */
export interface Key {
  answer: string;
  /** What counts as right. */
  tolerance: string;
  /** Each step earns one mark for its method. */
  steps: { text: string; tex: string; results: string[] }[];
  /** Wrong answers by which a wrong idea is known; the step is counted from 1. */
  missteps: { id: string; answer: string; idea: string; step: number }[];
  marks: { method: number; answer: number; total: number };
}

/** The key of a problem: its steps, answer, missteps and marks, as plain data with text. */
export function keyOf(problem: Problem): Key {
  const { missteps, options, steps, unit } = problem;
  return {
    answer: answerInWords(problem),
    tolerance: toleranceInWords(problem),
    steps: steps.map(({ text, tex, values, asks = 'times' }) => ({
      text,
      tex,
      results: values.map((value) => inWords(value, asks, options)),
    })),
    missteps: missteps.map(({ id, answer, idea, step }) => ({
      id,
      answer: inWords(answer, unit, options),
      idea,
      step: step + 1,
    })),
    marks: { method: steps.length, answer: 1, total: steps.length + 1 },
  };
}

/** How to mark, the same for every problem. */
export const markingGuidance: readonly string[] = [
  'Method: one mark for each step that is shown or plainly used, in whatever order or writing. A right answer without working has all marks.',
  'Follow-through: a step done rightly on a wrong number from an earlier step earns its method mark. The mark for the answer needs the right answer.',
  'Early rounding: an answer within the stated tolerance is right, whatever was rounded on the way. Outside it, for rounding alone, only the mark for the answer is lost.',
  'Writing: 1.96 times, +96%, 196% of it and 49/25 are one answer. Where per cent is asked for, a bare number is per cent.',
  'Missteps: an answer in the list names the idea to talk about. It earns the method marks of the steps before the one named.',
];
