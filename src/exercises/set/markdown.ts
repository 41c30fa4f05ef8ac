import { letter } from '../wording.ts';
import { answerLine } from './answer-line.ts';
import type { ProblemSet } from './make-set.ts';

type Item = ProblemSet['items'][number];

/**
 * A set as Markdown: the sheet with room to work, or the key with steps, missteps and marking guidance.
 *
 * @example setMarkdown(makeSet({ seed: 7, version: 'B' })).split('\n')[0] // → '# Problems, version B'
 */
export function setMarkdown(set: ProblemSet, part: 'sheet' | 'key' = 'sheet'): string {
  const { context, level, marks, seed, version } = set;
  const head = [
    `# ${part === 'key' ? 'Key' : 'Problems'}, version ${version}`,
    `Seed ${seed}, context ${context}, level ${level}, ${marks} marks. All numbers are invented.`,
  ];
  const body = set.items.map(part === 'key' ? keyItem : sheetItem);
  const foot = part === 'key' ? ['## Marking', set.guidance.map((rule) => `- ${rule}`).join('\n')] : [];
  return `${[...head, ...body, ...foot].join('\n\n')}\n`;
}

const heading = ({ number, key }: Item): string => `## ${number}. (${key.marks.total} marks)`;

const question = ({ problem }: Item): string =>
  [problem.question, ...(problem.options ?? []).map((option, index) => `- ${letter(index)}: ${option}`)].join(
    '\n',
  );

/** Lines of white space for each step. */
const room = ({ problem }: Item): string => Array.from(problem.steps, () => '&nbsp;').join('\n\n');

const sheetItem = (item: Item): string =>
  [heading(item), question(item), room(item), answerLine(item.problem)].join('\n\n');

const keyItem = (item: Item): string =>
  [
    heading(item),
    question(item),
    item.key.steps.map(({ text, tex }, index) => `${index + 1}. ${text} $${tex}$ (1 mark)`).join('\n'),
    `**${item.key.answer}** (1 mark). ${item.key.tolerance}`,
    item.key.missteps
      .map(({ answer, id, idea, step }) => `- ${answer}: ${id}. ${idea} (step ${step})`)
      .join('\n'),
  ].join('\n\n');
