import { isAdditive, judge, readAnswer } from '../../exercises/index.ts';
import type { Kind, Problem } from '../../exercises/index.ts';

/** What a class guessed, sorted by the idea behind each guess. */
export interface Tally {
  /** Every guess that could be read, as the problem keeps its answers. */
  values: number[];
  unreadable: string[];
  right: number;
  /** Guesses by misstep, in the problem's order. */
  missteps: { id: string; count: number }[];
  /** Guesses after the first `mostGuesses`, which are not counted. */
  beyond: number;
  /** Read, and neither right nor a known misstep. */
  other: number;
  /** Who put the effects together by adding, and who by multiplying; null where the question has neither. */
  together: { added: number; multiplied: number } | null;
}

/** More than any class has pupils. */
export const mostGuesses = 1000;
/** So many guesses that could not be read are named, each by its first characters. */
const named = 5;
const shownCharacters = 24;

/** The kinds whose question is how effects go together. */
const ASKS_HOW: readonly Kind[] = [
  'multiply-or-add',
  'forward-chain',
  'equivalent-change',
  'two-routes',
  'range-product',
];

/**
 * Counts guesses, one a line or with semicolons between them; a comma may be a decimal one.
 *
 * @example tallyOf(workedExample('forward-chain'), '1.96; 1,8; 180%; ?').right // → 1
 * @example tallyOf(workedExample('forward-chain'), '1.96; 1,8; 180%; ?').together // → { added: 2, multiplied: 1 }
 */
export function tallyOf(problem: Problem, typed: string): Tally {
  const values: number[] = [];
  const unreadable: string[] = [];
  const counts = new Map<string, number>(problem.missteps.map(({ id }) => [id, 0]));
  let right = 0;
  const guesses = guessesIn(typed);
  for (const guess of guesses.slice(0, mostGuesses)) {
    const read = readAnswer(guess, problem.unit, problem.options);
    if (!read.ok) {
      unreadable.push(guess);
      continue;
    }
    values.push(read.value);
    const { verdict, misstep = '' } = judge(problem, guess);
    const known = counts.get(misstep);
    if (verdict === 'right') right += 1;
    else if (known !== undefined) counts.set(misstep, known + 1);
  }
  const missteps = [...counts].map(([id, count]) => ({ id, count }));
  const found = missteps.reduce((sum, { count }) => sum + count, right);
  return {
    values,
    unreadable,
    right,
    missteps,
    beyond: Math.max(0, guesses.length - mostGuesses),
    other: values.length - found,
    together: ASKS_HOW.includes(problem.kind) ? together(problem, right, missteps) : null,
  };
}

const guessesIn = (typed: string): string[] =>
  typed
    .split(/[\n\r;\t]+/)
    .map((guess) => guess.trim())
    .filter((guess) => guess !== '');

function together(problem: Problem, right: number, missteps: Tally['missteps']): Tally['together'] {
  const by = (idea: RegExp): number =>
    missteps.reduce((sum, { id, count }) => sum + (idea.test(id) ? count : 0), 0);
  const [added, multiplied] = [by(/^added /), by(/^(multiplied|compounded) /)];
  return isAdditive(problem.kind)
    ? { added: added + right, multiplied }
    : { added, multiplied: multiplied + right };
}

/**
 * The tally in a sentence.
 *
 * @example tallyInWords(tallyOf(workedExample('forward-chain'), '1.96; 1.8; 7')) // → '3 guesses: 1 multiplied, 1 added, 1 did something else. 1 right.'
 */
export function tallyInWords({ values, unreadable, right, beyond, together: ways }: Tally): string {
  const guesses = `${values.length} ${values.length === 1 ? 'guess' : 'guesses'}`;
  const how = ways
    ? `: ${ways.multiplied} multiplied, ${ways.added} added, ${values.length - ways.multiplied - ways.added} did something else`
    : '';
  const more = unreadable.length - named;
  const not =
    unreadable.length === 0
      ? ''
      : ` Not to be read: ${unreadable.slice(0, named).map(quoted).join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
  const left = beyond === 0 ? '' : ` Only the first ${mostGuesses} are counted.`;
  return `${guesses}${how}. ${right} right.${not}${left}`;
}

/** The beginning of a text, without half a letter at its end. */
function quoted(text: string): string {
  const characters = [...text.slice(0, 2 * shownCharacters)].slice(0, shownCharacters).join('');
  return `“${characters}${characters === text ? '' : '…'}”`;
}
