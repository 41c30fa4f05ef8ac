import { jobProfiles, MODEL_NUMBER } from '../model/index.ts';
import { escapeMarkdown } from './markdown.ts';
import type { Scene } from './scene.ts';
import { times } from './show.ts';
import { told } from './telling-terms.ts';
import { words } from './words.ts';

/**
 * A whole line-up as Markdown: every knife's measures and its ratio to the baseline in one table.
 *
 * @param link the address that opens it
 */
export function lineUpMarkdown(scene: Scene, link: string): string {
  const { entry, lineUp, rows, baseline } = scene;
  const { wedge: _angle, apex, ...others } = told;
  const measures = [
    { title: 'Edge angle', measure: told.wedge.measure },
    ...(lineUp.knives.some(({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined)
      ? [{ title: 'At the apex', measure: apex.measure }]
      : []),
    ...Object.values(others),
  ];
  const ratio = (reading: 'close' | 'pocket', of: 'product' | 'rival') =>
    rows[reading].map((row) => times(row[of]));
  const line = (cells: readonly string[]) => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  const work = jobProfiles.find(({ id }) => id === entry.work)?.name ?? entry.work;
  const say = (name: string) => (words[name]?.(scene) ?? []).filter((sentence) => sentence !== '');
  return `${[
    `# ${escapeMarkdown(entry.title)}`,
    `${entry.invented ? 'Invented knives. ' : ''}The work: ${escapeMarkdown(work)}. The baseline: ${escapeMarkdown(baseline.name)}.`,
    [
      line(['', ...lineUp.knives.map(({ name, id }) => name ?? id)]),
      `| --- |${lineUp.knives.map(() => ' --- |').join('')}`,
      ...measures.map(({ title, measure }) => line([title, ...lineUp.knives.map(measure)])),
      line(['Close reading', ...ratio('close', 'product')]),
      line(['Forces added instead', ...ratio('close', 'rival')]),
      line(['Pocket reading', ...ratio('pocket', 'product')]),
    ].join('\n'),
    say('answer').map(escapeMarkdown).join(' '),
    say('notes')
      .map((note) => `- ${escapeMarkdown(note)}`)
      .join('\n'),
    `An estimate by Keenfold’s factor model no. ${MODEL_NUMBER}, not a measurement. [Open the line-up](${link})`,
  ]
    .filter((part) => part !== '')
    .join('\n\n')}\n`;
}
