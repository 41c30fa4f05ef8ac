import { inWords } from './answer-in-words.ts';
import { modeOf } from './asks.ts';
import type { Problem } from './problem.ts';
import { readAnswer } from './reader/index.ts';
import type { Form } from './reader/index.ts';

export interface Judgement {
  verdict: 'right' | 'misstep' | 'not right' | 'not readable';
  /** What to say to the reader. Before a right answer it never holds the key. */
  message: string;
  /** Index of the step to look at. */
  step?: number;
  /** The misstep recognised, by its id in the problem. */
  misstep?: string;
}

/**
 * Judges a typed answer: right, a known wrong idea, wrong, or not to be read.
 *
 * @example judge(workedExample('forward-chain'), '+96%').verdict // → 'right'
 * @example judge(workedExample('forward-chain'), '1.8').misstep // → 'added the percentages'
 */
export function judge(problem: Problem, typed: string): Judgement {
  const { answer, missteps, options, steps, unit } = problem;
  const read = readAnswer(typed, unit, options);
  if (!read.ok) return { verdict: 'not readable', message: read.message };
  const { value, form } = read;
  const near = (target: number): boolean => Math.abs(value / target - 1) <= problem.tolerance.relative;

  if (near(answer)) return { verdict: 'right', message: `Yes: ${answerInWords(problem)}.` };
  const slip = slipOfWriting(problem, value, form);
  if (slip) return { verdict: 'misstep', message: slip, misstep: 'slip of writing' };

  const wrote = `You wrote ${inWords(value, unit, options)}.`;
  const misstep = missteps.find((known) => near(known.answer));
  const step = misstep?.step ?? 0;
  const look = `Look at step ${step + 1}: ${steps[step]?.text ?? ''}`;
  return misstep
    ? { verdict: 'misstep', message: `${wrote} ${misstep.idea} ${look}`, step, misstep: misstep.id }
    : {
        verdict: 'not right',
        message: `${wrote} The answer is ${value < answer === (modeOf(unit) !== 'less') ? 'larger' : 'smaller'}. Take it step by step. ${look}`,
        step,
      };
}

/** The key in the words of the question: "1.96 times as long", "96% more". */
export const answerInWords = ({ answer, unit, options }: Problem): string => inWords(answer, unit, options);

/** The right number in the wrong dress, which needs a word about writing and none about the sum. */
function slipOfWriting(problem: Problem, value: number, form: Form): string | undefined {
  const { answer, tolerance, unit } = problem;
  const fits = (ratio: number): boolean => Math.abs(ratio / answer - 1) <= tolerance.relative;
  switch (modeOf(unit)) {
    case 'more':
      return form === 'number' && fits((value - 1) * 100)
        ? 'Right as a number of times. Asked is per cent more: take the start away, and turn the rest into per cent.'
        : undefined;
    case 'less':
      return form === 'number' && fits((1 - value) * 100)
        ? 'Right as a number of times. Asked is per cent less: turn what is missing from 1 into per cent.'
        : undefined;
    case 'share':
      return form === 'number' && fits(value * 100)
        ? 'Right as a part of 1. Asked is the same in per cent.'
        : undefined;
    case 'times':
      if (form === 'percent of' && fits(1 + value)) {
        return 'A percentage without a sign is read as so many per cent of it. If you mean so many per cent more, write + before it.';
      }
      return form === 'number' && (fits(value / 100) || fits(1 + value / 100))
        ? 'That looks like a percentage. Write the % sign after it, and + before it if you mean so many per cent more.'
        : undefined;
    default:
      return undefined;
  }
}
