import { MODEL_NUMBER } from '../../model/index.ts';
import { answerOf } from '../../phrases/answer.ts';
import { escapeMarkdown } from '../../phrases/markdown.ts';
import type { Scene } from '../../scene/scene.ts';
import { factorWords } from '../../phrases/factor-words.ts';
import { factorIds } from '../../scene/factors.ts';
import { questionOf } from '../../phrases/question.ts';
import { howCombined } from './how-combined.ts';
import { explainedWords, reasonsTold } from './words.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import { words } from '../overview/words.ts';
import { words as reasons } from '../reasons/words.ts';
import { countInWords } from '../../scene/show.ts';

/** How much is told. */
export const depths = ['one sentence', 'one paragraph', 'all of it'] as const;
export type Depth = (typeof depths)[number];

/** What the text is pasted into. */
export const textForms = ['plain text', 'Markdown'] as const;
export type TextForm = (typeof textForms)[number];

interface Section {
  heading?: string;
  paragraphs?: string[];
  list?: string[];
}

const say = (name: string, scene: Scene): string[] =>
  sentencesOf(
    { answer: answerOf, question: questionOf, ...words, ...reasons, ...explainedWords },
    name,
    scene,
  ).filter((sentence) => sentence !== '');

function sections(scene: Scene, depth: Depth, band: readonly string[]): Section[] {
  const paragraph = (...names: string[]) =>
    names.map((name) => say(name, scene).join(' ')).filter((text) => text !== '');
  const said = (name: string): boolean => paragraph(name).length > 0;
  if (depth === 'one sentence') return [{ paragraphs: paragraph('explained-sentence') }];
  const sure = band.length > 0 ? [band.join(' ')] : [];
  if (depth === 'one paragraph')
    return [{ paragraphs: [[...paragraph('explained-paragraph'), ...sure].join(' ')] }];
  return [
    { heading: say('question', scene).join(' '), paragraphs: paragraph('explained-compared') },
    { heading: 'The answer', paragraphs: paragraph('answer', 'explained-count', 'explained-others') },
    {
      heading: 'The reasons',
      paragraphs: [...paragraph('explained-would'), ...reasonsTold(scene), ...paragraph('reasons-rest')],
    },
    { heading: 'Why not just add?', paragraphs: paragraph('explained-surprise') },
    { heading: 'How sure?', paragraphs: said('explained-chances') ? [howCombined, ...sure] : [] },
    {
      heading: `All ${countInWords(factorIds.length)} reasons`,
      list: factorIds.map((id) => `${factorWords(id).title}: ${say(`explained-${id}`, scene).join(' ')}`),
    },
    { heading: 'Geometry or steel?', paragraphs: paragraph('families', 'shares') },
    { heading: 'The other jobs of an edge', paragraphs: paragraph('side-load') },
    { heading: 'What was tested', paragraphs: paragraph('explained-runs') },
    { heading: 'What this doesn’t say', list: [...say('explained-not-said', scene), ...say('notes', scene)] },
  ].filter(({ paragraphs = [], list = [] }) => paragraphs.length + list.length > 0);
}

/**
 * A comparison told as text to paste elsewhere, with the link that shows the same.
 *
 * @param scene the comparison and what the model makes of it
 * @param depth one sentence, one paragraph, or all of it
 * @param form plain text or Markdown; names are escaped in Markdown
 * @param link the address of the explained page, whole
 * @param band what is said of how sure the ratio is (`bandBehind`); one sentence takes none, for it is the range itself
 */
export function explainedText(
  scene: Scene,
  depth: Depth,
  form: TextForm,
  link: string,
  band: readonly string[] = [],
): string {
  const markdown = form === 'Markdown';
  const text = markdown ? escapeMarkdown : (plain: string) => plain;
  const parts = sections(scene, depth, band).flatMap(({ heading, paragraphs = [], list = [] }) => [
    ...(heading === undefined ? [] : [markdown ? `## ${text(heading)}` : heading]),
    ...paragraphs.map(text),
    ...(list.length > 0 ? [list.map((item) => `- ${text(item)}`).join('\n')] : []),
  ]);
  const status = `${scene.entry.invented ? 'Invented knives. ' : ''}An estimate by Keenfold’s factor model no. ${MODEL_NUMBER}, not a measurement.`;
  const source = markdown ? `[The same, worked out and drawn](${link})` : link;
  return `${[...parts, `${status} ${source}`].join('\n\n')}\n`;
}
