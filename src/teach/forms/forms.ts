import { inWords, kindsFor, makeProblem } from '../../exercises/index.ts';
import type { ContextId, Kind, Problem } from '../../exercises/index.ts';
import { diceFor } from '../../exercises/random.ts';

/** Which pair of forms: the same request makes the same pair, always. */
export interface FormsRequest {
  context: ContextId;
  /** Questions on each form, 1 to `MOST_QUESTIONS`. */
  count: number;
  /** A whole number from 0 to 4294967295. */
  seed: number;
}

/** One answer to choose. */
export interface FormOption {
  letter: string;
  text: string;
  /** `right`, or the misstep that leads here. */
  idea: string;
}

export interface FormQuestion {
  problem: Problem;
  options: FormOption[];
}

/** Two forms whose questions match one by one: the same kind, the same ideas behind the options, other numbers. */
export interface MatchedForms extends FormsRequest {
  before: FormQuestion[];
  after: FormQuestion[];
}

export const MOST_QUESTIONS = 8;

/** The forms the page opens with. */
export const FIRST_FORMS: FormsRequest = { context: 'seed-trays', count: 6, seed: 7 };

/** Wrong answers beside the right one. */
const MISSTEPS = 3;
const PATIENCE = 200;
const LETTERS = ['A', 'B', 'C', 'D'];

/** Kinds in the order they are taken: those a course begins with first, a question where adding is right among them. */
const ORDER: readonly Kind[] = [
  'forward-chain',
  'multiply-or-add',
  'undo',
  'times-or-more',
  'inverse-proportion',
  'equivalent-change',
  'reverse-base',
  'mean-growth',
  'missing-factor',
  'share-of-factor',
];

/** The kinds a context has words for, in the order of the forms. */
const kindsOf = (context: ContextId): Kind[] => ORDER.filter((kind) => kindsFor(context).includes(kind));

/**
 * A form for before a lesson and one for after it. Every wrong option is the answer a named misstep leads to, and the
 * options of a question stand in the order of their size, so that nobody chose a place for the right one.
 *
 * @throws RangeError for a context, count or seed there is not
 * @example matchedForms({ context: 'tides', count: 2, seed: 7 }).before[0].problem.kind // → 'forward-chain'
 */
export function matchedForms({ context, count, seed }: FormsRequest): MatchedForms {
  if (!Number.isInteger(count) || count < 1 || count > MOST_QUESTIONS)
    throw new RangeError(`count ${count} is not a whole number from 1 to ${MOST_QUESTIONS}`);
  const dice = diceFor(`forms/${context}`, seed);
  const pairs = kindsOf(context)
    .slice(0, count)
    .map((kind) => {
      for (let draws = 0; draws < PATIENCE; draws += 1) {
        const [one, other] = [0, 1].map(() => makeProblem(kind, dice.whole(0, 0xffffffff), { context }));
        if (!one || !other || one.question === other.question) continue;
        const ideas = one.missteps
          .map(({ id }) => id)
          .filter((id) => other.missteps.some((misstep) => misstep.id === id))
          .slice(0, MISSTEPS);
        const [before, after] = [one, other].map((problem) => questionOf(problem, ideas));
        if (ideas.length === MISSTEPS && before && after) return { before, after };
      }
      throw new Error(`no two matching questions of the kind ${kind} were found`);
    });
  return {
    context,
    count,
    seed,
    before: pairs.map(({ before }) => before),
    after: pairs.map(({ after }) => after),
  };
}

/** The question with its options; nothing where two options would read the same. */
function questionOf(problem: Problem, ideas: readonly string[]): FormQuestion | undefined {
  const answers = [
    { idea: 'right', answer: problem.answer },
    ...problem.missteps.flatMap(({ id, answer }) => (ideas.includes(id) ? [{ idea: id, answer }] : [])),
  ].sort((a, b) => a.answer - b.answer);
  const options = answers.map(({ idea, answer }, index) => ({
    letter: LETTERS[index] ?? '',
    text: inWords(answer, problem.unit),
    idea,
  }));
  return new Set(options.map(({ text }) => text)).size === options.length ? { problem, options } : undefined;
}

/**
 * The address part of a pair of forms.
 *
 * @example formsCode({ context: 'tides', count: 4, seed: 7 }) // → 'tides.4.7'
 */
export const formsCode = ({ context, count, seed }: FormsRequest): string => `${context}.${count}.${seed}`;
