import { letter } from '../wording.ts';
import type { ProblemSet } from './make-set.ts';

const HEAD = [
  'version',
  'number',
  'kind',
  'level',
  'question',
  'options',
  'answer',
  'tolerance',
  'marks',
  'steps',
  'missteps',
];

/**
 * A cell of a table as RFC 4180 has it. One that a spreadsheet would run as a formula gets an apostrophe before it.
 *
 * @example csvCell('=1+1') // → "'=1+1"
 * @example csvCell('a "b", c') // → '"a ""b"", c"'
 */
export function csvCell(text: string): string {
  const guarded = /^[\s\p{Cf}]*[=+\-@＝＋－＠]|^[\t\r\n]/u.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}

/** A set with its key as a table, a problem a line, for a spreadsheet. */
export function setCsv(set: ProblemSet): string {
  const rows = set.items.map(({ number, problem, key }) => [
    set.version,
    String(number),
    problem.kind,
    String(problem.level),
    problem.question,
    (problem.options ?? []).map((option, index) => `${letter(index)}: ${option}`).join('\n'),
    key.answer,
    key.tolerance,
    String(key.marks.total),
    key.steps.map(({ text, results }, index) => `${index + 1}. ${text} ${results.join('; ')}`).join('\n'),
    key.missteps.map(({ answer, id, idea, step }) => `${answer}: ${id}. ${idea} (step ${step})`).join('\n'),
  ]);
  return [HEAD, ...rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}
