import { answerOf } from '../../phrases/answer.ts';
import { aboutJob } from '../../phrases/about-job.ts';
import { jobDone, jobOf } from '../../phrases/job.ts';
import { measuresText } from '../../phrases/measures.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { readAlike } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { words as reasons } from '../reasons/words.ts';
import { mostTold } from '../reasons/reasons.ts';
import { answerWords, factorsCounted } from './answer-words.ts';
import { foldWords } from './fold-words.ts';
import { runsOf } from './runs-along.ts';
import { whyWords } from './why-words.ts';

/** That the answer takes in more than one way to combine the factors, where that makes it another one. */
function combined(scene: Scene): string {
  const { multiplied, added, toLimit } = scene.row.careful;
  return refusedWork(scene) !== '' || (readAlike(multiplied, added) && readAlike(multiplied, toLimit))
    ? ''
    : 'Nobody has measured how such effects combine, so the answer takes in three ways.';
}

/** How many runs go along, knife by knife. */
function runs(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const { all, own, other } = runsOf(scene);
  if (all === 0) return [];
  const count = (many: number) => (many === 1 ? 'one run' : `${many} runs`);
  return [
    `${all === 1 ? 'One measured run goes' : `${all} measured runs go`} along with this comparison: ${count(own)} of ${subject.name}, ${count(other)} of ${baseline.name}.`,
    'Where a run and the model disagree, believe the run.',
  ];
}

/** Title and sentences of the biggest reasons, one after another. */
export const reasonsTold = (scene: Scene): string[] =>
  Array.from({ length: mostTold }, (_, index) => {
    const [title = ''] = reasons[`reason-${index + 1}-title`]?.(scene) ?? [];
    const said = reasons[`reason-${index + 1}`]?.(scene).filter((sentence) => sentence !== '') ?? [];
    return [...(title === '' ? [] : [`${title}.`]), ...said].join(' ');
  }).filter((text) => text !== '');

export const explainedWords: Record<string, WordsOf> = {
  ...answerWords,
  ...whyWords,
  ...foldWords,

  /** What was compared, by its measures. */
  'explained-compared': ({ entry, subject, baseline, subjectKnife, baselineKnife }) => [
    `${subject.name} is compared with ${baseline.name} for ${jobDone(entry)}.`,
    `${subject.name}: ${measuresText(subjectKnife)}.`,
    `${baseline.name}, the baseline: ${measuresText(baselineKnife)}.`,
    entry.invented ? 'All these numbers are invented.' : '',
  ],

  'explained-refused': (scene) => [refusedWork(scene)],
  'explained-runs': runs,

  'explained-not-said': ({ comparison, subject, baseline }) => [
    `How long ${subject.name} cuts. It says how many times as long as ${baseline.name}, in the same hands and the same work.`,
    ...(comparison.outcome === 'fixed-strokes'
      ? []
      : ['How much card is cut in a fixed number of strokes. That is another thing.']),
    `Which of ${subject.name} and ${baseline.name} is better. Price, rust and comfort aren’t in it.`,
    'What a badly ground edge does. A burr or an overheated edge undoes these numbers.',
  ],

  /** The shortest explanation. */
  'explained-sentence': (scene) =>
    jobOf(scene.entry).slicingChain ? answerOf(scene).slice(0, 1) : aboutJob(scene).slice(0, 1),

  /** The explained page in one paragraph. */
  'explained-paragraph': (scene) => [
    ...answerOf(scene),
    ...(whyWords['explained-would']?.(scene) ?? []),
    ...factorsCounted(scene),
    ...reasonsTold(scene),
    ...(whyWords['explained-surprise']?.(scene) ?? []),
    combined(scene),
  ],
};
