import { MODEL_NUMBER } from '../../model/index.ts';
import { answerOf } from '../../phrases/answer.ts';
import { jobOf } from '../../phrases/job.ts';
import { comparisonTable } from './table.ts';
import { escapeMarkdown } from '../../phrases/markdown.ts';
import type { Scene } from '../../scene/scene.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import { words } from '../../topics/overview/words.ts';

/**
 * A whole comparison as Markdown: every knife's measures and its ratio to the baseline in one table.
 *
 * @param link the address that opens it
 * @param band what is said of how sure the ratio is (`bandBehind`), which takes many samples
 */
export function comparisonMarkdown(scene: Scene, link: string, band: readonly string[] = []): string {
  const { entry, baseline } = scene;
  const { columns, rows } = comparisonTable(scene);
  const line = (cells: readonly string[]) => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  const work = jobOf(entry).name;
  const say = (name: string) =>
    sentencesOf({ answer: answerOf, ...words }, name, scene).filter((sentence) => sentence !== '');
  return `${[
    `# ${escapeMarkdown(entry.title)}`,
    `${entry.invented ? 'Invented knives. ' : ''}The work: ${escapeMarkdown(work)}. The baseline: ${escapeMarkdown(baseline.name)}.`,
    [line(columns), `|${' --- |'.repeat(columns.length)}`, ...rows.map(line)].join('\n'),
    [...say('answer'), ...band].map(escapeMarkdown).join(' '),
    say('notes')
      .map((note) => `- ${escapeMarkdown(note)}`)
      .join('\n'),
    `An estimate by Keenfold’s factor model no. ${MODEL_NUMBER}, not a measurement. [Open the comparison](${link})`,
  ]
    .filter((part) => part !== '')
    .join('\n\n')}\n`;
}
