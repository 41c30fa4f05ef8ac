import type { Judgement } from '../../exercises/missteps.ts';

/** What a problem does after an answer. */
export interface Verdict {
  /** Answers tried so far, this one counted if it was an answer at all. */
  tries: number;
  message: string;
  /** What is noted of the answer: a right one, the misstep it shows, or nothing. */
  note: 'right' | { misstep: string } | null;
  /** The step that is opened to be filled in, by its index, after a first wrong answer. */
  openStep: number | null;
  opensWorking: boolean;
}

/** After a first wrong answer the reader tries again; after a second the answer is shown with its working. */
export function verdictOn(judged: Judgement, triesBefore: number, answer: string): Verdict {
  const { verdict, message, step, misstep } = judged;
  const plain = { tries: triesBefore, message, note: null, openStep: null, opensWorking: false };
  if (verdict === 'right') return { ...plain, note: 'right' };
  if (verdict === 'not readable') return plain;
  const tries = triesBefore + 1;
  // A slip of writing is no wrong idea to come back to.
  const note = misstep && misstep !== 'slip of writing' ? { misstep } : null;
  return tries === 1
    ? { tries, message: `${message} Try again.`, note, openStep: step ?? null, opensWorking: false }
    : {
        tries,
        message: `${message} The answer is ${answer}. Its working is open below.`,
        note,
        openStep: null,
        opensWorking: true,
      };
}
