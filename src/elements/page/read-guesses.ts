import { readAnswer } from '../../exercises/reader/index.ts';
import type { Guess } from '../../topics/ask/guesses.ts';
import type { PollOption } from '../../topics/ask/poll.ts';

export interface ReadGuesses {
  guesses: Guess[];
  /** Lines that could not be read, each with its number and why. */
  problems: string[];
}

const mostLines = 20_000;
const mostCount = 1_000_000;

/**
 * Reads what was pasted: a guess a line, or a line for each option of the poll with its count, as `B 12` or `B: 12`.
 * Guesses may also stand in one line, with semicolons or spaces between them. Nothing is dropped in silence.
 */
export function readGuesses(text: string, options: readonly PollOption[]): ReadGuesses {
  const lines = text.split(/\r?\n|;/, mostLines + 1);
  const read: ReadGuesses = { guesses: [], problems: [] };
  if (lines.length > mostLines) read.problems.push(`Only the first ${mostLines} lines are read.`);
  lines.slice(0, mostLines).forEach((whole, index) => {
    const line = whole.trim();
    if (line === '') return;
    const found = counted(line, options) ?? several(line);
    if (typeof found === 'string') read.problems.push(`Line ${index + 1}: ${found}`);
    else read.guesses.push(...found);
  });
  return read;
}

/** A line with an option and its count; undefined where it is none. */
function counted(line: string, options: readonly PollOption[]): Guess[] | string | undefined {
  const [, letter = '', digits] = /^([A-Za-z])\b\s*[:.=)\t-]?\s*(\d+)?$/.exec(line) ?? [];
  if (letter === '') return undefined;
  const option = options.find((candidate) => candidate.letter === letter.toUpperCase());
  if (!option) return `the poll has no option ${letter.toUpperCase()}.`;
  const count = Number(digits ?? 1);
  if (count > mostCount) return `${digits} is more than ${mostCount}.`;
  return count === 0 ? [] : [{ ratio: option.at, count }];
}

/** One guess, or several with spaces between them. */
function several(line: string): Guess[] | string {
  const whole = readAnswer(line, 'times as long');
  if (whole.ok) return [{ ratio: whole.value, count: 1 }];
  const parts = line.split(/[\s\t]+/).map((part) => readAnswer(part, 'times as long'));
  return parts.length > 1 && parts.every((part) => part.ok)
    ? parts.map(({ value }) => ({ ratio: value, count: 1 }))
    : whole.message;
}
