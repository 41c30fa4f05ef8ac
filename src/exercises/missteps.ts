import { inFigures } from './figures.ts';
import type { Asks, Problem } from './problem.ts';
import { readAnswer } from './reader.ts';
import type { Form } from './reader.ts';

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
 * @example judge(workedExample('forward-chain'), '+96 %').verdict // → 'right'
 * @example judge(workedExample('forward-chain'), '1.8').misstep // → 'added the percentages'
 */
export function judge(problem: Problem, typed: string): Judgement {
  const { answer, missteps, steps, unit } = problem;
  const read = readAnswer(typed, unit);
  if (!read.ok) return { verdict: 'not readable', message: read.message };
  const { value, form } = read;
  const near = (target: number): boolean => Math.abs(value / target - 1) <= problem.tolerance.relative;

  if (near(answer)) return { verdict: 'right', message: `Yes: ${inWords(answer, unit)}.` };
  const slip = slipOfWriting(problem, value, form);
  if (slip) return { verdict: 'misstep', message: slip, misstep: 'slip of writing' };

  const wrote = `You wrote ${inWords(value, unit)}.`;
  const misstep = missteps.find((known) => near(known.answer));
  const step = misstep?.step ?? 0;
  const look = `Look at step ${step + 1}: ${steps[step]?.text ?? ''}`;
  return misstep
    ? { verdict: 'misstep', message: `${wrote} ${misstep.idea} ${look}`, step, misstep: misstep.id }
    : {
        verdict: 'not right',
        message: `${wrote} The answer is ${value < answer ? 'larger' : 'smaller'}. Take it step by step. ${look}`,
        step,
      };
}

/** The key in the words of the question: "1.96 times as long", "96 % more". */
export const answerInWords = ({ answer, unit }: Problem): string => inWords(answer, unit);

/** What is asked for and how near counts as right, to stand beside the box. */
export function toleranceInWords({ tolerance, unit }: Problem): string {
  const part = `${inFigures(tolerance.relative * 100)} %`;
  return unit === '% more'
    ? `In per cent more. Right to within ${part} of the whole, the start included.`
    : `In how many ${unit}. Right to within ${part}.`;
}

function inWords(ratio: number, unit: Asks): string {
  if (unit !== '% more') return `${inFigures(ratio)} ${unit}`;
  return ratio < 1 ? `${inFigures((1 - ratio) * 100)} % less` : `${inFigures((ratio - 1) * 100)} % more`;
}

/** The right number in the wrong dress, which needs a word about writing and none about the sum. */
function slipOfWriting({ answer, tolerance, unit }: Problem, value: number, form: Form): string | undefined {
  const fits = (ratio: number): boolean => Math.abs(ratio / answer - 1) <= tolerance.relative;
  if (unit === '% more') {
    const number = (value - 1) * 100;
    return form === 'number' && fits(number)
      ? 'Right as a number of times. Asked is per cent more: take the start away, and turn the rest into per cent.'
      : undefined;
  }
  if (form === 'percent of' && fits(1 + value)) {
    return 'A percentage without a sign is read as so many per cent of it. If you mean so many per cent more, write + before it.';
  }
  if (form === 'number' && (fits(value / 100) || fits(1 + value / 100))) {
    return 'That looks like a percentage. Write the % sign after it, and + before it if you mean so many per cent more.';
  }
  return undefined;
}
